import { expect } from 'vitest';
import { isOutOfRange, type OutOfRange } from '@/lib/diagnostics/refrigerant/out-of-range';

/** One comparison whose failure prints inputs, expected, actual, error and tolerance. */
export function expectWithin(
  inputs: string,
  actual: number | object,
  expected: number,
  tolerance: number,
): void {
  const error = typeof actual === 'number' ? Math.abs(actual - expected) : Number.NaN;
  const shown = typeof actual === 'number' ? actual : JSON.stringify(actual);
  expect(
    error <= tolerance,
    `${inputs}: expected ${expected}, actual ${shown}, error ${error}, tolerance ${tolerance}`,
  ).toBe(true);
}

/** The value of a property function, or a failure that says why there is none. */
export function valueIn<T extends number | object>(result: T): Exclude<T, OutOfRange> {
  if (isOutOfRange(result)) throw new Error(`no value: ${result.why}`);
  return result as Exclude<T, OutOfRange>;
}
