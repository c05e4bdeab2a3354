import { phrase, type Words } from './phrase';

/**
 * Name of a month.
 *
 * @param month  1..12
 * @param length "Jan", "January", or its letter
 * Check: tests/sheet/month-words.test.ts
 */
export function monthName(words: Words, month: number, length: 'short' | 'long' | 'narrow'): string {
  const day = new Date(Date.UTC(2026, month - 1, 15));
  return new Intl.DateTimeFormat(words.tag, { month: length, timeZone: 'UTC' }).format(day);
}

/**
 * Months told as runs of numbers ("1-5, 12") in the locale's words.
 *
 * @returns "Jan to May, Dec"; any other text as it is
 * Check: tests/sheet/month-words.test.ts
 */
export function monthRunWords(words: Words, runs: string): string {
  if (!/^\d{1,2}(-\d{1,2})?(, \d{1,2}(-\d{1,2})?)*$/.test(runs)) return runs;
  return runs
    .split(', ')
    .map((run) => {
      const [from = '', to] = run.split('-').map((month) => monthName(words, Number(month), 'short'));
      return to === undefined ? from : phrase(words, 'months.run', { from, to });
    })
    .join(', ');
}
