import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchBrowser, SIZES, watchedPage } from './browser';
import { box, breaches, pick, saved, startVisit, type } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** Answers of the office other than 200 are what these tests are about. */
const unexpected = (trouble: readonly string[], status: number) =>
  trouble.filter((line) => !line.includes(String(status)));

const storedDraft = async (id: string) =>
  (await fetch(`${inject('address')}/visits/${id}/draft`)).json() as Promise<{
    revision: number;
    draft: { site: { town?: string }; note?: string };
  }>;

const alert = (page: Page, name: string) => page.getByRole('alert', { name });

test('wiring: a visit too big to keep is refused by name, with a link to the long note; shortened it is saved', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  const id = await startVisit(page);
  await page.goto(`/visits/${id}#house`);
  const note = box(page, 'Note on the visit');
  await note.fill('x'.repeat(1_100_000));
  const refused = alert(page, 'The office did not take the last change');
  await refused.getByText(/limit is JSON of at most 1,048,576 bytes/).waitFor();
  expect(await breaches(page)).toEqual([]);
  await refused.getByRole('link', { name: 'Note on the visit: 1,100,000 characters long' }).click();
  expect(await note.evaluate((el) => el === document.activeElement)).toBe(true);
  expect((await storedDraft(id)).draft.note).toBeUndefined();
  await note.fill('short');
  await saved(page);
  expect(await refused.count()).toBe(0);
  expect((await storedDraft(id)).draft.note).toBe('short');
  expect(unexpected(trouble, 422)).toEqual([]);
  await page.context().close();
});

test('wiring: a visit the office has lost is named and sent again as it is, once', async () => {
  const { page, trouble } = await watchedPage(browser);
  const id = await startVisit(page);
  await type(page, 'Town', 'Gannet Cross');
  await saved(page);
  // As after an older backup was put back: the office has no such visit, whatever revision the draft was made from.
  await page.route(`**/visits/${id}/draft`, (route) =>
    (route.request().postDataJSON() as { baseRevision: number }).baseRevision > 0
      ? route.fulfill({ status: 404, json: { error: 'There is no such visit' } })
      : route.fulfill({ status: 200, json: { revision: 1 } }),
  );
  await type(page, 'Town', 'Mossgate');
  const gone = alert(page, 'The office does not have this visit');
  await gone.getByRole('button', { name: 'Send it to the office as it is here' }).click();
  await saved(page);
  expect(await gone.count()).toBe(0);
  expect(await box(page, 'Town').inputValue()).toBe('Mossgate');
  expect(unexpected(trouble, 404)).toEqual([]);
  await page.context().close();
});

test('wiring: a climate city without a typical year is named beside its field, and the list on top leads there', async () => {
  const { page } = await watchedPage(browser);
  const id = await startVisit(page);
  await pick(page, 'Kind of unit', 'Heat pump');
  await saved(page);
  const { revision, draft } = await storedDraft(id);
  const answer = await fetch(`${inject('address')}/visits/${id}/draft`, {
    method: 'PUT',
    body: JSON.stringify({
      baseRevision: revision,
      draft: { ...draft, site: { climate: { kind: 'city', city: 'Gannet Cross' } } },
    }),
  });
  expect(answer.status).toBe(200);
  await page.goto('about:blank');
  await page.goto(`/visits/${id}`);
  const weather = page.getByRole('combobox', { name: 'Weather' });
  expect(await weather.evaluate((el: HTMLSelectElement) => el.selectedOptions[0]?.text)).toBe(
    'Gannet Cross (not in this list)',
  );
  expect(await weather.getAttribute('aria-invalid')).toBe('true');
  const beside = await weather.evaluate(
    (el) => document.getElementById(el.getAttribute('aria-describedby') ?? '')?.textContent,
  );
  expect(beside).toContain('Climate city');
  await page.getByRole('link', { name: /Climate city/ }).click();
  expect(await weather.evaluate((el) => el === document.activeElement)).toBe(true);
  await weather.selectOption({ index: 3 });
  await page.waitForFunction(() => document.querySelectorAll('[aria-invalid="true"]').length === 0);
  await page.context().close();
});
