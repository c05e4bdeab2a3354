import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, SIZES, watchedPage } from './browser';
import { breaches, tooWide } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('wiring: on a phone a cause, a target and the next reading open to what stands behind them', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  await page.goto('/visits/restricted-orifice#results', { waitUntil: 'networkidle' });
  const main = page.locator('main');

  const danger = main
    .getByText(/^Danger:/)
    .filter({ visible: true })
    .first();
  const cause = main.getByText('Metering orifice restricted').filter({ visible: true }).first();
  await cause.waitFor();
  const [above, below] = [await danger.boundingBox(), await cause.boundingBox()];
  expect(above?.y).toBeLessThan(below?.y ?? 0);
  await cause.click();
  await main.getByText('Speaks for it').filter({ visible: true }).first().waitFor();
  await main
    .getByText(/above the \d+ °F of a healthy unit/)
    .filter({ visible: true })
    .first()
    .waitFor();
  await main.getByText('Easily taken for Low charge').filter({ visible: true }).first().waitFor();
  await main.getByText('How this chance came about').filter({ visible: true }).first().click();
  await main
    .getByText(/^Before any reading: about \d+ in 100/)
    .filter({ visible: true })
    .first()
    .waitFor();

  await main
    .locator('summary', { hasText: 'Discharge line temperature' })
    .filter({ visible: true })
    .last()
    .click();
  await main
    .getByText('The compressor is running hotter than it should.')
    .filter({ visible: true })
    .last()
    .waitFor();
  await main.getByText('At these conditions').filter({ visible: true }).first().waitFor();
  await main
    .getByText(/lossless compression from healthy superheat/)
    .filter({ visible: true })
    .first()
    .waitFor();

  const next = main.getByRole('heading', { name: 'Next reading' });
  await next.waitFor();
  await main
    .getByText(/^then .*\d+ in 10/)
    .filter({ visible: true })
    .first()
    .waitFor();

  expect(await breaches(page)).toEqual([]);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  expect(trouble).toEqual([]);
  await page.context().close();
}, 120_000);

test('wiring: a refrigerant outside the list can be named, and the result says what still answers', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  await page.goto('/visits/low-charge#house', { waitUntil: 'networkidle' });
  await page.getByRole('combobox', { name: 'Refrigerant' }).selectOption({ label: 'Not known' });
  await page.getByRole('textbox', { name: /^Another refrigerant/ }).fill('R-407A');
  await page.goto('/visits/low-charge#results');
  const main = page.locator('main');
  await main
    .getByText(/R-407A is not among the refrigerants/)
    .filter({ visible: true })
    .first()
    .waitFor();
  expect(await main.getByText('Air temperature split').filter({ visible: true }).first().isVisible()).toBe(
    true,
  );
  expect(
    await main.locator('summary', { hasText: 'Suction superheat' }).filter({ visible: true }).count(),
  ).toBe(0);
  expect(trouble).toEqual([]);
  await page.context().close();
}, 120_000);
