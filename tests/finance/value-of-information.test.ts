import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { perfectInformation, testInformation } from '@/lib/finance/value-of-information';
import { coverTopic, near, num, nums, rows } from './checks';

describe('value of information against the outside', () => {
  coverTopic('value of information', 1, {
    'evpi-evsi': (c) => {
      const table = { causeFrac: nums(c, 'inputs.prior'), costUsd: rows(c, 'inputs.cost') };
      const perfect = perfectInformation(table);
      const positive = nums(c, 'inputs.likelihood_positive');
      const byTest = testInformation(table, [positive, positive.map((p) => 1 - p)]);
      expect(perfect.bestIndex).toBe(num(c, 'expected.best_choice_index'));
      near(
        perfect.costKnowingUsd,
        num(c, 'expected.expected_cost_perfect_information'),
        c.tolerance,
        'knowing',
      );
      near(perfect.valueUsd, num(c, 'expected.EVPI'), c.tolerance, 'EVPI');
      near(byTest.valueUsd, num(c, 'expected.EVSI'), c.tolerance, 'EVSI');
      const [costs, regrets] = [nums(c, 'expected.expected_cost'), nums(c, 'expected.expected_regret')];
      expect(costs).toHaveLength(4);
      for (const [k, cost] of costs.entries()) {
        near(perfect.expectedCostUsd[k] ?? 0, cost, c.tolerance, `cost ${k}`);
        near(perfect.expectedRegretUsd[k] ?? 0, regrets[k] ?? 0, c.tolerance, `regret ${k}`);
      }
    },
  });
});

describe('properties of the value of information', () => {
  const weights = fc
    .array(fc.integer({ min: 0, max: 100 }), { minLength: 3, maxLength: 3 })
    .filter((w) => w.some((x) => x > 0));
  const chances = weights.map((w) => w.map((x) => x / w.reduce((a, b) => a + b, 0)));
  const usd = fc.integer({ min: 0, max: 20_000 });
  const table = fc.record({
    causeFrac: chances,
    costUsd: fc.array(fc.array(usd, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 5 }),
  });

  test('property: never negative, and equal to the smallest expected regret', () => {
    fc.assert(
      fc.property(table, (t) => {
        const { valueUsd, expectedRegretUsd } = perfectInformation(t);
        expect(valueUsd).toBeGreaterThanOrEqual(0);
        expect(valueUsd).toBeCloseTo(Math.min(...expectedRegretUsd), 6);
      }),
    );
  });

  test('property: zero when one choice wins under every cause', () => {
    fc.assert(
      fc.property(table, (t) => {
        const winner = t.causeFrac.map((_, cause) => Math.min(...t.costUsd.map((row) => row[cause] ?? 0)));
        expect(perfectInformation({ ...t, costUsd: [...t.costUsd, winner] }).valueUsd).toBeLessThan(1e-9);
      }),
    );
  });

  test('property: a test is worth no less than nothing and no more than knowing', () => {
    fc.assert(
      fc.property(
        table,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 3, maxLength: 3 }),
        (t, p) => {
          const value = testInformation(t, [p, p.map((x) => 1 - x)]);
          expect(value.valueUsd).toBeGreaterThanOrEqual(0);
          expect(value.valueUsd).toBeLessThanOrEqual(perfectInformation(t).valueUsd);
          expect(value.outcomes.reduce((sum, o) => sum + o.outcomeFrac, 0)).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test('property: a test that tells every cause apart is worth knowing it; one that says nothing is worth nothing', () => {
    fc.assert(
      fc.property(table, (t) => {
        const tells = t.causeFrac.map((_, i) => t.causeFrac.map((_, j) => (i === j ? 1 : 0)));
        const dumb = [0.3, 0.7].map((p) => t.causeFrac.map(() => p));
        expect(testInformation(t, tells).valueUsd).toBeCloseTo(perfectInformation(t).valueUsd, 6);
        expect(testInformation(t, dumb).valueUsd).toBeLessThan(1e-6);
      }),
    );
  });

  test('property: the choice changes only where the test is worth something or costs tie', () => {
    const costUsd = [
      [100, 900],
      [500, 500],
    ];
    const sharp = testInformation({ causeFrac: [0.5, 0.5], costUsd }, [
      [0.9, 0.1],
      [0.1, 0.9],
    ]);
    expect(sharp.changesChoice).toBe(true);
    expect(sharp.valueUsd).toBeCloseTo(500 - (0.5 * 180 + 0.5 * 500), 9);
    const sure = testInformation({ causeFrac: [1, 0], costUsd }, [
      [0.9, 0.1],
      [0.1, 0.9],
    ]);
    expect(sure.changesChoice).toBe(false);
  });

  test('property: ragged tables and chances that do not add up are refused', () => {
    expect(() => perfectInformation({ causeFrac: [0.5, 0.4], costUsd: [[1, 2]] })).toThrow('add up');
    expect(() => perfectInformation({ causeFrac: [0.5, 0.5], costUsd: [[1]] })).toThrow('do not fit');
    expect(() => perfectInformation({ causeFrac: [1], costUsd: [] })).toThrow('no choice');
    expect(() => testInformation({ causeFrac: [1], costUsd: [[1]] }, [[0.5]])).toThrow('add up');
  });
});
