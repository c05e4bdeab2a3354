import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { diagnose } from '@/lib/diagnostics/diagnose';
import type { Findings, Loss } from '@/lib/diagnostics/findings';
import { agePrior } from '@/lib/diagnostics/loss/age-prior';
import { combine, fuse } from '@/lib/diagnostics/loss/fuse';
import { lossOfRun } from '@/lib/diagnostics/loss/loss-of-run';
import { lossOfVisit, type RouteOfMode } from '@/lib/diagnostics/loss/loss-of-visit';
import { type RunEvidence, runEvidence } from '@/lib/diagnostics/loss/run-evidence';
import { healthyAt } from '@/lib/diagnostics/targets/healthy-state';
import type { Unit } from '@/lib/visit/unit';
import type { Visit } from '@/lib/visit/visit';
import { synthesise } from '@/scripts/synthesis/synthesise';
import './support/matchers';
import { contextOf, contextOfRun, healthyOf, type RunPart, visitOf } from './support/visit-of';

function findings(visit: Visit): Findings {
  const properties = contextOf({ ...visit, runs: [{ id: 'x', mode: 'cooling' }] }).properties;
  return diagnose({ visit, healthy: healthyOf(visit), properties });
}

/** A healthy run: power and capacity are those of the healthy unit at the conditions, to the watt. */
function atTarget(mode: 'cooling' | 'heating', unit: Partial<Unit>, powerFactor = 1): RunPart {
  const conditions =
    mode === 'cooling'
      ? ({ mode, outdoorAirF: 92, returnAirF: 76, returnWetBulbF: 63 } as const)
      : ({ mode, outdoorAirF: 40, returnAirF: 70 } as const);
  const state = healthyAt(contextOfRun(conditions, unit));
  return {
    ...conditions,
    runningMinutes: 20,
    outdoorUnitW: Math.round((state?.outdoorUnitW ?? 0) * powerFactor),
  };
}

const balance = {
  suctionPsig: 130,
  dischargePsig: 365,
  suctionLineF: 55,
  dischargeLineF: 165,
  liquidLineF: 100,
} as const;

const rated: Partial<Unit> = {
  ratings: { seerBtuPerWh: 14, cooling95Btuh: 36_000, hspfBtuPerWh: 8.2, heating47Btuh: 35_000 },
};

function required(loss: Loss | undefined): Loss {
  if (loss === undefined) throw new Error('no loss');
  return loss;
}

describe('combining estimates', () => {
  it('identity: two equal ones halve the variance; the surer one weighs more', () => {
    const even = fuse([
      { value: 1, sd: 0.2 },
      { value: 1.2, sd: 0.2 },
    ]);
    expect(even.value).toBeCloseToWithin(1.1, 1e-12);
    expect(even.sd).toBeCloseToWithin(0.2 / Math.SQRT2, 1e-12);
    expect(even.disagree).toBe(false);
    const uneven = fuse([
      { value: 0, sd: 0.1 },
      { value: 0.2, sd: 0.2 },
    ]);
    expect(uneven.value).toBeCloseToWithin(0.2 * (1 / 5), 1e-12);
  });

  it('identity: two more than two sigma apart widen until both are covered', () => {
    const torn = fuse([
      { value: 0, sd: 0.1 },
      { value: 0.6, sd: 0.1 },
    ]);
    expect(torn).toMatchObject({ disagree: true });
    expect(torn.sd).toBeGreaterThanOrEqual(0.3);
    const within = fuse([
      { value: 0, sd: 0.1 },
      { value: 0.28, sd: 0.1 },
    ]);
    expect(within.disagree).toBe(false);
  });

  it('identity: prior and measurement add precisions', () => {
    const both = combine({ value: 0, sd: 0.3 }, { value: 0.1, sd: 0.1 });
    expect(both.value).toBeCloseToWithin(0.09, 1e-12);
    expect(1 / both.sd ** 2).toBeCloseToWithin(1 / 0.09 + 100, 1e-9);
    expect(() => fuse([])).toThrow('nothing to combine');
    expect(() => fuse([{ value: 1, sd: 0 }])).toThrow('sd');
  });
});

