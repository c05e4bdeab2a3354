import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, SIZES, watchedPage } from './browser';
import { breaches, saved, startVisit } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('wiring: photos of an observation are shrunk, stay on this device, open, and come back with undo', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  const id = await startVisit(page);
  await page.goto(`/visits/${id}#seen`);
  await page.getByRole('checkbox', { name: 'Dirty filter' }).check();
  // A picture drawn here, larger than is kept.
  const drawn = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(2_400, 1_800);
    const context = canvas.getContext('2d');
    for (let i = 0; i < 400 && context !== null; i++) {
      context.fillStyle = `hsl(${i * 37} 60% 50%)`;
      context.fillRect((i * 97) % 2_400, (i * 61) % 1_800, 180, 140);
    }
    const blob = await canvas.convertToBlob({ type: 'image/png' });
    return [...new Uint8Array(await blob.arrayBuffer())];
  });
  const picture = { name: 'filter.png', mimeType: 'image/png', buffer: Buffer.from(drawn) };
  const choose = page.getByLabel('Choose photos: Dirty filter');
  await choose.setInputFiles([picture, picture]);
  const thumbs = page.getByRole('list', { name: 'Photos of: Dirty filter' }).getByRole('img');
  await thumbs.nth(1).waitFor();
  await page.getByText(/Photos stay on this device/).waitFor();
  const sizes = await thumbs.evaluateAll((all) =>
    all.map((img) => [(img as HTMLImageElement).naturalWidth, (img as HTMLImageElement).naturalHeight]),
  );
  expect(sizes).toEqual([
    [1_600, 1_200],
    [1_600, 1_200],
  ]);
  await saved(page);
  const { draft } = await (await fetch(`${inject('address')}/visits/${id}/draft`)).json();
  expect(draft.observations).toEqual([
    { id: 'dirtyFilter', photoIds: [expect.any(String), expect.any(String)] },
  ]);
  expect(JSON.stringify(draft).length).toBeLessThan(1_000);

  await page.getByRole('button', { name: 'Open Photo 1 of: Dirty filter' }).click();
  const dialog = page.getByRole('dialog', { name: 'Photo 1 of: Dirty filter' });
  await dialog.waitFor();
  expect(await breaches(page)).toEqual([]);
  await dialog.getByRole('button', { name: 'Remove' }).click();
  expect(await thumbs.count()).toBe(1);
  await page.getByRole('button', { name: 'Undo: removed photo' }).click();
  await thumbs.nth(1).waitFor();
  await page.reload();
  await thumbs.nth(1).waitFor();

  await choose.setInputFiles([
    { name: 'note.png', mimeType: 'image/png', buffer: Buffer.from('no picture') },
  ]);
  await page.getByText('“note.png” is not a picture that this browser can read.').waitFor();
  await choose.setInputFiles(Array.from({ length: 5 }, () => picture));
  await page.getByText('6 photos are the most for one thing you saw. Remove one to add another.').waitFor();
  await page.getByText('Only 6 photos fit here; the rest was left out.').waitFor();
  expect(await thumbs.count()).toBe(6);
  expect(await breaches(page)).toEqual([]);

  const other = await watchedPage(browser);
  await other.page.goto(`/visits/${id}#seen`);
  await other.page.getByText('Photo 1 of: Dirty filter is on another device').waitFor();
  expect([...trouble, ...other.trouble]).toEqual([]);
  await page.context().close();
  await other.page.context().close();
});
