import { expect } from 'vitest';

/** Matchers that print value, expectation, error and tolerance; importing the file installs them. */
expect.extend({
  toBeCloseToWithin(received: unknown, expected: number | null, tolerance: number) {
    const error = typeof received === 'number' && expected !== null ? received - expected : Number.NaN;
    return {
      pass: Math.abs(error) <= tolerance,
      message: () =>
        `got ${JSON.stringify(received)}, expected ${expected}, error ${error}, tolerance ${tolerance}`,
    };
  },
  toBeWithinFrac(received: unknown, expected: number | null, toleranceFrac: number) {
    const error = typeof received === 'number' && expected !== null ? received / expected - 1 : Number.NaN;
    return {
      pass: Math.abs(error) <= toleranceFrac,
      message: () =>
        `got ${JSON.stringify(received)}, expected ${expected}, error ${error}, tolerance ${toleranceFrac}`,
    };
  },
});

declare module 'vitest' {
  interface Matchers<T> {
    /** Absolute tolerance, inclusive. */
    toBeCloseToWithin(expected: number | null, tolerance: number): T;
    /** Relative tolerance, inclusive. */
    toBeWithinFrac(expected: number | null, toleranceFrac: number): T;
  }
}
