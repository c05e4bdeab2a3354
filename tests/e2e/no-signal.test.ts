import { readFileSync, writeFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, SIZES, watchedPage } from './browser';
import { box, breaches, idOf, openPart, pick, saved, startVisit, type } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** Waits until this browser has kept all it needs to go on alone. */
async function keptPages(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    for (let i = 0; i < 300 && navigator.serviceWorker.controller === null; i++)
      await new Promise((resolve) => setTimeout(resolve, 50));
  });
  expect(await page.evaluate(() => navigator.serviceWorker.controller?.state)).toBe('activated');
}

type Stored = { revision: number; draft: { unit: Record<string, string>; runs: Record<string, string>[] } };

async function stored(id: string): Promise<Stored | undefined> {
  const answer = await fetch(`${inject('address')}/visits/${id}/draft`);
  return answer.ok ? ((await answer.json()) as Stored) : undefined;
}

const WAITING = /^Kept on this device \d\d:\d\d, sent when there is signal$/;

test('wiring: with no signal an open visit goes on, a new one is started, and both reach the office once', async () => {
  const { page } = await watchedPage(browser, { viewport: SIZES.phone });
  const first = await startVisit(page);
  await keptPages(page);
  await page.goto(`/visits/${first}#house`);
  await pick(page, 'Kind of unit', 'Heat pump');
  await saved(page);

  await page.context().setOffline(true);
  await page.reload();
  await page.getByRole('heading', { name: 'Visit without a name' }).waitFor();
  await type(page, 'Nominal size', '3');
  await page.getByText(WAITING).first().waitFor();
  await openPart(page, 'Readings');
  await page.getByRole('button', { name: 'Take readings' }).click();
  await type(page, 'Suction pressure', '118');
  await type(page, 'Suction line temperature', '55');
  // Worked out beside the page, without the office.
  await page
    .getByText(/Leaving it: about \$/)
    .first()
    .waitFor();
  await page.reload();
  await page.waitForFunction(() => document.querySelectorAll('input.box').length > 5);
  expect(await box(page, 'Suction pressure').inputValue()).toBe('118');
  expect(await breaches(page)).toEqual([]);
  await page.goto(`/visits/${first}/compare`);
  await page.getByRole('heading', { name: 'Leave it, repair it or replace it' }).waitFor();
  await page
    .getByText(/Leave as is/)
    .filter({ visible: true })
    .first()
    .waitFor();

  await page.goto('/');
  await page.getByText(/^No signal. This list is as of/).waitFor();
  const kept = page.getByRole('region', { name: 'Kept on this device' });
  expect(await kept.getByRole('listitem').count()).toBe(1);
  await page.getByRole('button', { name: 'Start a new visit' }).click();
  await page.waitForURL(/\/visits\/visit-/);
  await page.getByRole('heading', { name: 'Visit without a name' }).waitFor();
  const second = idOf(page);
  expect(second).not.toBe(first);
  await page.goto(`/visits/${second}#house`);
  await type(page, 'Nominal size', '2.5');
  await page.getByText(WAITING).first().waitFor();
  expect(await stored(second)).toBeUndefined();

  await page.context().setOffline(false);
  await saved(page);
  await page.goto('/');
  await page.getByRole('heading', { name: 'Visits' }).waitFor();
  await kept.waitFor({ state: 'detached' });
  expect((await stored(first))?.draft.unit).toEqual({ kind: 'heatPump', nominalTons: '3' });
  expect((await stored(first))?.draft.runs[0]?.suctionPsig).toBe('118');
  expect((await stored(second))?.draft.unit).toEqual({ nominalTons: '2.5' });
  const links = await page.getByRole('link').evaluateAll((all) => all.map((a) => a.getAttribute('href')));
  expect(links.filter((href) => href === `/visits/${first}` || href === `/visits/${second}`)).toHaveLength(2);
  await page.context().close();
});

test('wiring: a visit changed elsewhere while there was no signal is shown as a conflict, with nothing dropped', async () => {
  const { page } = await watchedPage(browser);
  const id = await startVisit(page);
  await keptPages(page);
  await page.context().setOffline(true);
  await type(page, 'Nominal size', '4');
  await page.getByText(WAITING).first().waitFor();
  const there = await stored(id);
  const answer = await fetch(`${inject('address')}/visits/${id}/draft`, {
    method: 'PUT',
    body: JSON.stringify({
      baseRevision: there?.revision,
      draft: { ...there?.draft, unit: { nominalTons: '3' } },
    }),
  });
  expect(answer.status).toBe(200);
  // Closed here; the list may send it, and must not settle it.
  await page.goto('/');
  await page.context().setOffline(false);
  await page.reload();
  const kept = page.getByRole('region', { name: 'Kept on this device' });
  await kept.getByText(/also changed somewhere else/).waitFor();
  await kept.getByRole('link').first().click();
  await page.getByText('This visit was also changed somewhere else').waitFor();
  expect(await page.getByLabel('Here: 4').isChecked()).toBe(true);
  expect(await page.getByLabel('There: 3').isChecked()).toBe(false);
  expect((await stored(id))?.draft.unit.nominalTons).toBe('3');
  await page.getByRole('button', { name: 'Take all from here' }).click();
  await saved(page);
  expect((await stored(id))?.draft.unit.nominalTons).toBe('4');
  await page.context().close();
});

test('wiring: a visit never opened here says so when there is no signal', async () => {
  const { page } = await watchedPage(browser, { viewport: SIZES.phone });
  await page.goto('/');
  await keptPages(page);
  await page.context().setOffline(true);
  await page.goto('/visits/restricted-orifice');
  await page.getByRole('heading', { name: 'This visit is not on this device' }).waitFor();
  expect(await breaches(page)).toEqual([]);
  await page.context().setOffline(false);
  await page.getByRole('button', { name: 'Try again' }).click();
  await page.getByRole('navigation', { name: 'Parts of the visit' }).waitFor();
  await page.context().close();
});

test('wiring: a new version is offered, and taking it over keeps what is being typed', async () => {
  const file = '.next/service-worker.js';
  const before = readFileSync(file, 'utf8');
  const { page, trouble } = await watchedPage(browser);
  try {
    const id = await startVisit(page);
    await keptPages(page);
    writeFileSync(file, `${before}\n// a newer build`);
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    const take = page.getByRole('button', { name: 'Use it now' });
    await take.waitFor();
    await box(page, 'Town').pressSequentially('Gannet Cr');
    await take.click();
    await take.waitFor({ state: 'detached' });
    await page.waitForFunction(() => document.querySelectorAll('input.box').length > 5);
    expect(await box(page, 'Town').inputValue()).toBe('Gannet Cr');
    expect(idOf(page)).toBe(id);
    expect(trouble).toEqual([]);
  } finally {
    writeFileSync(file, before);
  }
  await page.context().close();
});
