import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, SIZES, watchedPage } from './browser';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('wiring: a pale colour is refused with the nearest shade offered, a large picture made small, and both reach the sheet', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  await page.goto('/visits/short-stay#house');
  await page.getByLabel('Company colour on your papers').fill('#ffd700');
  await page.getByText('#ffd700 is too pale').waitFor();
  await page.getByRole('button', { name: /nearest shade/ }).click();
  await page.getByText('is too pale').waitFor({ state: 'detached' });
  const jpeg = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    canvas.width = 2_000;
    canvas.height = 600;
    canvas.getContext('2d')?.fillRect(0, 0, 1_000, 600);
    return canvas.toDataURL('image/jpeg').slice('data:image/jpeg;base64,'.length);
  });
  const logo = page.getByLabel('Company logo (PNG or JPEG)');
  await logo.setInputFiles({ name: 'notes.txt', mimeType: 'text/plain', buffer: Buffer.from('no picture') });
  await page.getByText('notes.txt is not a PNG or JPEG picture').waitFor();
  await logo.setInputFiles({ name: 'logo.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(jpeg, 'base64') });
  await page.getByRole('img', { name: 'Company logo (PNG or JPEG)' }).waitFor();
  const visit = async () =>
    (await (await page.request.get('/visits/short-stay/visit.json')).json()) as {
      company: { accent?: string; logo?: string };
    };
  await expect
    .poll(async () => (await visit()).company.logo?.slice(0, 22), { timeout: 20_000 })
    .toBe('data:image/png;base64,');
  expect((await visit()).company.accent).toMatch(/^#[0-9a-f]{6}$/);
  await page.goto('/visits/short-stay/sheet');
  expect(await page.locator('article header').innerHTML()).toContain('data:image/png;base64,');
  expect((await page.request.get('/visits/short-stay/sheet.pdf')).status()).toBe(200);
  expect(trouble).toEqual([]);
});
