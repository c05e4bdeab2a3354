import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** Starts a visit from the list and returns its id. */
export async function startVisit(page: Page): Promise<string> {
  await page.goto('/');
  await page.getByRole('button', { name: 'Start a new visit' }).click();
  await page.waitForURL(/\/visits\/visit-/);
  await page.getByRole('heading', { name: 'Visit without a name' }).waitFor();
  return idOf(page);
}

/** Id of the visit the page shows. */
export function idOf(page: Page): string {
  return /\/visits\/([a-z0-9-]+)/.exec(page.url())?.[1] ?? '';
}

/** Goes to a part of the visit as a person would, over the list of parts where the others are out of sight. */
export async function openPart(page: Page, name: string): Promise<void> {
  const back = page.getByRole('link', { name: 'All parts of this visit' });
  if (await back.isVisible()) await back.click();
  await page.getByRole('navigation', { name: 'Parts of the visit' }).getByRole('link', { name }).click();
}

/** Box of a number or a text by its label, unit left out. */
export function box(page: Page, label: string | RegExp) {
  const start = typeof label === 'string' ? new RegExp(`^${escaped(label)}( ?,|$)`) : label;
  return page.getByRole('textbox', { name: start });
}

export async function type(page: Page, label: string | RegExp, text: string): Promise<void> {
  await box(page, label).first().fill(text);
}

/** Picks one of a few answers. */
export async function pick(page: Page, question: string, answer: string): Promise<void> {
  await page.getByRole('group', { name: question }).getByText(answer, { exact: true }).click();
}

/** Waits until the newest change has reached the database. */
export async function saved(page: Page): Promise<void> {
  await page
    .getByText(/^Saved( \d\d:\d\d)?$/)
    .first()
    .waitFor();
}

/** Breaches of the accessibility rules (WCAG 2.2 AA and best practice) on the page as it stands. */
export async function breaches(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`,
  );
}

/** How far the page reaches beyond the screen [CSS pixels]. */
export function tooWide(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