describe('evidence of a run', () => {
  it('identity: power and capacity as logarithms against the healthy unit at the conditions', () => {
    const context = contextOfRun({ ...atTarget('cooling', rated, 1.1), ...balance }, rated);
    const values = deriveRun(context);
    const evidence = runEvidence(context, values, []);
    expect(evidence.power?.mean).toBeCloseToWithin(Math.log(1.1), 0.001);
    const capacity = values.find((value) => value.id === 'refrigerantCapacityBtuh')?.value ?? Number.NaN;
    expect(evidence.capacity.map((m) => m.id)).toEqual(['heatBalance']);
    expect(evidence.capacity[0]?.mean).toBeCloseToWithin(
      Math.log(capacity / (healthyAt(context)?.capacityBtuh ?? Number.NaN)),
      1e-12,
    );
  });

  it('identity: a conflict makes the heat balance void and says so; a doubt widens it', () => {
    const context = contextOfRun({ ...atTarget('cooling', rated), ...balance }, rated);
    const values = deriveRun(context);
    const conflict = {
      code: 'liquidColderThanOutdoor',
      severity: 'conflict',
      readings: ['liquidLineF', 'outdoorAirF'],
    } as const;
    const voided = runEvidence(context, values, [conflict]);
    expect(voided.capacity).toEqual([]);
    expect(voided.notes).toContainEqual({
      code: 'heatBalanceVoid',
      values: { because: 'liquidColderThanOutdoor', readings: 'liquidLineF, outdoorAirF' },
    });
    const doubt = { code: 'notSteady', severity: 'doubt', readings: [] } as const;
    const sure = runEvidence(context, values, []).capacity[0]?.sd ?? Number.NaN;
    expect(runEvidence(context, values, [doubt]).capacity[0]?.sd).toBeCloseToWithin(1.5 * sure, 1e-12);
  });

  it('identity: without outdoor air nothing can be compared, and that is said', () => {
    const context = contextOfRun({ mode: 'cooling', ...balance, outdoorUnitW: 2_500 });
    expect(runEvidence(context, deriveRun(context), [])).toMatchObject({
      capacity: [],
      notes: [{ code: 'noOutdoorAir' }],
    });
  });

  it('identity: electric heat or wrong wet bulbs void the air side only', () => {
    const run = { ...atTarget('heating', rated), airflowCfm: 1_200, supplyAirF: 97 };
    const context = contextOfRun(run, rated);
    const values = deriveRun(context);
    expect(runEvidence(context, values, []).capacity.map((m) => m.id)).toEqual(['airSide']);
    const heat = { code: 'electricHeatOn', severity: 'doubt', readings: ['supplyAirF'] } as const;
    const voided = runEvidence(context, values, [heat]);
    expect(voided.capacity).toEqual([]);
    expect(voided.notes[0]?.code).toBe('airSideVoid');
    expect(voided.power).toBeDefined();
  });
});

