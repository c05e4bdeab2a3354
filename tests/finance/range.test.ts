import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { capitalRecoveryFactor, levelFactor } from '@/lib/finance/discount-factors';
import { driversOf, type Moved, rangeOf } from '@/lib/finance/range';
import { randomStream } from '@/lib/math/random';
import { checkOf, near, num, raw } from './checks';

const usd = fc.double({ min: -5000, max: 5000, noNaN: true });
const moved = fc.array(fc.record({ input: fc.string(), low: usd, high: usd }), { maxLength: 12 });

test('outside: the one-at-a-time swings of the reference file, widest first', () => {
  const c = checkOf('tornado-one-at-a-time');
  const saved = (price: number, saving: number, rate: number, life: number) =>
    saving * levelFactor(rate, life) - price;
  const base = saved(9500, 1000, 0.05, 12);
  const ends: Moved[] = [
    { input: 'price', low: saved(8500, 1000, 0.05, 12), high: saved(10_500, 1000, 0.05, 12) },
    { input: 'saving', low: saved(9500, 700, 0.05, 12), high: saved(9500, 1300, 0.05, 12) },
    { input: 'rate', low: saved(9500, 1000, 0.03, 12), high: saved(9500, 1000, 0.08, 12) },
    { input: 'life', low: saved(9500, 1000, 0.05, 9), high: saved(9500, 1000, 0.05, 15) },
  ];
  near(base, num(c, 'expected.base_NS'), c.tolerance, 'base');
  const drivers = driversOf(base, ends);
  expect(drivers.map((d) => d.input)).toEqual(raw(c, 'expected.order'));
  const bars = raw(c, 'expected.bars') as [string, number, number, number][];
  expect(bars).toHaveLength(4);
  for (const [k, [, low, high]] of bars.entries()) {
    near(drivers[k]?.lowUsd ?? 0, low, c.tolerance, `bar ${k} low`);
    near(drivers[k]?.highUsd ?? 0, high, c.tolerance, `bar ${k} high`);
  }
  expect(capitalRecoveryFactor(0.05, 12)).toBeGreaterThan(0);
});

describe('ranges', () => {
  test('outside: for a sum of normal inputs the range holds 80 % of a simulation', () => {
    // exact case of root sum of squares; 10 and 90 % points of three inputs of spread 300, 400 and 1200
    const spreads = [300, 400, 1200];
    const range = rangeOf(
      0,
      spreads.map((s, k) => ({ input: `${k}`, low: -s, high: s })),
    );
    near(range.high, 1300, 1e-9, '300, 400, 1200 -> 1300');
    const stream = randomStream(7, 'range');
    const draws = Array.from({ length: 40_000 }, () =>
      spreads.reduce((sum, s) => sum + (stream.normal() * s) / 1.2815515655446004, 0),
    );
    const inside = draws.filter((x) => x >= range.low && x <= range.high).length / draws.length;
    // 4 standard errors of a share of 0.8 in 40,000 draws
    near(inside, 0.8, 0.008, 'share inside');
  });

  test('property: the range holds the likely value and every single movement', () => {
    fc.assert(
      fc.property(usd, moved, (likely, list) => {
        const range = rangeOf(likely, list);
        const all = list.flatMap((m) => [m.low, m.high]);
        expect(range.low <= likely && likely <= range.high).toBe(true);
        expect(all.every((x) => x >= range.low - 1e-6 && x <= range.high + 1e-6)).toBe(true);
      }),
    );
  });

  test('property: an input that moves the result one way only widens that side', () => {
    expect(rangeOf(100, [{ input: 'x', low: 130, high: 110 }])).toEqual({ low: 100, likely: 100, high: 130 });
    expect(rangeOf(100, [{ input: 'x', low: 50, high: 200, stance: true }])).toEqual({
      low: 100,
      likely: 100,
      high: 100,
    });
    expect(driversOf(100, [{ input: 'x', low: 50, high: 200, stance: true }])).toHaveLength(1);
    expect(rangeOf(100, [])).toEqual({ low: 100, likely: 100, high: 100 });
  });

  test('property: drivers are sorted by width, those under a dollar left out', () => {
    const list = [
      { input: 'small', low: 99.9, high: 100.2 },
      { input: 'one-sided', low: 160, high: 150 },
      { input: 'wide', low: 80, high: 130 },
    ];
    expect(driversOf(100, list).map((d) => d.input)).toEqual(['one-sided', 'wide']);
  });
});
