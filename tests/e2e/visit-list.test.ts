import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, SIZES, watchedPage } from './browser';
import { breaches, idOf, saved, startVisit, tooWide, type } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const rows = (page: Page) => page.getByRole('region', { name: 'Visits' }).getByRole('listitem');
const rowOf = (page: Page, name: string) => rows(page).filter({ hasText: name });

/** A visit with a customer of its own, saved. */
async function namedVisit(page: Page, customer: string): Promise<string> {
  const id = await startVisit(page);
  await page.goto(`/visits/${id}#house`);
  await type(page, 'Customer', customer);
  await saved(page);
  return id;
}

test('wiring: search, filter and order stand in the address and hold for whoever opens it', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  await namedVisit(page, 'Zéphyrine Example');
  await page.goto('/');
  await page.getByRole('searchbox').fill('zephyrine');
  await rowOf(page, 'Zéphyrine Example').waitFor();
  expect(await rows(page).count()).toBe(1);
  await page.locator('summary', { hasText: 'Filters' }).click();
  await page.getByRole('combobox', { name: 'What is advised' }).selectOption('unfinished');
  await page.getByRole('combobox', { name: 'Order' }).selectOption('customer');
  expect(new URL(page.url()).search).toBe('?search=zephyrine&advice=unfinished&sort=customer');
  const colleague = await watchedPage(browser);
  await colleague.page.goto(page.url());
  await rowOf(colleague.page, 'Zéphyrine Example').waitFor();
  expect(await rows(colleague.page).count()).toBe(1);
  expect(await breaches(page)).toEqual([]);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  await page.getByRole('combobox', { name: 'What is advised' }).selectOption('replace');
  await page.getByText('No visit answers to this search and these filters.').waitFor();
  await page.getByRole('button', { name: 'Show all visits' }).click();
  expect(await rows(page).count()).toBeGreaterThan(5);
  expect([...trouble, ...colleague.trouble]).toEqual([]);
  await page.context().close();
  await colleague.page.context().close();
});

test('wiring: a deleted visit can be put back at once and later, and is never lost', async () => {
  const { page, trouble } = await watchedPage(browser);
  const id = await namedVisit(page, 'Quillon Example');
  await page.goto('/');
  const remove = async () => {
    await rowOf(page, 'Quillon Example').locator('summary').click();
    await rowOf(page, 'Quillon Example').getByRole('button', { name: 'Delete' }).click();
    await rowOf(page, '“Quillon Example” was deleted.').waitFor();
  };
  await remove();
  expect((await fetch(`${inject('address')}/visits/${id}`)).status).toBe(404);
  await rowOf(page, 'Quillon Example').getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('link', { name: 'Quillon Example' }).waitFor();
  await page.reload();
  await remove();
  await page.getByRole('link', { name: 'Deleted visits' }).click();
  await page.getByRole('button', { name: 'Put back: Quillon Example' }).click();
  await page.getByText('It is on the list again.').waitFor();
  expect(await breaches(page)).toEqual([]);
  await page.getByRole('link', { name: 'Quillon Example' }).click();
  await page.getByRole('heading', { name: 'Quillon Example' }).waitFor();
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: a copy is a new visit of today that says where its readings come from', async () => {
  const { page, trouble } = await watchedPage(browser);
  await page.goto('/?search=&sort=customer');
  const row = rows(page).filter({ has: page.locator('a[href="/visits/closed-registers"]') });
  await row.locator('summary').click();
  await row.getByRole('button', { name: 'Copy with readings' }).click();
  await page.waitForURL(/\/visits\/visit-/);
  await page.getByRole('navigation', { name: 'Parts of the visit' }).waitFor();
  const copy = await (await fetch(`${inject('address')}/visits/${idOf(page)}/draft`)).json();
  const from = await (await fetch(`${inject('address')}/visits/closed-registers/draft`)).json();
  expect(copy.draft.site).toEqual(from.draft.site);
  expect(copy.draft.visitDate).not.toBe(from.draft.visitDate);
  expect(copy.draft.runs[0].note).toMatch(/^Copied from the visit of /);
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: what the customer chose is marked on the comparison, can be undone, and is told in the list', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.tablet });
  await page.goto('/visits/healthy/compare');
  const pick = page.getByRole('combobox', { name: 'Choice', exact: true });
  await pick.selectOption('leave');
  await saved(page);
  await page.getByRole('button', { name: 'Undo: What the customer chose' }).click();
  expect(await pick.inputValue()).toBe('');
  await pick.selectOption('leave');
  await saved(page);
  await page.goto('/?chosen=yes');
  const row = rows(page).filter({ has: page.locator('a[href="/visits/healthy"]') });
  await row.getByText(/^The customer chose: .+, [A-Z][a-z]{2} \d+, \d{4}$/).waitFor();
  expect(trouble).toEqual([]);
  await page.context().close();
});

test('wiring: everything is exported and taken over again; a wrong file is refused in words', async () => {
  const { page } = await watchedPage(browser);
  await namedVisit(page, 'Exported Example');
  await page.goto('/');
  await page.getByText('Everything as a file').click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Export everything (JSON)' }).click(),
  ]);
  const file = await download.path();
  const archive = JSON.parse(readFileSync(file, 'utf8')) as { visits: unknown[] };
  expect(archive.visits.length).toBeGreaterThan(8);
  const input = page.getByLabel('File to take over');
  await input.setInputFiles(file);
  await page.getByText(`${archive.visits.length} visits were here already.`).waitFor();
  await input.setInputFiles({ name: 'notes.txt', mimeType: 'text/plain', buffer: Buffer.from('hello') });
  await page.getByText('“notes.txt” is not a file of Keepworth: it is not JSON.').waitFor();
  const visit = JSON.parse(readFileSync('data-demo/low-charge.json', 'utf8')) as Record<string, unknown>;
  const asFile = (data: unknown) => ({
    name: 'visit.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(data)),
  });
  await input.setInputFiles(asFile({ ...visit, id: 'taken-over' }));
  await page.getByText('1 visit was added.').waitFor();
  await input.setInputFiles(asFile({ ...visit, id: 'taken-over', note: 'other contents' }));
  await page.getByText(/A visit named “taken-over” is here already with other contents/).waitFor();
  await input.setInputFiles(asFile({ ...visit, id: 'faulty', unit: { kind: 'heatPump', nominalTons: 99 } }));
  await page.getByText(/unit\.nominalTons/).waitFor();
  expect((await fetch(`${inject('address')}/visits/faulty/draft`)).status).toBe(404);
  expect(await breaches(page)).toEqual([]);
  await page.context().close();
});
