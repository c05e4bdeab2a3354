import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addEstimates,
  addIndependentEstimates,
  estimate,
  estimateFromMeanSd,
  exactEstimate,
  scaleEstimate,
  sdOfEstimate,
  twoPiece,
  Z_10_90,
} from '@/lib/math/estimate';
import { normalCdf } from '@/lib/math/normal';

const estimates = fc
  .tuple(
    fc.double({ min: -1e4, max: 1e4, noNaN: true }),
    fc.double({ min: 0, max: 1e3, noNaN: true }),
    fc.double({ min: 0, max: 1e3, noNaN: true }),
  )
  .map(([likely, below, above]) => estimate(likely - below, likely, likely + above));

describe('estimate', () => {
  test('identity: the stated z cuts off 10 % on each side', () => {
    expect(normalCdf(Z_10_90)).toBeCloseTo(0.9, 14);
    expect(normalCdf(-Z_10_90)).toBeCloseTo(0.1, 14);
  });

  test('identity: the two-piece curve meets its 10, 50 and 90 % points', () => {
    const value = { low: 15, likely: 18, high: 20.5 };
    expect(twoPiece(value, -Z_10_90)).toBeCloseTo(15, 12);
    expect(twoPiece(value, 0)).toBe(18);
    expect(twoPiece(value, Z_10_90)).toBeCloseTo(20.5, 12);
  });

  test('identity: mean and sd come back', () => {
    const made = estimateFromMeanSd(50, 4);
    expect(made.likely).toBe(50);
    expect(made.low).toBeCloseTo(50 - 4 * 1.2815515655446004, 12);
    expect(sdOfEstimate(made)).toBeCloseTo(4, 12);
    expect(estimateFromMeanSd(50, 4, 2)).toEqual({ low: 42, likely: 50, high: 58 });
  });

  test('wiring: out of order or not finite is our bug', () => {
    expect(() => estimate(2, 1, 3)).toThrow('order');
    expect(() => estimate(1, 4, 3)).toThrow('order');
    expect(() => estimate(1, 2, Number.NaN)).toThrow('finite');
    expect(() => estimate(1, 2, Number.POSITIVE_INFINITY)).toThrow('finite');
    expect(() => estimateFromMeanSd(1, -1)).toThrow('sd');
    expect(estimate(1, 1, 1)).toEqual(exactEstimate(1));
  });

  test('property: sums and multiples keep the order', () => {
    fc.assert(
      fc.property(estimates, estimates, fc.double({ min: -5, max: 5, noNaN: true }), (a, b, factor) => {
        for (const e of [addEstimates(a, b), scaleEstimate(a, factor), addIndependentEstimates([a, b])]) {
          expect(e.low).toBeLessThanOrEqual(e.likely);
          expect(e.likely).toBeLessThanOrEqual(e.high);
        }
        expect.hasAssertions();
      }),
    );
  });

  test('property: independent sums are never wider than sums that move together', () => {
    fc.assert(
      fc.property(estimates, estimates, (a, b) => {
        const together = addEstimates(a, b);
        const apart = addIndependentEstimates([a, b]);
        expect(apart.likely).toBeCloseTo(together.likely, 8);
        expect(apart.high - apart.low).toBeLessThanOrEqual(together.high - together.low + 1e-6);
      }),
    );
  });

  test('identity: 3-4-5 and a negative factor', () => {
    const a = estimate(7, 10, 13);
    const b = estimate(16, 20, 24);
    expect(addIndependentEstimates([a, b])).toEqual({ low: 25, likely: 30, high: 35 });
    expect(addIndependentEstimates([])).toEqual(exactEstimate(0));
    expect(scaleEstimate(estimate(1, 2, 4), -2)).toEqual({ low: -8, likely: -4, high: -2 });
  });
});
