import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, SIZES, watchedPage } from './browser';
import { breaches, tooWide } from './visit-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const PLACES = [
  '/',
  '/deleted',
  '/visits/restricted-orifice',
  '/visits/restricted-orifice#house',
  '/visits/restricted-orifice#readings',
  '/visits/restricted-orifice#seen',
  '/visits/restricted-orifice#money',
  '/visits/restricted-orifice#results',
  '/visits/restricted-orifice/compare',
];
/** Every size and both lights; contrast hangs on the light, everything else on the size. */
const CASES = [
  { size: 'phone', light: 'light', viewport: SIZES.phone },
  { size: 'tablet', light: 'dark', viewport: SIZES.tablet },
  { size: 'desk', light: 'light', viewport: SIZES.desk },
] as const;

/** The rules look at every element of long pages; a busy machine takes its time. */
const PATIENCE_MS = 240_000;

test.for(CASES)(
  'wiring: no page breaks an accessibility rule, $size, $light',
  { timeout: PATIENCE_MS },
  async ({ light, viewport }) => {
    const { page, trouble } = await watchedPage(browser, {
      viewport,
      colorScheme: light,
      reducedMotion: 'reduce',
    });
    const found: string[] = [];
    let looked = 0;
    for (const place of PLACES) {
      await page.goto('about:blank');
      await page.goto(place, { waitUntil: 'networkidle' });
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll('details')) fold.open = true;
      });
      await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
      found.push(...(await breaches(page)).map((breach) => `${place} ${breach}`));
      if ((await tooWide(page)) > 0) found.push(`${place} is wider than the screen`);
      looked += 1;
    }
    expect(looked).toBe(PLACES.length);
    expect(found).toEqual([]);
    expect(trouble).toEqual([]);
    await page.context().close();
  },
);

test('wiring: on a phone everything one presses is at least 44 px high, and nothing scrolls sideways at 320 px', async () => {
  const { page } = await watchedPage(browser, { viewport: SIZES.phone });
  const small: string[] = [];
  let measured = 0;
  for (const place of PLACES.slice(1)) {
    await page.goto('about:blank');
    await page.goto(place, { waitUntil: 'networkidle' });
    const heights = await page.evaluate(() =>
      [
        ...document.querySelectorAll(
          'button, a, summary, select, input:not(.sr-only):not([type=checkbox]):not([type=radio])',
        ),
      ]
        .filter((el) => el.getClientRects().length > 0 && !el.classList.contains('sr-only'))
        .map((el) => ({
          height: el.getBoundingClientRect().height,
          words: (el.textContent ?? '').slice(0, 40),
        })),
    );
    measured += heights.length;
    small.push(
      ...heights.filter(({ height }) => height > 1 && height < 44).map(({ words }) => `${place}: ${words}`),
    );
    await page.setViewportSize({ width: 320, height: 640 });
    if ((await tooWide(page)) > 0) small.push(`${place} scrolls sideways at 320 px`);
    await page.setViewportSize(SIZES.phone);
  }
  expect(measured).toBeGreaterThan(100);
  expect(small).toEqual([]);
  await page.context().close();
});
