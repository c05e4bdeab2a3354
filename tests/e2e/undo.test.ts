import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, watchedPage } from './browser';
import { openPart, startVisit } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('wiring: adding and deleting choices, price lines and observations is taken back step by step', async () => {
  const { page, trouble } = await watchedPage(browser);
  await startVisit(page);
  await openPart(page, 'What you saw');
  const filter = page.getByRole('checkbox', { name: 'Dirty filter' });
  await filter.check();
  await openPart(page, 'Prices and choices');
  const actions = page.locator('#add-repair');
  await actions.selectOption('runCapacitor');
  const repair = page.getByRole('button', { name: 'Delete “New run capacitor”' });
  await repair.waitFor();
  const lines = page.getByRole('button', { name: /^Remove price line:/ });
  const before = await lines.count();
  await page.getByRole('button', { name: 'Add a price line' }).last().click();
  expect(await lines.count()).toBe(before + 1);
  await repair.click();
  expect(await repair.count()).toBe(0);
  const undo = page.getByRole('button', { name: /^Undo/ });
  await undo.click();
  await repair.waitFor();
  expect(await lines.count()).toBe(before + 1);
  await undo.click();
  expect(await lines.count()).toBe(before);
  await undo.click();
  expect(await repair.count()).toBe(0);
  await undo.click();
  expect(await undo.count()).toBe(0);
  await openPart(page, 'What you saw');
  expect(await filter.isChecked()).toBe(false);
  expect(trouble).toEqual([]);
  await page.context().close();
});
