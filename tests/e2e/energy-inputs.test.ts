import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Appraisal } from '@/lib/appraise/appraisal';
import { launchBrowser, SIZES, watchedPage } from './browser';
import { breaches, openPart, pick, saved, startVisit, tooWide, type } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** A year of bills that follow the weather, the columns in an order of their own, one of them with kWh and cost exchanged. */
const BILLS = [
  'Cost\tkWh\tMean temp\tTo\tFrom',
  ...[
    [38, 1610],
    [43, 1390],
    [51, 1010],
    [60, 640],
    [68, 660],
    [75, 890],
    [79, 1040],
    [77, 980],
    [71, 770],
    [61, 615],
    [50, 1080],
    [41, 1480],
  ].map(([meanF = 0, kwh = 0], m) => {
    const month = (n: number) => new Date(Date.UTC(2025, n, 3)).toISOString().slice(0, 10);
    const usd = (kwh * 0.14).toFixed(2);
    const [cost, use] = m === 4 ? [kwh, usd] : [usd, kwh];
    return `${cost}\t${use}\t${meanF}\t${month(m + 1)}\t${month(m)}`;
  }),
  'no\tbill\tat\tall\t!',
].join('\n');

const yearOf = async (page: Page, id: string) => {
  await saved(page);
  const json = (await (await page.request.get(`/visits/${id}/appraisal.json`)).json()) as Appraisal;
  const found = json.energy.scenarios.find((scenario) => scenario.id === 'asFound');
  return { energy: json.energy, costUsd: found?.costUsd.likely ?? Number.NaN };
};

test('wiring: bills pasted and a tariff by time of day set on the phone are judged, mended and change the yearly cost', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  const id = await startVisit(page);
  await openPart(page, 'Unit and house');
  await pick(page, 'Kind of unit', 'Heat pump');
  await type(page, 'Nominal size', '3');
  await page.getByLabel('Weather').selectOption({ label: 'Charlotte, NC' });
  const before = await yearOf(page, id);

  await page.getByText('Electricity bills', { exact: true }).click();
  await page.getByLabel('Table of bills').fill(BILLS);
  await page.getByRole('button', { name: 'Take this table over' }).click();
  await page.getByText('12 bills taken over.').waitFor();
  await page.getByText('Row 14 is left out: “all” is not read as a date.').waitFor();
  await page.getByText('The bills follow the weather closely: they are used.').waitFor();
  const swapped = page.locator('summary').filter({ hasText: 'May 3, 2025 to Jun 3, 2025' });
  await swapped.getByText(/kilowatt-hours and dollars were exchanged/).waitFor();
  await page.getByText('Each dot is a bill.').waitFor();
  expect(await breaches(page)).toEqual([]);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  const billed = await yearOf(page, id);
  expect(billed.energy.bills?.verdict).toBe('accept');
  expect(billed.energy.load.basis).toBe('bill');
  expect(billed.costUsd).not.toBeCloseTo(before.costUsd, 0);

  await openPart(page, 'Prices and choices');
  await page.getByText(/^Nothing typed: [\d.]+¢ a kWh is taken from the bills/).waitFor();
  await page.getByText('By time of day', { exact: true }).click();
  await page.getByRole('textbox', { name: /^Electricity price/ }).fill('0.34');
  await page
    .getByText(/names no price from/)
    .first()
    .waitFor();
  await page.getByText('0 to 16: no price').waitFor();
  expect(await breaches(page)).toEqual([]);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  await type(page, 'Price of all other hours', '0.12');
  await page.getByText('0 to 16: 12¢').waitFor();
  await page
    .getByText(/names no price from/)
    .first()
    .waitFor({ state: 'detached' });
  const mended = await yearOf(page, id);
  expect(mended.energy.notes.filter(({ code }) => code.startsWith('tariff'))).toEqual([]);
  expect(mended.costUsd).not.toBeCloseTo(billed.costUsd, 0);

  await page.goto(`/visits/${id}/compare`);
  await page.getByRole('heading', { name: 'Where the money of a year goes' }).waitFor();
  await page.getByRole('heading', { name: 'Where the money of a year goes' }).scrollIntoViewIfNeeded();
  await page.getByText('Heating by the compressor', { exact: true }).first().waitFor();
  expect(await page.getByRole('main').innerText()).toContain('price of the next kWh');
  expect(await breaches(page)).toEqual([]);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('regression: switched and switched back, tariff, own weather, a note and older bills are as they were', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  await startVisit(page);
  await openPart(page, 'Unit and house');
  await pick(page, 'Kind of unit', 'Heat pump');
  await type(page, 'Nominal size', '3');

  const weather = page.getByLabel('Weather', { exact: true });
  await weather.selectOption({ label: 'An own table of hours' });
  await page
    .getByLabel('Hours of a year at each outdoor temperature')
    .fill('Temperature, Hours\n30, 2920\n55, 2920\n80, 2920');
  await page.getByRole('button', { name: 'Take this table over' }).first().click();
  await page.getByText('3 temperatures in use').waitFor();
  await weather.selectOption('region:IV');
  await weather.selectOption({ label: 'An own table of hours' });
  await page.getByText('3 temperatures in use').waitFor();
  await weather.selectOption('region:IV');

  const months = Array.from({ length: 12 }, (_, m) => `2025-${String(m + 1).padStart(2, '0')}`);
  await page.getByText('Electricity bills', { exact: true }).click();
  const bills = page.getByLabel('Table of bills');
  const take = page.getByRole('button', { name: 'Take this table over' });
  await bills.fill(['Month,kWh', ...months.map((month) => `${month},700`)].join('\n'));
  await take.click();
  await page.getByText('12 bills taken over.').waitFor();
  const ends = [...months.slice(1), '2026-01'];
  const rows = months.map((month, m) => `${month}-03,${ends[m]}-03,710,99.40`);
  await bills.fill(['From,To,kWh,Cost', ...rows].join('\n'));
  await take.click();
  await page.getByText(/^None of these 12 bills counts/).waitFor();
  expect(await breaches(page)).toEqual([]);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  await page.getByRole('button', { name: 'Replace the bills that are there' }).click();
  await page.getByText('12 bills taken over.').waitFor();
  await page.getByText('$99.40').first().waitFor();

  await openPart(page, 'What you saw');
  const oil = page.getByRole('checkbox', { name: 'Oil stain' });
  await oil.check();
  const note = page.getByRole('textbox', { name: 'Note: Oil stain' });
  await note.fill('at the flare');
  await oil.uncheck();
  await oil.check();
  expect(await note.inputValue()).toBe('at the flare');

  await openPart(page, 'Prices and choices');
  await page.getByText('By time of day', { exact: true }).click();
  await page.getByRole('textbox', { name: /^Electricity price/ }).fill('0.45');
  await type(page, 'Price of all other hours', '0.12');
  await page.getByText('By season', { exact: true }).click();
  expect(
    await page
      .getByRole('textbox', { name: /^Electricity price/ })
      .first()
      .inputValue(),
  ).toBe('');
  await page.getByText('By time of day', { exact: true }).click();
  expect(await page.getByRole('textbox', { name: /^Electricity price/ }).inputValue()).toBe('0.45');
  expect(await page.getByRole('textbox', { name: /^Price of all other hours/ }).inputValue()).toBe('0.12');
  expect(trouble).toEqual([]);
  await page.context().close();
});
