import { z } from 'zod';
import { text } from './quantity';

/** When a value came into force, who set it and why. */
export const change = {
  fromDate: z.iso.date().meta({ label: 'In force from' }),
  setBy: text('Set by', 80),
  why: text('Reason for the change', 400),
};

/** Anything that was put in force, or began, on a date. */
export type Dated = { readonly fromDate: string };

/** Order of time, for sorting; ISO dates compare as text. Check: tests/visit/dated-value.test.ts */
export function byFromDate(a: Dated, b: Dated): number {
  return a.fromDate < b.fromDate ? -1 : Number(a.fromDate > b.fromDate);
}

/**
 * What was in force on a date: of the entries begun by then, the last one begun. Of two begun on the same day the
 * later in the list counts.
 *
 * @param history  in any order
 * @param date     ISO date, inclusive
 * @returns the entry, or undefined when nothing was in force yet
 * ISO dates compare as text.
 * Check: tests/visit/dated-value.test.ts
 */
export function inForce<T extends Dated>(history: readonly T[], date: string): T | undefined {
  return history
    .filter((entry) => entry.fromDate <= date)
    .reduce<T | undefined>(
      (last, entry) => (last && last.fromDate > entry.fromDate ? last : entry),
      undefined,
    );
}
