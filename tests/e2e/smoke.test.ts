import { get } from 'node:http';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openStore } from '@/lib/store/open-store';
import { launchBrowser, SIZES, watchedPage } from './browser';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

test('wiring: the first page lists the demo at every width, without errors or calls to elsewhere', async () => {
  const store = await openStore(inject('dataFolder'));
  const visits = await store.listVisits();
  await store.close();
  // Other tests may have added visits, some without a name yet.
  const customers = visits.flatMap(({ title }) => title.customer ?? []);
  expect(customers.length).toBeGreaterThanOrEqual(5);
  const seen: string[] = [];
  for (const [name, viewport] of Object.entries(SIZES)) {
    const { page, trouble } = await watchedPage(browser, { viewport });
    await page.goto('/', { waitUntil: 'networkidle' });
    for (const customer of customers)
      await page.getByText(customer).first().waitFor({ state: 'visible', timeout: 5_000 });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wide, `pixels too wide on the ${name}`).toBeLessThanOrEqual(0);
    expect(trouble).toEqual([]);
    await page.context().close();
    seen.push(name);
  }
  expect(seen).toEqual(['phone', 'tablet', 'desk']);
});

test('wiring: only names of this machine are answered', async () => {
  const statusFor = (host: string) =>
    new Promise<number>((resolve, reject) => {
      get(inject('address'), { headers: { host } }, (response) => {
        response.resume();
        resolve(response.statusCode ?? 0);
      }).on('error', reject);
    });
  const own = new URL(inject('address')).host;
  expect(await statusFor(own)).toBe(200);
  expect(await statusFor(own.replace('127.0.0.1', 'localhost'))).toBe(200);
  expect(await statusFor('keepworth.example')).toBe(421);
  expect(await statusFor('127.0.0.1.keepworth.example')).toBe(421);
});

test('wiring: every answer carries the headers that keep visits on this machine', async () => {
  const response = await fetch(inject('address'));
  const policy = response.headers.get('content-security-policy') ?? '';
  expect(policy).toContain("default-src 'self'");
  expect(policy).toContain("connect-src 'self'");
  expect(policy).not.toContain('unsafe-eval');
  expect(response.headers.get('referrer-policy')).toBe('no-referrer');
  expect(response.headers.get('x-powered-by')).toBeNull();
});

test('wiring: a page that is not there says so with its status', async () => {
  const { page, trouble } = await watchedPage(browser);
  const response = await page.goto('/visits/no-such-visit-anywhere');
  expect(response?.status()).toBe(404);
  await page.getByRole('heading').first().waitFor({ state: 'visible' });
  expect(trouble.filter((line) => !line.includes('404'))).toEqual([]);
  await page.context().close();
});
