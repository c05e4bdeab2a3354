import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { appraise } from '@/lib/appraise/appraise';
import { Run } from '@/lib/visit/run';
import type { Visit } from '@/lib/visit/visit';
import { bareVisit } from '../visit/visit-fixture';
import { demoFiles } from './demo-files';

/** Paths of every number in a JSON tree that is not finite. */
function notFinite(tree: unknown, path = ''): string[] {
  if (typeof tree === 'number') return Number.isFinite(tree) ? [] : [path];
  if (typeof tree !== 'object' || tree === null) return [];
  return Object.entries(tree).flatMap(([key, value]) => notFinite(value, `${path}.${key}`));
}

describe('the whole line', () => {
  it.each(demoFiles.map((visit) => [visit.id, visit] as const))(
    'identity: %s gives the same numbers twice',
    (_, visit) => {
      expect(JSON.stringify(appraise(visit))).toBe(JSON.stringify(appraise(visit)));
    },
  );

  it.each(demoFiles.map((visit) => [visit.id, visit] as const))(
    'identity: %s survives JSON unchanged',
    (_, visit) => {
      const appraisal = appraise(visit);
      expect(JSON.parse(JSON.stringify(appraisal))).toEqual(appraisal);
      expect(notFinite(appraisal)).toEqual([]);
    },
  );

  it('wiring: each stage gets what the last one gave', () => {
    const visit = demoFiles.find((v) => v.id === 'end-of-life') as Visit;
    const { findings, energy, comparison } = appraise(visit);
    const asFound = energy.scenarios.find((s) => s.id === 'asFound');
    const leave = comparison.choices.find((c) => c.kind === 'leave');
    expect(findings.loss.heating?.basis).toBe('measured');
    expect(asFound?.likely.costUsd).toBeGreaterThan(0);
    expect(leave?.yearlyEnergyUsd.likely).toBeCloseTo(asFound?.likely.costUsd ?? Number.NaN, 9);
    expect(comparison.choices.map((c) => c.id).sort()).toEqual(visit.choices.map((c) => c.id).sort());
  });

  it('wiring: a dearer kilowatt-hour reaches the totals', () => {
    const visit = demoFiles.find((v) => v.id === 'low-charge') as Visit;
    const dearer = { ...visit, tariff: { kind: 'flat' as const, energyUsdPerKwh: 0.344 } };
    const cost = (v: Visit) => appraise(v).comparison.choices.map((c) => c.totalTodayUsd.likely);
    const [cheap, dear] = [cost(visit), cost(dearer)];
    expect(dear.length).toBeGreaterThan(2);
    expect(dear.every((total, i) => total > (cheap[i] ?? total))).toBe(true);
  });
});

describe('missing readings widen and never stop', () => {
  it('wiring: the least possible visit is appraised, and says what was assumed', () => {
    const { findings, comparison, assumptions } = appraise(bareVisit());
    expect(findings.loss.heating?.basis).toBe('assumed');
    expect(comparison.choices.map((c) => c.kind)).toEqual(['leave']);
    expect(assumptions.map((a) => a.key)).toEqual(
      expect.arrayContaining(['stayYears', 'ageYears', 'electricityUsdPerKwh']),
    );
  });

  it('property: any part of the readings gives finite numbers', () => {
    const visit = demoFiles.find((v) => v.id === 'restricted-orifice') as Visit;
    const names = Object.keys(Run.shape).filter((name) => name !== 'id' && name !== 'mode');
    fc.assert(
      fc.property(fc.subarray(names), (dropped) => {
        const runs = visit.runs.map((run) =>
          Object.fromEntries(Object.entries(run).filter(([k]) => !dropped.includes(k))),
        ) as Visit['runs'];
        const appraisal = appraise({ ...visit, runs });
        expect(notFinite(appraisal)).toEqual([]);
        expect(appraisal.comparison.choices).toHaveLength(visit.choices.length);
      }),
      { numRuns: 40, seed: 20261125 },
    );
  });

  it('property: readings anywhere inside their limits, however wild, give finite numbers', () => {
    const reading = Object.entries(Run.shape).flatMap(([name, field]) => {
      const meta = field.meta() as { min?: number; max?: number; unit?: string } | undefined;
      const inner =
        meta?.min === undefined
          ? (field as { unwrap?: () => { meta: () => unknown } }).unwrap?.().meta()
          : meta;
      const limits = inner as { min?: number; max?: number } | undefined;
      return limits?.min === undefined || limits.max === undefined
        ? []
        : [[name, limits.min, limits.max] as const];
    });
    expect(reading.length).toBeGreaterThan(40);
    const anyRun = fc.record(
      Object.fromEntries(reading.map(([name, min, max]) => [name, fc.double({ min, max, noNaN: true })])),
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(
        anyRun,
        fc.constantFrom('cooling', 'heating'),
        fc.constantFrom('R-22', 'R-410A', 'R-32'),
        (readings, mode, refrigerant) => {
          const unit = { kind: 'heatPump', nominalTons: 3, refrigerant } as const;
          const visit = bareVisit({ unit, runs: [{ id: 'r', mode: mode as 'cooling', ...readings }] });
          expect(notFinite(appraise(visit))).toEqual([]);
        },
      ),
      { numRuns: 150, seed: 20261125 },
    );
  });
});
