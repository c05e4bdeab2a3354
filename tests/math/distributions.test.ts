import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pertQuantile, pertQuantileTable, triangularQuantile } from '@/lib/math/distributions';
import { logGamma, regularisedBeta } from '@/lib/math/regularised-beta';

const spread = fc
  .tuple(
    fc.double({ min: -100, max: 100, noNaN: true }),
    fc.double({ min: 0, max: 50, noNaN: true }),
    fc.double({ min: 0, max: 50, noNaN: true }),
  )
  .filter(([, below, above]) => below + above > 1e-3)
  .map(([mode, below, above]) => ({ min: mode - below, mode, max: mode + above }));
const probability = fc.double({ min: 0, max: 1, noNaN: true });

function triangularCdf(x: number, min: number, mode: number, max: number): number {
  if (x <= min) return 0;
  if (x >= max) return 1;
  const width = max - min;
  return x < mode
    ? ((x - min) / width) * ((x - min) / (mode - min))
    : 1 - ((max - x) / width) * ((max - x) / (max - mode));
}

/** Mean of a distribution from its inverse: the integral of the quantiles. */
function meanOf(quantile: (p: number) => number): number {
  const steps = 20_000;
  let sum = 0;
  for (let i = 0; i < steps; i += 1) sum += quantile((i + 0.5) / steps);
  return sum / steps;
}

describe('triangular distribution', () => {
  test('identity: ends, mode and median of the symmetric one', () => {
    expect(triangularQuantile(0, 2, 3, 7)).toBe(2);
    expect(triangularQuantile(1, 2, 3, 7)).toBe(7);
    expect(triangularQuantile(0.2, 2, 3, 7)).toBeCloseTo(3, 12);
    expect(triangularQuantile(0.5, 0, 1, 2)).toBeCloseTo(1, 12);
    expect(triangularQuantile(0.3, 4, 4, 4)).toBe(4);
  });

  test('identity: mean is (min + mode + max) / 3', () => {
    expect(meanOf((p) => triangularQuantile(p, 2, 3, 7))).toBeCloseTo(4, 5);
  });

  test('property: undone by the distribution function', () => {
    fc.assert(
      fc.property(spread, probability, ({ min, mode, max }, p) => {
        const x = triangularQuantile(p, min, mode, max);
        const back = triangularCdf(x, min, mode, max);
        expect(Math.abs(back - p), JSON.stringify({ min, mode, max, p, x, back })).toBeLessThan(1e-6);
      }),
    );
  });
});

describe('PERT distribution', () => {
  test('outside: regularised incomplete beta [closed forms: I_x(2, 3) = 6x^2 - 8x^3 + 3x^4, I_x(1, b) = 1 - (1 - x)^b]', () => {
    for (const x of [0.05, 0.3, 0.5, 0.77, 0.98]) {
      expect(regularisedBeta(x, 2, 3).value).toBeCloseTo(6 * x ** 2 - 8 * x ** 3 + 3 * x ** 4, 12);
      expect(regularisedBeta(x, 1, 4.5).value).toBeCloseTo(1 - (1 - x) ** 4.5, 12);
      expect(regularisedBeta(x, 2, 3).density).toBeCloseTo(12 * x * (1 - x) ** 2, 10);
    }
    expect.assertions(15);
  });

  test('outside: gamma function [4! = 24, gamma(1/2) = sqrt(pi)]', () => {
    expect(Math.exp(logGamma(5))).toBeCloseTo(24, 10);
    expect(Math.exp(logGamma(0.5))).toBeCloseTo(Math.sqrt(Math.PI), 12);
    expect(Math.exp(logGamma(0.25))).toBeCloseTo(3.625609908221908, 11);
  });

  test('identity: mode at an end has a closed form, 1 - (1 - x)^5', () => {
    for (const p of [0.01, 0.2, 0.5, 0.9]) {
      expect(pertQuantile(p, 0, 0, 1)).toBeCloseTo(1 - (1 - p) ** 0.2, 10);
    }
    expect.assertions(4);
  });

  test('identity: mean is (min + 4 mode + max) / 6', () => {
    expect(meanOf((p) => pertQuantile(p, 2, 3, 7))).toBeCloseTo(21 / 6, 4);
  });

  test('identity: ends, symmetric median, and no width', () => {
    expect(pertQuantile(0, 2, 3, 7)).toBe(2);
    expect(pertQuantile(1, 2, 3, 7)).toBe(7);
    expect(pertQuantile(0.5, 0, 1, 2)).toBeCloseTo(1, 10);
    expect(pertQuantile(0.5, 4, 4, 4)).toBe(4);
  });

  test('property: rises with probability and stays inside its ends', () => {
    fc.assert(
      fc.property(spread, probability, probability, ({ min, mode, max }, p, q) => {
        const low = pertQuantile(Math.min(p, q), min, mode, max);
        const high = pertQuantile(Math.max(p, q), min, mode, max);
        const slack = 1e-9 * (max - min);
        expect(high).toBeGreaterThanOrEqual(low - slack);
        expect(low).toBeGreaterThanOrEqual(min - slack);
        expect(high).toBeLessThanOrEqual(max + slack);
      }),
    );
  });

  test('property: the tabulated inverse stays within 0.02 % of the width', () => {
    fc.assert(
      fc.property(spread, probability, ({ min, mode, max }, p) => {
        const stray = Math.abs(pertQuantileTable(min, mode, max)(p) - pertQuantile(p, min, mode, max));
        expect(stray / (max - min)).toBeLessThan(2e-4);
      }),
      { numRuns: 50 },
    );
  });

  test('wiring: wrong order or probability is our bug', () => {
    expect(() => pertQuantile(0.5, 3, 2, 4)).toThrow('order');
    expect(() => triangularQuantile(0.5, 3, 5, 4)).toThrow('order');
    expect(() => pertQuantile(1.01, 1, 2, 4)).toThrow('probability');
    expect(() => triangularQuantile(-0.01, 1, 2, 4)).toThrow('probability');
    expect(() => pertQuantileTable(1, 2, 3)(Number.NaN)).toThrow('probability');
  });
});
