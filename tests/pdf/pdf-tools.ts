import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from 'vitest';

/** Half an inch less what a letter may reach over its box. [pt] */
const leastMargin = 35;

/** What one of poppler's programs says about a PDF, on its two outputs. */
export function poppler(
  program: string,
  args: readonly string[],
  pdf: Uint8Array,
): { out: string; err: string } {
  const folder = mkdtempSync(join(tmpdir(), 'keepworth-sheet-'));
  try {
    const file = join(folder, 'sheet.pdf');
    writeFileSync(file, pdf);
    const result = spawnSync(
      program,
      args.map((arg) => (arg === 'FILE' ? file : arg)),
      { encoding: 'utf8' },
    );
    if (result.error !== undefined) throw result.error;
    return { out: result.stdout, err: result.stderr };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Text of a PDF in the order in which it was drawn, with every run of blanks and line breaks as one blank. */
export function textOf(pdf: Uint8Array): string {
  return oneLine(poppler('pdftotext', ['-raw', 'FILE', '-'], pdf).out);
}

/** Text as it is compared: blanks of any kind and width as one, hyphens of broken words gone. */
export function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

export type Word = {
  readonly page: number;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

/** Boxes of all words, in points from the top left corner. */
export function wordsOf(pdf: Uint8Array): { words: Word[]; sizes: [number, number][] } {
  const { out } = poppler('pdftotext', ['-bbox', 'FILE', '-'], pdf);
  const words: Word[] = [];
  const sizes: [number, number][] = [];
  for (const line of out.split('\n')) {
    const page = /<page width="([\d.]+)" height="([\d.]+)"/.exec(line);
    if (page !== null) sizes.push([Number(page[1]), Number(page[2])]);
    const word = /<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)"/.exec(line);
    if (word === null) continue;
    const [left = 0, top = 0, right = 0, bottom = 0] = word.slice(1).map(Number);
    words.push({ page: sizes.length, left, top, right, bottom });
  }
  return { words, sizes };
}

/** No letter outside the margins of its page. */
export function expectInsideMargins(pdf: Uint8Array): void {
  const { words, sizes } = wordsOf(pdf);
  expect(words.length).toBeGreaterThan(30);
  const outside = words.filter((word) => {
    const [width, height] = sizes[word.page - 1] ?? [0, 0];
    return (
      word.left < leastMargin ||
      word.top < leastMargin - 6 ||
      word.right > width - leastMargin ||
      word.bottom > height - leastMargin + 6
    );
  });
  expect(outside).toEqual([]);
}

/** Words that cover one another: printed over, or run into the next line. */
export function expectNoOverlap(pdf: Uint8Array): void {
  const { words } = wordsOf(pdf);
  const pairs = words.flatMap((a, i) =>
    words
      .slice(i + 1, i + 200)
      .filter((b) => a.page === b.page && overlapPt(a.left, a.right, b.left, b.right) > 1)
      .filter((b) => overlapPt(a.top, a.bottom, b.top, b.bottom) > 0.35 * (a.bottom - a.top))
      .map((b) => [a, b]),
  );
  expect(pairs).toEqual([]);
}

function overlapPt(low: number, high: number, otherLow: number, otherHigh: number): number {
  return Math.min(high, otherHigh) - Math.max(low, otherLow);
}
