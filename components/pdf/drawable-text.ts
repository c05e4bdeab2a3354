import type { Sheet } from '@/lib/sheet/sheet';
import coverage from './data/font-coverage.json';

const standIn = '?';

/**
 * Text with only such characters as the font can draw; others would print over one another.
 * A letter with an unknown accent keeps its letter; anything else becomes a question mark, so that the gap is seen.
 * Line breaks and tabs become blanks.
 *
 * Check: tests/pdf/drawable-text.test.ts
 */
export function drawableText(text: string): string {
  return [...text.normalize('NFC').replace(/\s/g, (blank) => (blank === '\u00a0' ? blank : ' '))]
    .map((character) => (isCovered(character) ? character : withoutAccent(character)))
    .join('');
}

/** The sheet with every text made drawable; the data itself keeps what was typed. */
export function drawableSheet(sheet: Sheet): Sheet {
  return mapTexts(sheet) as Sheet;
}

function isCovered(character: string): boolean {
  const code = character.codePointAt(0) ?? 0;
  return coverage.ranges.some(([first = 0, last = 0]) => code >= first && code <= last);
}

function withoutAccent(character: string): string {
  const [base = standIn, ...marks] = character.normalize('NFKD');
  if (/^\p{Mark}$/u.test(character) || /^\p{Default_Ignorable_Code_Point}$/u.test(character)) return '';
  return marks.length > 0 && isCovered(base) ? base : standIn;
}

function mapTexts(value: unknown): unknown {
  if (typeof value === 'string') return drawableText(value);
  if (Array.isArray(value)) return value.map(mapTexts);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, mapTexts(inner)]));
}
