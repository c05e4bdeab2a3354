import { describe, expect, it } from 'vitest';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { targetsOfRun } from '@/lib/diagnostics/targets/targets-of-run';
import wording from '@/lib/diagnostics/wording/en.json';
import type { Unit } from '@/lib/visit/unit';
import { contextOfRun, type RunPart } from '../support/visit-of';

function targets(part: RunPart, unit: Partial<Unit> = {}) {
  const context = contextOfRun(part, unit);
  return targetsOfRun(context, deriveRun(context));
}

function verdictOf(part: RunPart, id: string, unit: Partial<Unit> = {}) {
  return targets(part, unit).targets.find((target) => target.id === id)?.verdict;
}

describe('targets of a run', () => {
  // Common practice, no source: 20 F superheat with 10 F subcooling is within normal limits for fixed metering.
  // R-22 at 64 psig evaporates at 36.8 F, at 226.4 psig condenses at 110 F; 80 F outdoors, 67 F wet bulb.
  it('outside: 20 F superheat with 10 F subcooling is within limits for fixed metering [common practice]', () => {
    const run = {
      mode: 'cooling',
      outdoorAirF: 80,
      returnAirF: 76,
      returnWetBulbF: 67,
      suctionPsig: 64,
      suctionLineF: 56.8,
      dischargePsig: 226.4,
      liquidLineF: 100,
    } as const;
    const unit = { refrigerant: 'R-22', metering: 'fixedOrifice' } as const;
    const found = targets(run, unit).targets;
    const of = (id: string) => found.find((target) => target.id === id);
    expect(of('suctionSuperheatFd')?.reading).toBeGreaterThan(19);
    expect(of('suctionSuperheatFd')?.reading).toBeLessThan(21);
    expect(of('suctionSuperheatFd')?.verdict).toBe('within');
    expect(of('liquidSubcoolingFd')?.verdict).toBe('within');
  });

  it('outside: total external static under 0.5 in. w.c. is acceptable, 0.9 is not [common practice]', () => {
    const at = (supplyStaticInWc: number) =>
      ({ mode: 'cooling', returnStaticInWc: -0.2, supplyStaticInWc }) as const;
    expect(verdictOf(at(0.25), 'totalExternalStaticInWc')).toBe('within');
    expect(verdictOf(at(0.5), 'totalExternalStaticInWc')).toBe('within');
    expect(verdictOf(at(0.7), 'totalExternalStaticInWc')).toBe('above');
  });

  // Web duct-design guides, read, no standard: clean filter 0.05-0.10, dirty 0.15-0.30; wet coil 0.15-0.30, dirty 0.5.
  it('outside: of the static pressure a clean filter and a wet coil take their share, dirty ones more', () => {
    const at = (filterDropInWc: number, coilDropInWc: number) =>
      (['filterDropInWc', 'coilDropInWc'] as const).map((id) =>
        verdictOf({ mode: 'cooling', filterDropInWc, coilDropInWc }, id),
      );
    expect(at(0.08, 0.25)).toEqual(['within', 'within']);
    expect(at(0.28, 0.5)).toEqual(['above', 'above']);
  });

  it('outside: a run capacitor at 4.5 of 5 uF is within 10 %, 4.4 is not [common practice]', () => {
    const at = (fanCapUf: number) => ({ mode: 'cooling', fanCapUf, fanCapRatedUf: 5 }) as const;
    expect(verdictOf(at(4.5), 'fanCapacitorDeviationFrac')).toBe('within');
    expect(verdictOf(at(4.4), 'fanCapacitorDeviationFrac')).toBe('below');
  });

  it('outside: a 5 kW strip drawing 19-21 A is within, 14 A is not [common practice]', () => {
    const at = (stripA: number) => ({ mode: 'heating', stripKw: 5, stripA, stripV: 240 }) as const;
    expect([19, 20.5, 21, 14].map((amps) => verdictOf(at(amps), 'stripAmpsRatio'))).toEqual([
      'within',
      'within',
      'within',
      'below',
    ]);
  });

  it('identity: discharge line and compressor amps are judged as read', () => {
    const run = {
      mode: 'cooling',
      outdoorAirF: 90,
      returnAirF: 76,
      returnWetBulbF: 63,
      dischargeLineF: 216,
      compressorA: 11,
      lineV: 240,
    } as const;
    const found = targets(run).targets;
    expect(found.find((target) => target.id === 'dischargeLineF')).toMatchObject({
      reading: 216,
      verdict: 'above',
    });
    expect(found.find((target) => target.id === 'compressorA')).toMatchObject({ reading: 11 });
  });

  it('identity: no cooling target in a heating run, no heating target in a cooling run', () => {
    const air = { outdoorAirF: 60, returnAirF: 72, returnWetBulbF: 60 } as const;
    const ids = (mode: 'cooling' | 'heating') => targets({ mode, ...air }).targets.map((target) => target.id);
    const coolingOnly = [
      'condensingOverOutdoorFd',
      'evaporatingBelowReturnFd',
      'airSplitFd',
      'totalCapacityBtuh',
    ];
    const heatingOnly = ['condensingOverReturnFd', 'evaporatingBelowOutdoorFd', 'airRiseFd'];
    expect(ids('heating').filter((id) => coolingOnly.includes(id))).toEqual([]);
    expect(ids('cooling').filter((id) => heatingOnly.includes(id))).toEqual([]);
    expect(ids('heating')).toEqual(expect.arrayContaining(heatingOnly));
  });

  it('wiring: every target and every reason has its words', () => {
    const runs: RunPart[] = [
      { mode: 'cooling' },
      { mode: 'heating' },
      {
        mode: 'cooling',
        outdoorAirF: 40,
        returnAirF: 60,
        returnWetBulbF: 48,
        suctionPsig: 100,
        dischargePsig: 300,
      },
      { mode: 'heating', outdoorAirF: -30, returnAirF: 70, electricHeatOn: true },
    ];
    const units: Partial<Unit>[] = [{}, { metering: 'fixedOrifice' }];
    const all = runs.flatMap((run) => units.map((unit) => targets(run, unit)));
    const words: Record<string, string> = wording;
    const ids = all.flatMap((found) =>
      [...found.targets, ...found.noTargets].map((entry) => `derived.${entry.id}`),
    );
    const notes = all.flatMap((found) =>
      [...found.targets, ...found.noTargets].flatMap((entry) =>
        entry.note === undefined ? [] : [`note.${entry.note.code}`],
      ),
    );
    expect(notes.length).toBeGreaterThan(20);
    expect([...new Set([...ids, ...notes])].filter((key) => words[key] === undefined)).toEqual([]);
  });
});
