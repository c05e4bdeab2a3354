import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { estimate } from '@/lib/math/estimate';
import { endAboveZeroUsd, niceStepNotAbove, roundToRange, roundUsdToRange } from '@/lib/sheet/round-to-range';

describe('roundToRange', () => {
  // The rule of the sheet itself: step = a tenth to a fifth of the width, taken down to 1, 2 or 5 times a power of ten.
  const cases: readonly [string, [number, number, number], number, [number, number, number], number][] = [
    ['low goes down, high up, likely to the nearest', [1143, 1389, 1781], 10, [1100, 1400, 1800], 100],
    ['a width of 50 gives a step of 10', [1001, 1024, 1051], 10, [1000, 1020, 1060], 10],
    ['a width just under 50 gives 5, the smallest step wins', [1001, 1024, 1050], 10, [1000, 1020, 1050], 10],
    ['a narrow range keeps the smallest step', [501, 502, 503], 10, [500, 500, 510], 10],
    ['a range of nothing keeps the smallest step', [504, 504, 504], 10, [500, 500, 510], 10],
    ['across zero', [-297, 12, 509], 10, [-300, 0, 600], 100],
    ['all negative', [-912, -640, -415], 10, [-950, -650, -400], 50],
    ['zero to zero', [0, 0, 0], 10, [0, 0, 0], 10],
    ['steps below one are free of binary dust', [0.31, 0.42, 0.58], 0.01, [0.3, 0.4, 0.6], 0.05],
    ['a value on a step stays there', [1100, 1400, 1800], 10, [1100, 1400, 1800], 100],
  ];
  test.each(cases)('identity: %s', (_, [low, likely, high], smallest, expected, step) => {
    const rounded = roundToRange(estimate(low, likely, high), smallest);
    expect(rounded).toEqual({ low: expected[0], likely: expected[1], high: expected[2], step });
  });

  test('property: printed range holds the computed one, and no step is wasted', () => {
    const ordered = fc
      .tuple(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.double({ min: 0, max: 1e6, noNaN: true }),
        fc.double({ min: 0, max: 1e6, noNaN: true }),
      )
      .map(([low, a, b]) => estimate(low, low + a, low + a + b));
    fc.assert(
      fc.property(ordered, fc.constantFrom(0.01, 1, 10, 50), (value, smallest) => {
        const r = roundToRange(value, smallest);
        const dust = r.step * 2e-6 + 1e-6;
        expect(r.low).toBeLessThanOrEqual(value.low + dust);
        expect(r.high).toBeGreaterThanOrEqual(value.high - dust);
        expect(value.low - r.low).toBeLessThan(r.step + dust);
        expect(r.high - value.high).toBeLessThan(r.step + dust);
        expect(Math.abs(r.likely - value.likely)).toBeLessThanOrEqual(r.step / 2 + dust);
        expect(r.low <= r.likely && r.likely <= r.high).toBe(true);
        expect([r.low, r.likely, r.high].some((v) => Object.is(v, -0))).toBe(false);
      }),
      { numRuns: 500, seed: 11 },
    );
  });

  test('property: the step is a tenth to a fifth of the width wherever that allows one', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e7, noNaN: true }), (width) => {
        const step = niceStepNotAbove(width / 5);
        expect(step).toBeLessThanOrEqual((width / 5) * (1 + 1e-9));
        // 2 to 5 is the widest gap between allowed steps, so the step is never finer than width / 12.5.
        expect(step * 12.5).toBeGreaterThan(width * (1 - 1e-9));
        const lead = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
        expect([1, 2, 5].some((f) => Math.abs(f - lead) < 1e-6)).toBe(true);
      }),
      { numRuns: 500, seed: 12 },
    );
  });

  test('identity: refuses a range out of order or not finite', () => {
    expect(() => roundToRange({ low: 2, likely: 1, high: 3 }, 10)).toThrow(/range/);
    expect(() => roundToRange({ low: Number.NaN, likely: 1, high: 3 }, 10)).toThrow(/range/);
    expect(() => roundToRange(estimate(1, 2, 3), 0)).toThrow(/smallest step/);
  });
});

describe('endAboveZeroUsd', () => {
  test('identity: rounds down by a step of its own, and to nothing only below ten dollars', () => {
    expect([9.99, 10, 185, 310, 999].map(endAboveZeroUsd)).toEqual([0, 10, 100, 200, 500]);
  });
});

describe('roundUsdToRange', () => {
  test('identity: 10 dollars below 1,000, 50 dollars from there on', () => {
    expect(roundUsdToRange(estimate(951, 973, 999))).toEqual({ low: 950, likely: 970, high: 1000, step: 10 });
    expect(roundUsdToRange(estimate(951, 973, 1000))).toEqual({
      low: 950,
      likely: 950,
      high: 1000,
      step: 50,
    });
    expect(roundUsdToRange(estimate(-1000, -973, -951))).toEqual({
      low: -1000,
      likely: -950,
      high: -950,
      step: 50,
    });
  });

  test('identity: about 1,400 between 1,100 and 1,800', () => {
    expect(roundUsdToRange(estimate(1143, 1389, 1781))).toEqual({
      low: 1100,
      likely: 1400,
      high: 1800,
      step: 100,
    });
  });

  test('identity: a wide range of large amounts is rounded to thousands', () => {
    expect(roundUsdToRange(estimate(11_240, 14_870, 19_030))).toEqual({
      low: 11_000,
      likely: 15_000,
      high: 20_000,
      step: 1000,
    });
  });
});
