import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { moneyAxis } from '@/lib/sheet/axis';
import { wordsOf } from '@/lib/sheet/phrase';

const words = wordsOf('en');

describe('moneyAxis', () => {
  test('identity: known axes', () => {
    expect(moneyAxis(words, 2600, 'a year').ticks.map((t) => t.label)).toEqual([
      '$0',
      '$1,000',
      '$2,000',
      '$3,000',
    ]);
    expect(moneyAxis(words, 2500, 'a year').ticks.map((t) => t.at)).toEqual([0, 500, 1000, 1500, 2000, 2500]);
    expect(moneyAxis(words, 23_000, 'x').max).toBe(25_000);
  });

  test('property: starts at zero, ends at a tick above the highest value, three to six even ticks', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e7, noNaN: true }), (highest) => {
        const { max, ticks } = moneyAxis(words, highest, 'x');
        expect(ticks[0]?.at).toBe(0);
        expect(ticks.at(-1)?.at).toBeCloseTo(max, 6);
        expect(max).toBeGreaterThanOrEqual(highest * (1 - 1e-9));
        expect(max).toBeLessThan(highest * 1.7);
        expect(ticks.length).toBeGreaterThanOrEqual(3);
        expect(ticks.length).toBeLessThanOrEqual(6);
      }),
      { numRuns: 400, seed: 3 },
    );
  });

  test('identity: nothing to show still gives an axis', () => {
    expect(moneyAxis(words, 0, 'x').max).toBe(1);
    expect(moneyAxis(words, -5, 'x').max).toBe(1);
    expect(() => moneyAxis(words, Number.NaN, 'x')).toThrow(/axis/);
  });
});
