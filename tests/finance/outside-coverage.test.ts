import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { rangeOf } from '@/lib/finance/range';
import { pertQuantile, triangularQuantile } from '@/lib/math/distributions';
import { allChecks, type Check, coverTopic, near, num, statedCount } from './checks';
import { simpson } from './independent';

/** Quantiles as printed, and mean and variance by integrating the quantile function. */
function distribution(quantile: (p: number, low: number, mode: number, high: number) => number) {
  return (c: Check): void => {
    const [low, mode, high] = [num(c, 'inputs.low'), num(c, 'inputs.likely'), num(c, 'inputs.high')];
    const quantiles = Object.entries((c.expected as { quantiles: Record<string, number> }).quantiles);
    expect(quantiles).toHaveLength(5);
    for (const [p, x] of quantiles) near(quantile(Number(p), low, mode, high), x, c.tolerance, `${p}`);
    const at = (p: number) => quantile(p, low, mode, high);
    const mean = simpson(at, 0, 1, 20_000);
    // both ends of a quantile function are steep: Simpson's rule is good to about 1e-5 of the width there
    near(mean, num(c, 'expected.mean'), 2e-5 * (high - low), 'mean');
    near(
      simpson((p) => (at(p) - mean) ** 2, 0, 1, 20_000),
      num(c, 'expected.variance'),
      2e-4 * (high - low) ** 2,
      'variance',
    );
  };
}

describe('distributions of the reference file', () => {
  coverTopic('simulation', 5, {
    'dist-triangular-2-5-11': distribution(triangularQuantile),
    'dist-triangular-0.05-0.12-0.3': distribution(triangularQuantile),
    'dist-pert-2-5-11': distribution(pertQuantile),
    'dist-pert-0.05-0.12-0.3': distribution(pertQuantile),
    'tornado-one-at-a-time': (c) => {
      // bars themselves: range.test.ts; here the range they add up to, by hand
      const bars = (c.expected as { bars: [string, number, number, number][] }).bars;
      const base = num(c, 'expected.base_NS');
      const range = rangeOf(
        base,
        bars.map(([input, low, high]) => ({ input, low, high })),
      );
      const down = Math.hypot(-3295.7239 - base, -2392.1783 - base, -1963.922 - base, -1636.7484 - base);
      near(range.low, base - down, 1e-6, 'low');
      expect(bars).toHaveLength(4);
    },
  });
});

describe('incentives', () => {
  coverTopic(
    'incentives',
    4,
    {},
    {
      'incentive-25C':
        'no incentive is ever assumed: a rebate is an entry with its dates, see rebates.test.ts',
      'incentive-25D': 'as above',
      'incentive-HEAR': 'state programme: not computed, the amount is entered by the user',
      'incentive-HOMES': 'state programme: not computed, the amount is entered by the user',
    },
  );
});

describe('the reference file as a whole', () => {
  test('wiring: every topic is gone through once, and the counts add up to the whole file', () => {
    const texts = readdirSync(import.meta.dirname)
      .filter((name) => name.endsWith('.test.ts'))
      .map((name) => readFileSync(`${import.meta.dirname}/${name}`, 'utf8'));
    const covered = texts.flatMap((text) => [...text.matchAll(/coverTopic\(\s*'([^']+)',\s*(\d+),/g)]);
    const topics = [...new Set(allChecks.map((c) => c.topic))].sort();
    expect(covered.map((m) => m[1]).sort()).toEqual(topics);
    expect(covered.reduce((sum, m) => sum + Number(m[2]), 0)).toBe(statedCount);
    expect(allChecks).toHaveLength(153);
    expect(new Set(allChecks.map((c) => c.id)).size).toBe(153);
  });

  test('wiring: every entry names its source and how far it was seen', () => {
    expect(allChecks.every((c) => c.source.length > 5)).toBe(true);
    expect([...new Set(allChecks.map((c) => c.status))].sort()).toEqual([
      'computed',
      'memory',
      'read',
      'secondary',
    ]);
  });
});
