import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, SIZES, watchedPage } from './browser';
import { breaches, tooWide } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const PATIENCE_MS = 120_000;

test('wiring: every paper of a visit can be had, and says what is missing when it cannot', {
  timeout: PATIENCE_MS,
}, async () => {
  const { page } = await watchedPage(browser);
  const papers = [
    ['/visits/closed-registers/sheet.pdf?paper=a4', 'application/pdf', '%PDF'],
    ['/visits/closed-registers/before-after.pdf', 'application/pdf', '%PDF'],
    ['/visits/closed-registers/before-after.pdf?lang=es', 'application/pdf', '%PDF'],
    ['/visits/closed-registers/record.pdf', 'application/pdf', '%PDF'],
    ['/visits/closed-registers/wall-table.pdf', 'application/pdf', '%PDF'],
    ['/visits/closed-registers/cash-flows.csv', 'text/csv; charset=utf-8', '\ufeffChoice,Kind,Year'],
    ['/visits/closed-registers/cash-flows.csv?lang=es', 'text/csv; charset=utf-8', '\ufeffOpción,Tipo,Año'],
    ['/schemas/appraisal.schema.json', 'application/schema+json; charset=utf-8', '{'],
    ['/schemas/visit.schema.json', 'application/schema+json; charset=utf-8', '{'],
  ] as const;
  for (const [path, type, start] of papers) {
    const answer = await page.request.get(path);
    expect([path, answer.status(), answer.headers()['content-type']]).toEqual([path, 200, type]);
    expect((await answer.body()).toString('utf8').startsWith(start)).toBe(true);
  }
  const none = await page.request.get('/visits/low-charge/before-after.pdf');
  expect([none.status(), await none.text()]).toEqual([422, expect.stringContaining('take a second run')]);
  expect((await page.request.get('/schemas/other.json')).status()).toBe(404);
});

test.for(Object.entries(SIZES))(
  'wiring: the sheet as a page fits, reads and breaks no accessibility rule on a %s',
  { timeout: PATIENCE_MS },
  async ([, viewport]) => {
    const { page, trouble } = await watchedPage(browser, { viewport });
    await page.goto('/visits/restricted-orifice/sheet');
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect(await page.locator('article').innerText()).toMatch(/data mark [0-9a-f]{12}/);
    expect(await breaches(page)).toEqual([]);
    expect(await tooWide(page)).toBeLessThanOrEqual(0);
    expect(trouble).toEqual([]);
  },
);

test('wiring: from the comparison to the sheet in Spanish, as a page and as a PDF', {
  timeout: PATIENCE_MS,
}, async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  await page.goto('/visits/closed-registers/compare');
  const links = await page.locator('a[lang=es]').evaluateAll((all) => all.map((a) => a.getAttribute('href')));
  expect(links).toEqual([
    '/visits/closed-registers/sheet.pdf?lang=es',
    '/visits/closed-registers/sheet?lang=es',
    '/visits/closed-registers/before-after.pdf?lang=es',
  ]);
  await page.getByRole('link', { name: 'Hoja en español, como página' }).click();
  const article = page.locator('article[lang=es-US]');
  await article.waitFor();
  expect(await article.innerText()).toMatch(/Lo que encontramos[\s\S]*Nuestro consejo/);
  expect(await breaches(page)).toEqual([]);
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  const pdf = await page.request.get(links[0] ?? '');
  expect((await pdf.body()).toString('latin1')).toContain('/Lang (es-US)');
  await page.getByRole('link', { name: 'In English' }).click();
  await page.locator('article[lang=en-US]').waitFor();
  expect(trouble).toEqual([]);
});
