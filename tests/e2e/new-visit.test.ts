import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Appraisal } from '@/lib/appraise/appraisal';
import { moneyRangeWords, quotedWords } from '@/lib/sheet/money-words';
import { wordsOf } from '@/lib/sheet/phrase';
import { launchBrowser, SIZES, watchedPage } from './browser';
import { breaches, openPart, pick, saved, startVisit, tooWide, type } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test.for(Object.entries(SIZES))(
  'wiring: a visit typed from nothing leads to a comparison and a sheet, on the %s',
  async ([, viewport]) => {
    const { page, trouble } = await watchedPage(browser, { viewport });
    const id = await startVisit(page);

    await typeHouse(page);
    await typeRun(page);
    await openPart(page, 'What you saw');
    await page.getByText('Dirty filter', { exact: true }).click();
    await page.getByLabel('Suspected cause').selectOption({ label: 'Low indoor airflow' });
    await typeChoices(page);
    expect(await breaches(page)).toEqual([]);
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
    await saved(page);

    await page.goto(`/visits/${id}/compare`);
    const json = await appraisalOf(page, id);
    expect(json.visit.site.town).toBe('Mossgate');
    expect(json.comparison.choices.map(({ kind }) => kind)).toEqual(['leave', 'repair', 'replace']);
    await expectSameNumbers(page, json);
    const shown = await page.getByRole('main').innerText();
    expect(shown).toContain('APR');
    expect(shown).toContain('down payment');
    expect(shown).toContain('total of payments');
    expect(shown).toContain('estimate, not an offer of credit');
    expect(await breaches(page)).toEqual([]);
    expect(await tooWide(page)).toBeLessThanOrEqual(0);

    const pdf = await sheetOf(page);
    expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-');
    expect(pdf.length).toBeGreaterThan(10_000);
    expect(trouble).toEqual([]);
    await page.context().close();
  },
);

async function typeHouse(page: Page): Promise<void> {
  await openPart(page, 'Unit and house');
  await pick(page, 'Kind of unit', 'Heat pump');
  await type(page, 'Nominal size', '2.5');
  await page.getByLabel('Refrigerant', { exact: true }).selectOption('R-410A');
  await pick(page, 'Metering device', 'Expansion valve (TXV)');
  await type(page, 'Year of manufacture', '2013');
  await type(page, 'Electric heat installed', '10 kW');
  await type(page, 'Customer', 'An Invented Person');
  await type(page, 'Town', 'Mossgate');
  await page.getByLabel('Weather').selectOption({ label: 'Charlotte, NC' });
  await page.getByRole('heading', { level: 1, name: 'An Invented Person, Mossgate' }).waitFor();
}

async function typeRun(page: Page): Promise<void> {
  await openPart(page, 'Readings');
  await page.getByRole('button', { name: 'Take readings' }).click();
  await pick(page, 'Mode', 'Heating');
  const readings: readonly (readonly [string, string])[] = [
    ['Label of the run', 'as found'],
    ['Suction pressure', '98'],
    ['Discharge pressure', '340 psig'],
    ['Suction line temperature', '42'],
    ['Liquid line temperature', '92'],
    ['Discharge line temperature', '165'],
    ['Outdoor air', '45'],
    ['Return air', '69'],
    ['Supply air', '94'],
    ['Voltage at the outdoor unit', '238'],
    ['Outdoor unit amps (compressor and fan)', '9,8'],
  ];
  for (const [label, typed] of readings) await type(page, label, typed);
  await page
    .getByText(/evaporating temperature \d+ °F/)
    .first()
    .waitFor();
}

async function typeChoices(page: Page): Promise<void> {
  await openPart(page, 'Prices and choices');
  await type(page, 'Electricity price', '0.14');
  await type(page, 'Years the customer expects to stay', '9');
  await page.getByLabel('Add a repair').selectOption({ label: 'Blower service' });
  await type(page, 'Price each', '145');
  await page.getByRole('button', { name: 'Add a replacement' }).click();
  const fresh = page.locator('details[open]').last();
  await fresh
    .getByRole('textbox', { name: /^Price each/ })
    .first()
    .fill('9,400');
  await fresh.getByText('Monthly', { exact: true }).click();
  await fresh.getByRole('textbox', { name: /^Loan rate a year/ }).fill('7.9');
  await fresh.getByRole('textbox', { name: /^Loan term/ }).fill('120');
  await fresh.getByRole('textbox', { name: /^Down payment/ }).fill('500');
}

async function appraisalOf(page: Page, id: string): Promise<Appraisal> {
  const answer = await page.request.get(`/visits/${id}/appraisal.json`);
  expect(answer.status()).toBe(200);
  return (await answer.json()) as Appraisal;
}

/** Price and total of every choice stand on the screen as the record says them. */
async function expectSameNumbers(page: Page, { comparison }: Appraisal): Promise<void> {
  const shown = await page.getByRole('main').innerText();
  const wanted = comparison.choices.flatMap((choice) => {
    const total = moneyRangeWords(wordsOf('en'), choice.totalTodayUsd);
    return [total.likely, total.range ?? '', choice.kind === 'leave' ? '' : quotedWords(choice.upFrontUsd)];
  });
  expect(wanted.length).toBe(9);
  expect(wanted.filter((words) => !shown.includes(words))).toEqual([]);
}

async function sheetOf(page: Page): Promise<Buffer> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Download the sheet' }).click(),
  ]);
  return readFileSync(await download.path());
}
