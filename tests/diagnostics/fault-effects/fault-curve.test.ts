import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airflowCurve } from '@/lib/diagnostics/fault-effects/airflow-quadratic';
import { chargeCurve } from '@/lib/diagnostics/fault-effects/charge-laboratory';
import impact from '@/lib/diagnostics/fault-effects/data/fault-impact.json';
import { type FaultCurve, quadraticRoots, worstUpTo } from '@/lib/diagnostics/fault-effects/fault-curve';
import { type FaultImpactSet, impactCurve } from '@/lib/diagnostics/fault-effects/fault-impact';
import '../support/matchers';

/** Dips at 0.1, comes back, and would end above 1; efficiency gains first. */
const wavy: FaultCurve = {
  capacityAt: (x) => 1 - 2 * x + 10 * x * x,
  eirAt: (x) => 1 - 0.2 * x + x * x,
  turns: [0.1],
};

describe('identity: a curve is never kinder than at a lower level', () => {
  it.each([
    { level: 0, capacityRatio: 1, eirRatio: 1, capacityBent: false, eirBent: false },
    { level: 0.05, capacityRatio: 0.925, eirRatio: 1, capacityBent: false, eirBent: true },
    { level: 0.1, capacityRatio: 0.9, eirRatio: 1, capacityBent: false, eirBent: true },
    { level: 0.15, capacityRatio: 0.9, eirRatio: 1, capacityBent: true, eirBent: true },
    { level: 0.3, capacityRatio: 0.9, eirRatio: 1.03, capacityBent: true, eirBent: false },
  ])('level $level', ({ level, capacityRatio, eirRatio, capacityBent, eirBent }) => {
    const point = worstUpTo(wavy, level);
    expect(point.capacityRatio).toBeCloseToWithin(capacityRatio, 1e-12);
    expect(point.eirRatio).toBeCloseToWithin(eirRatio, 1e-12);
    expect([point.capacityBent, point.eirBent]).toEqual([capacityBent, eirBent]);
  });

  it('refuses a negative level', () => {
    expect(() => worstUpTo(wavy, -0.1)).toThrow('level');
  });

  it('roots of a + b x + c x^2', () => {
    expect(quadraticRoots(6, -5, 1).toSorted()).toEqual([2, 3]);
    expect(quadraticRoots(4, -2, 0)).toEqual([2]);
    expect(quadraticRoots(1, 0, 1)).toEqual([]);
    expect(quadraticRoots(1, 0, 0)).toEqual([]);
    expect(quadraticRoots(0, 0, 3)).toEqual([0]);
  });
});

/** Worst ratios by brute force on a fine grid. */
function worstOnGrid(curve: FaultCurve, level: number) {
  const levels = Array.from({ length: 2001 }, (_, i) => (level * i) / 2000);
  return {
    capacityRatio: Math.min(1, ...levels.map(curve.capacityAt)),
    eirRatio: Math.max(1, ...levels.map(curve.eirAt)),
  };
}

const sets = Object.keys(impact.sets) as FaultImpactSet[];
const temperatures = {
  indoorC: fc.double({ min: 15, max: 32, noNaN: true }),
  outdoorC: fc.double({ min: -20, max: 46, noNaN: true }),
};

const curves: readonly { name: string; max: number; curve: fc.Arbitrary<FaultCurve> }[] = [
  ...(['cooling', 'heating'] as const).flatMap((mode) => [
    {
      name: `charge missing, ${mode}`,
      max: 0.3,
      curve: fc.record(temperatures).map((t) => chargeCurve({ mode, ...t }, true)),
    },
    {
      name: `charge extra, ${mode}`,
      max: 0.3,
      curve: fc.record(temperatures).map((t) => chargeCurve({ mode, ...t }, false)),
    },
    { name: `indoor airflow, ${mode}`, max: 0.3, curve: fc.constant(airflowCurve(mode)) },
  ]),
  ...sets.map((set) => ({
    name: set,
    max: impact.sets[set].levelMax,
    curve: fc
      .record({
        wetBulbC: fc.double({ min: 12.8, max: 23.9, noNaN: true }),
        outdoorC: fc.double({ min: 18.3, max: 46.1, noNaN: true }),
        ratedCop: fc.double({ min: 3.74, max: 7.06, noNaN: true }),
      })
      .map((at) => impactCurve(set, at)),
  })),
];

describe('identity: power per capacity of the charge curve turns where it is said to', () => {
  it('overcharge in the cold: the lowest point of a fine grid is one of the turning points', () => {
    const curve = chargeCurve({ mode: 'heating', indoorC: 0, outdoorC: -8.3 }, false);
    const levels = Array.from({ length: 30_001 }, (_, i) => i / 100_000);
    const lowest = levels.reduce((best, level) => (curve.eirAt(level) < curve.eirAt(best) ? level : best));
    expect(curve.eirAt(lowest)).toBeLessThan(0.999);
    expect(Math.min(...curve.turns.map((turn) => Math.abs(turn - lowest)))).toBeLessThan(2e-5);
  });
});

describe('property: the turning points worked out are all there are', () => {
  it.each(curves)('$name agrees with a fine grid', ({ max, curve }) => {
    expect(curves).toHaveLength(14);
    fc.assert(
      fc.property(curve, fc.double({ min: 0, max, noNaN: true }), (at, level) => {
        const point = worstUpTo(at, level);
        const grid = worstOnGrid(at, level);
        expect(point.capacityRatio).toBeCloseToWithin(grid.capacityRatio, 1e-6);
        expect(point.eirRatio).toBeCloseToWithin(grid.eirRatio, 1e-6);
      }),
      { seed: 7, numRuns: 60 },
    );
  });
});
