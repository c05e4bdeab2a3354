import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';

/** Set by `npm test`, which finds or installs it; Debian's place otherwise. */
const CHROMIUM = process.env.KEEPWORTH_CHROMIUM ?? '/usr/bin/chromium';

/** No calls home, which a closed network refuses, and no sandbox, which a container does not offer. */
const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Widths the pages are made for: a phone, a tablet, a desk [CSS pixels]. */
export const SIZES = {
  phone: { width: 390, height: 844 },
  tablet: { width: 820, height: 1180 },
  desk: { width: 1440, height: 900 },
} as const;

/** A new headless browser; the test closes it. */
export function launchBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: CHROMIUM, args: FLAGS });
}

/** A page, and everything that went wrong on it so far: errors, failed answers, calls to elsewhere. */
export type WatchedPage = { readonly page: Page; readonly trouble: string[] };

/**
 * A page of its own profile that notes whatever goes wrong on it.
 *
 * @param options size, offline, colour scheme ...; a desk when left out
 */
export async function watchedPage(
  browser: Browser,
  options: BrowserContextOptions = {},
): Promise<WatchedPage> {
  const address = inject('address');
  const context = await browser.newContext({ viewport: SIZES.desk, baseURL: address, ...options });
  const page = await context.newPage();
  const trouble: string[] = [];
  page.on('pageerror', (error) => trouble.push(`uncaught: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') {
      trouble.push(`console ${message.type()}: ${message.text()}`);
    }
  });
  page.on('response', (response) => {
    if (response.status() >= 400) trouble.push(`${response.status()} for ${response.url()}`);
  });
  page.on('request', (request) => {
    const url = request.url();
    const own = url.startsWith(`${address}/`) || /^(data|blob):/.test(url);
    if (!own) trouble.push(`call to elsewhere: ${url}`);
  });
  return { page, trouble };
}
