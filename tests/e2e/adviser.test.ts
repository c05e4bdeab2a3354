import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Draft } from '@/components/draft/draft-tree';
import { launchBrowser, SIZES, watchedPage } from './browser';
import { copyOfDemo } from './copy-demo';
import { breaches, saved, tooWide } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const ID = 'e2e-adviser';
const NOTE = 'Internal: margin is thin, do not go lower';
const chances = (page: Page) =>
  page.getByRole('region', { name: 'Which costs least, and how surely' }).getByText(/of 10 draws$/);

test('wiring: chances come without a touch, and follow a slider moved by keys; one tap goes back to the proposal', async () => {
  await copyOfDemo('end-of-life', ID, (draft: Draft) => ({
    ...draft,
    choices: (draft.choices as Draft[]).map((choice) =>
      choice.kind === 'replace' ? { ...choice, note: NOTE } : choice,
    ),
  }));
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.tablet });
  await page.goto(`/visits/${ID}/compare`);
  await chances(page).first().waitFor();
  const counts = await chances(page).allInnerTexts();
  expect(counts.length).toBeGreaterThanOrEqual(2);

  const years = page.getByRole('slider', { name: 'Slide: Years you expect to stay' });
  const before = Number(await years.inputValue());
  await years.focus();
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('ArrowLeft');
  await page
    .getByRole('heading', { name: `Total over your ${before - 2} years, in today’s money` })
    .waitFor();
  await page.getByText('1 value differs from the proposal.').waitFor();
  await page.reload();
  await page.getByText('1 value differs from the proposal.').waitFor();
  await page.getByRole('button', { name: 'Reset to as proposed' }).click();
  await page.getByRole('heading', { name: `Total over your ${before} years, in today’s money` }).waitFor();
  await page.getByText('As proposed.').waitFor();
  await saved(page);
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: a rate tried by its button changes the totals, and one out of its limits is told beside the field', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.tablet });
  await page.goto(`/visits/${ID}/compare`);
  const field = page.getByRole('textbox', { name: /^Electricity price grows by/ });
  const rate = Number(await field.inputValue());
  await page.getByRole('button', { name: 'More: Electricity price grows by' }).click();
  await expect.poll(() => field.inputValue()).toBe(String(rate + 0.5));
  await page.locator('.just-changed').first().waitFor();
  await field.fill('90');
  await page.getByText('Electricity price grows by: a number between 0 and 20.').waitFor();
  await page.getByRole('button', { name: 'Reset to as proposed' }).click();
  await saved(page);
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: a promotion set beside the loan shows both endings, each with its APR', async () => {
  const { page, trouble } = await watchedPage(browser);
  await page.goto(`/visits/${ID}/compare`);
  const fold = page.locator('details').filter({ hasText: 'Add another way to pay' }).last();
  await fold.locator('summary').click();
  await fold.getByRole('button', { name: 'Add another way to pay' }).click();
  const other = fold.getByRole('group', { name: 'Another way to pay, 1' });
  await other.getByText('Promotion without interest', { exact: true }).click();
  await other.getByRole('textbox', { name: /^Months without interest/ }).fill('18');
  await other.getByRole('textbox', { name: /^Rate charged back/ }).fill('26.99');
  await other.getByRole('textbox', { name: /^Months until all is paid/ }).fill('60');
  await page.getByRole('heading', { name: 'Promotion without interest, not paid in time' }).waitFor();
  await page.getByRole('heading', { name: 'Promotion without interest, paid in time' }).waitFor();
  await page.getByText(/^Interest is charged from the first day/).waitFor();
  expect(await page.getByText(/^Annual percentage rate \(APR\): \d+\.\d\d\s%$/).count()).toBe(3);
  await saved(page);
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: the customer’s view leaves nothing of part prices, notes and files in the page, and is easy to leave', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.tablet, colorScheme: 'dark' });
  await page.goto(`/visits/${ID}/compare`);
  const line = await page.locator('input[id$="priceLines.0.label"]').first().inputValue();
  expect(line.length).toBeGreaterThan(3);
  await page.getByRole('button', { name: 'Show the customer’s view' }).click();
  await page.waitForURL(/\?for=customer$/);
  const leave = page.getByRole('button', { name: 'Leave the customer’s view' });
  for (const step of ['turned', 'reloaded']) {
    if (step === 'reloaded') await page.reload({ waitUntil: 'networkidle' });
    await leave.waitFor();
    await expect.poll(() => page.locator('script:not([src])').count()).toBe(0);
    const content = await page.content();
    expect(content.includes(line), step).toBe(false);
    expect(content.includes(NOTE), step).toBe(false);
    expect(content.includes('appraisal.json'), step).toBe(false);
    expect(await page.locator('[id*="priceLines"], [id*="dealerFee"]').count(), step).toBe(0);
  }
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
  for (const title of [/^Total over your/, 'How the cost adds up']) {
    await page.getByRole('heading', { name: title }).scrollIntoViewIfNeeded();
  }
  await page.getByRole('heading', { name: 'What moves the answer most' }).waitFor();
  expect(await breaches(page)).toEqual([]);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  await leave.click();
  await page.locator('input[id$="priceLines.0.label"]').first().waitFor({ state: 'attached' });
  expect(page.url()).not.toContain('for=customer');
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: a price filled from the price book stands in lines that can be changed, and undo brings the old ones back', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  await page.goto(`/visits/${ID}#money-2`);
  const fold = page
    .locator('details[open]')
    .filter({ hasText: 'Fill the price from the price book' })
    .first();
  const labels = fold.locator('input[id*="priceLines"][id$=".label"]');
  const valuesOf = () => labels.evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).value));
  await labels.first().waitFor();
  const before = await valuesOf();
  await fold.getByRole('button', { name: 'Fill the price from the price book' }).click();
  await fold.getByText(/^Filled from the price book \(invented prices\)/).waitFor();
  expect(await valuesOf()).not.toEqual(before);
  await saved(page);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(valuesOf).toEqual(before);
  expect(trouble).toEqual([]);
  await page.context().close();
});
