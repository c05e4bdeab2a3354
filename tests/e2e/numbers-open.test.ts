import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Appraisal } from '@/lib/appraise/appraisal';
import { wordsOf } from '@/lib/sheet/phrase';
import { quantityWords } from '@/lib/sheet/reading-words';
import { unitsInText } from '@/lib/visit/field-at';
import { launchBrowser, SIZES, watchedPage } from './browser';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('wiring: every derived value stands on the screen as in the record and opens to formula, inputs and source', async () => {
  const { page, trouble } = await watchedPage(browser, { viewport: SIZES.phone });
  await page.goto('/visits/restricted-orifice#results');
  const answer = await page.request.get('/visits/restricted-orifice/appraisal.json');
  const { findings } = (await answer.json()) as Appraisal;
  const derived = findings.runs.flatMap((run) => run.derived);
  expect(derived.length).toBeGreaterThan(10);
  const rows = page.locator('main details:visible');
  const missing: string[] = [];
  for (const value of derived) {
    const words = quantityWords(wordsOf('en'), value.value, value.unit);
    const formula = unitsInText(value.formula);
    const source = unitsInText(value.source);
    const row = [formula, source, words].reduce((left, hasText) => left.filter({ hasText }), rows).first();
    if ((await row.count()) === 0) {
      missing.push(`${value.id}: ${words}`);
      continue;
    }
    await row.locator('summary').first().click();
    const shown = await row.innerText();
    const wanted = [formula, source, 'Made from', 'How sure'];
    missing.push(...wanted.filter((w) => !shown.includes(w)).map((w) => `${value.id} lacks "${w}"`));
    await row.locator('summary').first().click();
  }
  expect(missing).toEqual([]);
  expect(trouble).toEqual([]);
  await page.context().close();
});