describe('loss of a visit', () => {
  it.each([1990, 2006, 2026])(
    'identity: age alone never convicts: readings at target, built %d',
    (manufactureYear) => {
      const unit = { ...rated, manufactureYear };
      const context = contextOfRun(atTarget('cooling', unit), unit);
      const state = healthyAt(context);
      const evidence: RunEvidence = {
        runId: 'run-1',
        capacity: [{ id: 'heatBalance', mean: 0, sd: 0.08 }],
        power: { id: 'measuredPower', mean: 0, sd: 0.02 },
        notes: [],
        ...(state === undefined ? {} : { healthy: state }),
      };
      const loss = lossOfRun('cooling', evidence, agePrior(context.visit));
      expect(loss.capacityRatioToHealthy.likely).toBeGreaterThan(0.985);
      expect(loss.powerRatioToHealthy.likely).toBeLessThan(1.015);
    },
  );

  it('identity: no readings: age alone, wide and assumed', () => {
    const { loss } = findings(visitOf([], { manufactureYear: 2011 }));
    const cooling = required(loss.cooling);
    expect(cooling).toMatchObject({ basis: 'assumed', mode: 'cooling' });
    expect(cooling.routes.map((route) => route.id)).toEqual(['agePrior']);
    expect(cooling.notes.map((note) => note.code)).toContain('agePriorOnly');
    expect(cooling.lnCapacity.sd).toBeGreaterThanOrEqual(0.2);
    expect(cooling.capacityRatioToHealthy.high).toBeLessThanOrEqual(1.05);
  });

  it('identity: measured power moves the likely ratio nearly all the way, sd below that of age', () => {
    const visit = visitOf([atTarget('cooling', rated, 1.25)], rated);
    const cooling = required(findings(visit).loss.cooling);
    expect(cooling.powerRatioToHealthy.likely).toBeGreaterThan(1.2);
    expect(cooling.powerRatioToHealthy.likely).toBeLessThan(1.26);
    expect(cooling.basis).toBe('measured');
    expect(cooling.notes.map((note) => note.code)).toContain('capacityNotMeasured');
  });

  it('identity: a missing mode takes the other loss with twice the variance and says so', () => {
    // watts and outdoor air only: too little to tell a cause
    const { mode, outdoorAirF, outdoorUnitW } = atTarget('cooling', rated, 1.2);
    const few: RunPart = {
      mode,
      ...(outdoorAirF === undefined ? {} : { outdoorAirF }),
      ...(outdoorUnitW === undefined ? {} : { outdoorUnitW }),
    };
    const { cooling, heating } = findings(visitOf([few], rated)).loss;
    expect(heating?.lnPower.mean).toBe(cooling?.lnPower.mean);
    expect(heating?.lnPower.sd).toBeCloseToWithin(Math.SQRT2 * (cooling?.lnPower.sd ?? 0), 1e-12);
    expect(heating?.notes).toContainEqual({ code: 'carriedOver', values: { from: 'cooling' } });
    expect(heating?.notes.map((note) => note.code)).not.toContain('carriedByCauses');
    expect(heating?.basis).toBe('assumed');
  });

  it('identity: when the causes are told, the carried loss is shifted by what they do in the other mode', () => {
    const visit = visitOf([{ ...atTarget('cooling', rated, 1.2), ...balance }], rated);
    const { cooling, heating } = findings(visit).loss;
    expect(heating?.notes.map((note) => note.code)).toEqual(
      expect.arrayContaining(['carriedOver', 'carriedByCauses']),
    );
    expect(heating?.lnPower.sd ?? 0).toBeGreaterThanOrEqual(
      Math.SQRT2 * (cooling?.lnPower.sd ?? 1e9) - 1e-12,
    );
  });

  // A heat pump with fixed metering has an orifice for each mode (trade articles and makers' manuals, read).
  it('outside: a blocked heating orifice is not carried into cooling where each mode has its own', () => {
    const carried = (metering: 'fixedOrifice' | 'txv') => {
      const context = contextOfRun(atTarget('heating', rated), { ...rated, metering });
      const healthy = healthyAt(context);
      const evidence = {
        runId: 'run-1',
        mode: 'heating' as const,
        label: '',
        capacity: [{ id: 'heatBalance', mean: -0.3, sd: 0.03 } as const],
        power: { id: 'measuredPower', mean: -0.05, sd: 0.02 } as const,
        notes: [],
        ...(healthy === undefined ? {} : { healthy }),
      };
      const routeOf: RouteOfMode = (_mode, _run, without = []) => {
        const gone = without.includes('meteringRestriction');
        return {
          lnCapacity: { value: gone ? 0 : -0.3, sd: 0.05 },
          lnPower: { value: gone ? 0 : -0.05, sd: 0.05 },
          lostByCause: gone ? [] : [{ cause: 'meteringRestriction', lnEfficiency: 0.25 }],
          beyondRange: false,
          notes: [],
        };
      };
      return lossOfVisit(context.visit, [evidence], routeOf).loss;
    };
    const fixed = carried('fixedOrifice');
    expect(fixed.heating?.capacityRatioToHealthy.likely).toBeLessThan(0.85);
    expect(fixed.cooling?.capacityRatioToHealthy.likely).toBeGreaterThan(0.97);
    expect(fixed.cooling?.shares).toEqual([]);
    expect(carried('txv').cooling?.capacityRatioToHealthy.likely).toBeLessThan(0.85);
  });

  it('wiring: a simulated heat pump with a blocked heating orifice has its cooling carried over whole', () => {
    const unit = {
      kind: 'heatPump',
      refrigerant: 'R-410A',
      metering: 'fixedOrifice',
      nominalTons: 3,
      electricHeatKw: 0,
    } as const;
    const { run } = synthesise(
      { ...unit, seer: 13, compressor: 'scroll', blower: 'psc' },
      { mode: 'heating', outdoorF: 45, returnF: 70 },
      [{ fault: 'meteringRestriction', level: 0.5 }],
    );
    const visit = visitOf([run], { ...unit, ratings: { seerBtuPerWh: 13, hspfBtuPerWh: 7.8 } });
    const { loss, causes } = findings(visit);
    expect(causes?.causes[0]?.cause).toBe('meteringRestriction');
    expect(loss.heating?.capacityRatioToHealthy.likely).toBeLessThan(0.8);
    expect(loss.cooling?.capacityRatioToHealthy.likely).toBeGreaterThan(0.92);
  });

  it('identity: the shift is the difference of what the causes do in both modes', () => {
    const context = contextOfRun(atTarget('cooling', rated), rated);
    const healthy = healthyAt(context);
    const power = { id: 'measuredPower', mean: 0.2, sd: 0.02 } as const;
    const evidence = {
      runId: 'run-1',
      mode: 'cooling' as const,
      label: '',
      capacity: [],
      power,
      notes: [],
      ...(healthy === undefined ? {} : { healthy }),
    };
    const routeOf = (mode: 'cooling' | 'heating') => ({
      lnCapacity: { value: mode === 'cooling' ? -0.1 : -0.3, sd: 0.05 },
      lnPower: { value: mode === 'cooling' ? 0.05 : 0.12, sd: 0.05 },
      lostByCause: [],
      beyondRange: false,
      notes: [],
    });
    const { loss } = lossOfVisit(context.visit, [evidence], routeOf);
    const of = (key: 'lnCapacity' | 'lnPower') =>
      (loss.heating?.[key].mean ?? 9) - (loss.cooling?.[key].mean ?? 9);
    expect(of('lnCapacity')).toBeCloseToWithin(-0.2, 1e-12);
    expect(of('lnPower')).toBeCloseToWithin(0.07, 1e-12);
  });

  it('identity: an air conditioner has no heating loss', () => {
    expect(findings(visitOf([], { kind: 'airConditioner' })).loss.heating).toBeUndefined();
  });

  it('identity: the first usable run of a mode is the unit as found; later ones stay visible', () => {
    const before = { ...atTarget('heating', rated, 1.3), label: 'as found' };
    const after = { ...atTarget('heating', rated, 1.02), label: 'registers opened' };
    const found = findings(visitOf([before, after], rated));
    const byRun = found.lossByRun ?? [];
    expect(byRun.map((entry) => entry.runId)).toEqual(['run-1', 'run-2']);
    expect(byRun[0]?.loss.powerRatioToHealthy.likely).toBeGreaterThan(1.25);
    expect(found.loss.heating?.powerRatioToHealthy.likely).toBe(byRun[0]?.loss.powerRatioToHealthy.likely);
    expect(found.loss.heating?.notes).toContainEqual({
      code: 'firstRunCounts',
      values: { label: 'as found' },
    });
  });

  it('identity: a run without usable readings does not wipe out another one', () => {
    const read = { ...atTarget('heating', rated, 1.3), label: 'as found' };
    const empty: RunPart = { mode: 'heating', label: 'filter out', returnAirF: 70 };
    const { heating } = findings(visitOf([empty, read], rated)).loss;
    expect(heating?.powerRatioToHealthy.likely).toBeGreaterThan(1.25);
    expect(heating?.notes).toContainEqual({ code: 'runNotUsable', values: { label: 'filter out' } });
  });

  it('identity: capacity above healthy is no loss, and said', () => {
    const small = { ...rated, nominalTons: 2, ratings: { seerBtuPerWh: 14, cooling95Btuh: 24_000 } };
    const visit = visitOf([{ ...atTarget('cooling', small), ...balance, outdoorUnitW: 2_700 }], small);
    const cooling = required(findings(visit).loss.cooling);
    expect(cooling.capacityRatioToHealthy).toMatchObject({ likely: 1, high: 1.05 });
    expect(cooling.notes.map((note) => note.code)).toContain('capacityAboveHealthy');
  });

  it('identity: two capacities that disagree are widened and said', () => {
    const run = {
      ...atTarget('cooling', rated),
      ...balance,
      supplyAirF: 44,
      supplyWetBulbF: 43,
      airflowCfm: 1_900,
    };
    const cooling = required(findings(visitOf([run], rated)).loss.cooling);
    expect(cooling.notes.map((note) => note.code)).toContain('capacityRoutesDisagree');
    const one = required(
      findings(visitOf([{ ...atTarget('cooling', rated), ...balance }], rated)).loss.cooling,
    );
    expect(cooling.lnCapacity.sd).toBeGreaterThan(one.lnCapacity.sd);
  });

  it('property: order of runs of different modes does not matter', () => {
    const cooling = { ...atTarget('cooling', rated, 1.1), ...balance, id: 'c' };
    const heating = { ...atTarget('heating', rated, 1.2), id: 'h' };
    const a = findings(visitOf([cooling, heating], rated));
    const b = findings(visitOf([heating, cooling], rated));
    expect(a.loss).toEqual(b.loss);
    expect(a.wouldNarrow).toEqual(b.wouldNarrow);
  });

  it('property: less sure instruments and assumptions never narrow the loss', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.08, noNaN: true }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        (half, more) => {
          const at = (spread: number) =>
            required(
              findings(
                visitOf([{ ...atTarget('cooling', rated), ...balance }], rated, {
                  assumptions: [
                    {
                      key: 'shellLossFrac',
                      low: 0.08 - Math.min(spread, 0.08),
                      likely: 0.08,
                      high: 0.08 + spread,
                      source: 't',
                    },
                    {
                      key: 'outdoorFanShareFrac',
                      low: 0.05,
                      likely: 0.05,
                      high: 0.05 + spread / 4,
                      source: 't',
                    },
                  ],
                }),
              ).loss.cooling,
            ).lnCapacity.sd;
          expect(at(half + more)).toBeGreaterThanOrEqual(at(half) - 1e-12);
        },
      ),
      { seed: 31, numRuns: 30 },
    );
  });

  it('property: estimates are ordered, finite and inside their limits whatever is read', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 200, max: 14_000, noNaN: true }),
        fc.double({ min: -20, max: 120, noNaN: true }),
        fc.constantFrom('cooling' as const, 'heating' as const),
        (outdoorUnitW, outdoorAirF, mode) => {
          const { loss } = findings(visitOf([{ mode, outdoorAirF, outdoorUnitW, ...balance }], rated));
          for (const side of [required(loss.cooling), required(loss.heating)]) {
            const { capacityRatioToHealthy: c, powerRatioToHealthy: p } = side;
            expect([c.low <= c.likely, c.likely <= c.high, p.low <= p.likely, p.likely <= p.high]).toEqual([
              true,
              true,
              true,
              true,
            ]);
            expect(c.low).toBeGreaterThanOrEqual(0.2);
            expect(c.high).toBeLessThanOrEqual(1.05);
            expect(Number.isFinite(p.high) && Number.isFinite(side.lnPower.sd)).toBe(true);
          }
        },
      ),
      { seed: 32, numRuns: 60 },
    );
  });
});
