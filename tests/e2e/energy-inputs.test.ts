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
  await page.getByText(/^Row 14 could not be read/).waitFor();
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
