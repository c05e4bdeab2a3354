import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { textOf } from '../pdf/pdf-tools';
import { launchBrowser, SIZES, watchedPage } from './browser';
import { box, breaches, idOf, openPart, pick, saved, startVisit, type } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('wiring: what cannot be used gets its sentence beside the field and on top, and the rest stays and counts', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  await startVisit(page);
  await openPart(page, 'Unit and house');
  await pick(page, 'Kind of unit', 'Air conditioner');
  await type(page, 'Nominal size', '3');
  await openPart(page, 'Readings');
  await page.getByRole('button', { name: 'Take readings' }).click();
  await type(page, 'Suction pressure', '3,000');
  await type(page, 'Discharge pressure', 'abc');
  await type(page, 'Liquid line temperature', '400 F');
  await type(page, 'Outdoor air', '88');
  await box(page, 'Outdoor air').blur();

  const wanted = [
    'Suction pressure must be between 0 and 300 psig, but 3000 was typed. Check the number and its unit, or leave the field empty.',
    'Discharge pressure must be a number between 0 and 700 psig, but “abc” is not one. Type digits only.',
    'Liquid line temperature must be between -20 and 180 °F, but 400 was typed. Check the number and its unit, or leave the field empty.',
  ];
  for (const sentence of wanted) {
    await page.locator('main p').filter({ hasText: sentence }).first().waitFor();
    expect(await page.getByRole('link', { name: sentence }).count(), sentence).toBe(1);
  }
  expect(await box(page, 'Suction pressure').inputValue()).toBe('3,000');
  expect(await box(page, 'Discharge pressure').inputValue()).toBe('abc');
  expect(await box(page, 'Discharge pressure').getAttribute('aria-invalid')).toBe('true');
  expect(await box(page, 'Outdoor air').inputValue()).toBe('88');
  expect(await page.title()).toMatch(/^Error: /);
  expect(await breaches(page)).toEqual([]);

  await openPart(page, 'Prices and choices');
  await page.getByLabel('Add a repair').selectOption({ label: 'New run capacitor' });
  await type(page, 'Price each', '-180');
  await page.getByText('Monthly', { exact: true }).click();
  await type(page, 'Loan rate a year', '9');
  await type(page, 'Loan term', '0');
  await box(page, 'Loan rate a year').focus();
  const money = [
    'Price each must be between $0 and $100,000, but -180 was typed. Check the number and its unit, or leave the field empty.',
    'Loan term must be between 1 and 240 months, but 0 was typed. Check the number and its unit, or leave the field empty.',
  ];
  for (const sentence of money) {
    await page.locator('main p').filter({ hasText: sentence }).first().waitFor();
  }
  await saved(page);

  const id = idOf(page);
  const record = await (await page.request.get(`/visits/${id}/appraisal.json`)).json();
  expect(record.visit.runs).toEqual([{ id: 'run-1', mode: 'cooling', outdoorAirF: 88 }]);
  expect(record.comparison.choices.map(({ kind }: { kind: string }) => kind)).toEqual(['leave']);

  const notCounted =
    'Not counted: New run capacitor (price each must be between $0 and $100,000, loan term must be between 1 and 240 months).';
  const compare = await page.context().newPage();
  await compare.goto(`/visits/${id}/compare`);
  await compare.getByText(notCounted).waitFor({ state: 'visible' });
  await compare.close();
  const sheet = await page.request.get(`/visits/${id}/sheet.pdf`);
  expect(textOf(new Uint8Array(await sheet.body()))).toContain(notCounted);

  const link = page.getByRole('link', { name: wanted[1] ?? '' });
  await link.click();
  expect(await box(page, 'Discharge pressure').evaluate((el) => el === document.activeElement)).toBe(true);
  await page.keyboard.press('Control+A');
  await page.keyboard.type('282');
  await box(page, 'Discharge pressure').blur();
  await link.waitFor({ state: 'detached' });
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: a heating run on a cooling-only unit is named, and both can be changed', async () => {
  const { page, trouble } = await watchedPage(browser);
  await startVisit(page);
  await pick(page, 'Kind of unit', 'Air conditioner');
  await type(page, 'Nominal size', '3');
  await openPart(page, 'Readings');
  await page.getByRole('button', { name: 'Take readings' }).click();
  await pick(page, 'Mode', 'Heating');
  const sentence = 'Set the run to cooling, or set the unit to heat pump if it heats.';
  await page.getByRole('link', { name: sentence }).waitFor();
  await pick(page, 'Mode', 'Cooling');
  await page.getByRole('link', { name: sentence }).waitFor({ state: 'detached' });
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: an empty visit says what it needs when asked for results, and never blocks', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  await startVisit(page);
  await page.getByRole('button', { name: 'Results' }).click();
  await page.getByText('No answer yet. It needs:').first().waitFor();
  const needed = page.getByRole('link', { name: /nominal size/i });
  expect(await needed.count()).toBeGreaterThan(0);
  await needed.last().click();
  expect(await box(page, 'Nominal size').evaluate((el) => el === document.activeElement)).toBe(true);
  expect(trouble).toEqual([]);
  await page.context().close();
});
