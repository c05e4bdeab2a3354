import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, SIZES, watchedPage } from './browser';
import { box, idOf, openPart, pick, saved, startVisit, type } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('wiring: a reload in the middle of typing keeps everything, wrong or right', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  await startVisit(page);
  await openPart(page, 'Readings');
  await page.getByRole('button', { name: 'Take readings' }).click();
  await box(page, 'Suction pressure').pressSequentially('11');
  await box(page, 'Suction line temperature').pressSequentially('5o');
  await page.reload();
  await page.waitForFunction(() => document.querySelectorAll('input.box').length > 5);
  expect(await box(page, 'Suction pressure').inputValue()).toBe('11');
  expect(await box(page, 'Suction line temperature').inputValue()).toBe('5o');
  await saved(page);
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: the sign button makes a freezing line negative, and the copy of a run can be taken back', async () => {
  const { page, trouble } = await watchedPage(browser);
  await startVisit(page);
  await openPart(page, 'Readings');
  await page.getByRole('button', { name: 'Take readings' }).click();
  await type(page, 'Suction line temperature', '12');
  await page.getByRole('button', { name: 'Change the sign of: Suction line temperature' }).click();
  expect(await box(page, 'Suction line temperature').inputValue()).toBe('-12');
  expect(await page.getByRole('button', { name: /^Change the sign of: Suction pressure/ }).count()).toBe(0);
  await page.getByRole('button', { name: /^Copy/ }).click();
  const runs = page.getByRole('navigation', { name: 'Runs' }).getByRole('link');
  await page.waitForURL(/#readings-2$/);
  expect(await runs.count()).toBe(2);
  await page.getByRole('button', { name: /^Delete/ }).click();
  expect(await runs.count()).toBe(1);
  await page.getByRole('button', { name: /^Undo/ }).click();
  expect(await runs.count()).toBe(2);
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: what is typed without a connection is kept here and sent when it is back', async () => {
  const { page } = await watchedPage(browser);
  const id = await startVisit(page);
  await saved(page);
  await page.context().setOffline(true);
  await type(page, 'Town', 'Gannet Cross');
  await page
    .getByText(/sent when there is signal/)
    .first()
    .waitFor();
  await page.context().setOffline(false);
  await saved(page);
  const stored = await (await fetch(`${inject('address')}/visits/${id}/draft`)).json();
  expect(stored.draft.site.town).toBe('Gannet Cross');
  await page.context().close();
});

test('wiring: two devices on one visit: both versions are shown and the user chooses', async () => {
  const here = await watchedPage(browser);
  const id = await startVisit(here.page);
  await pick(here.page, 'Kind of unit', 'Heat pump');
  await saved(here.page);
  const there = await watchedPage(browser, { viewport: SIZES.phone });
  await there.page.goto(`/visits/${id}#house`);
  await type(there.page, 'Nominal size', '3');
  await there.page
    .getByText(/^Saved \d\d:\d\d$/)
    .first()
    .waitFor();

  await type(here.page, 'Nominal size', '4');
  await type(here.page, 'Town', 'Mossgate');
  await here.page.getByText('This visit was also changed somewhere else').waitFor();
  expect(await box(here.page, 'Nominal size').inputValue()).toBe('4');
  await here.page.getByLabel('There: 3').check();
  await here.page.getByRole('button', { name: 'Take what is marked below' }).click();
  await saved(here.page);
  const stored = await (await fetch(`${inject('address')}/visits/${id}/draft`)).json();
  expect(stored.draft.unit.nominalTons).toBe('3');
  expect(stored.draft.site.town).toBe('Mossgate');
  expect(idOf(here.page)).toBe(id);
  await here.page.context().close();
  await there.page.context().close();
});

test('wiring: a save sent by a foreign page is refused', async () => {
  const answer = await fetch(`${inject('address')}/visits/restricted-orifice/draft`, {
    method: 'PUT',
    headers: { 'content-type': 'application/json', origin: 'http://elsewhere.example' },
    body: JSON.stringify({ baseRevision: 1, draft: {} }),
  });
  expect(answer.status).toBe(403);
});
