import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Appraisal } from '@/lib/appraise/appraisal';
import { moneyRangeWords, quotedWords } from '@/lib/sheet/money-words';
import { wordsOf } from '@/lib/sheet/phrase';
import { launchBrowser, watchedPage } from './browser';
import { copyOfDemo } from './copy-demo';
import { saved } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const ID = 'e2e-price-edit';

const record = async (page: Page): Promise<Appraisal> =>
  (await (await page.request.get(`/visits/${ID}/appraisal.json`)).json()) as Appraisal;

test('wiring: a price changed at the table changes every number that hangs on it, and no other', async () => {
  await copyOfDemo('end-of-life', ID);
  const { page, trouble } = await watchedPage(browser);
  await page.goto(`/visits/${ID}/compare`);
  const before = await record(page);
  const replaced = before.comparison.choices.find(({ kind }) => kind === 'replace');
  const main = page.locator('main');
  expect(await main.innerText()).toContain(
    moneyRangeWords(wordsOf('en'), replaced?.totalTodayUsd ?? none).likely,
  );

  const fold = page
    .locator('details')
    .filter({ hasText: replaced?.name ?? '' })
    .first();
  await fold.locator('summary').click();
  await fold
    .getByRole('textbox', { name: /^Price each/ })
    .first()
    .fill('19,750');
  await page.getByRole('button', { name: /^Undo/ }).waitFor();
  await saved(page);

  const after = await record(page);
  const changed = after.comparison.choices.find(({ id }) => id === replaced?.id);
  expect(changed?.priceUsd).not.toBe(replaced?.priceUsd);
  expect(changed?.totalTodayUsd.likely ?? 0).toBeGreaterThan(replaced?.totalTodayUsd.likely ?? 0);
  const wanted = moneyRangeWords(wordsOf('en'), changed?.totalTodayUsd ?? none).likely;
  await main.filter({ hasText: wanted }).waitFor();
  await main.filter({ hasText: quotedWords(changed?.upFrontUsd ?? '0.00') }).waitFor();
  expect(after.energy).toEqual(before.energy);
  expect(after.findings).toEqual(before.findings);

  await page.getByRole('button', { name: /^Undo/ }).click();
  await saved(page);
  expect((await record(page)).comparison).toEqual(before.comparison);
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: one year more of stay by its button changes the years in every heading', async () => {
  const { page, trouble } = await watchedPage(browser);
  await page.goto(`/visits/${ID}/compare`);
  const years = (await record(page)).comparison.stayYears;
  await page.getByRole('button', { name: 'More: Years you expect to stay' }).click();
  await page.getByRole('heading', { name: `Total over your ${years + 1} years, in today’s money` }).waitFor();
  await saved(page);
  expect((await record(page)).comparison.stayYears).toBe(years + 1);
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: the financing box names the rate in full beside its figure', async () => {
  const { page, trouble } = await watchedPage(browser);
  await page.goto('/visits/restricted-orifice/compare');
  await page.getByText(/^Annual percentage rate \(APR\): \d+\.\d\d\s%$/).waitFor({ state: 'visible' });
  expect(trouble).toEqual([]);
  await page.context().close();
});

const none = { low: 0, likely: 0, high: 0 };
