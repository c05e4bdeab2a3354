import { isOutOfRange, type OutOfRange } from './refrigerant/out-of-range';

/**
 * A property as a number for `derive`, where NaN means "no value here" and never leaves the derivation.
 *
 * @param value  result of a property function
 * @returns the number, or NaN out of range
 * Check: tests/diagnostics/derive.test.ts
 */
export function orNaN(value: number | OutOfRange): number {
  return typeof value === 'number' ? value : Number.NaN;
}

/** The same for a property that is a record: one of its numbers. */
export function partOrNaN<T extends object>(value: T | OutOfRange, part: (value: T) => number): number {
  return isOutOfRange(value) ? Number.NaN : part(value as T);
}
