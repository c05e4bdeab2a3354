import { describe, expect, it } from 'vitest';
import type { FeatureId, FeatureReading } from '@/lib/diagnostics/causes/feature';
import { featuresOfRun } from '@/lib/diagnostics/causes/features-of-run';
import { derivedById, deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { airConflicts } from '@/lib/diagnostics/plausibility/air-conflicts';
import { refrigerantConflicts } from '@/lib/diagnostics/plausibility/refrigerant-conflicts';
import { targetsOfRun } from '@/lib/diagnostics/targets/targets-of-run';
import type { Unit } from '@/lib/visit/unit';
import '../support/matchers';
import { contextOfRun, type RunPart } from '../support/visit-of';

function input(part: RunPart, unit: Partial<Unit> = {}) {
  const context = contextOfRun(part, unit);
  const derived = deriveRun(context);
  const { targets, noTargets } = targetsOfRun(context, derived);
  const flags = [...refrigerantConflicts(context, derived), ...airConflicts(context, derived)];
  return { context, derived, targets, noTargets, flags };
}

function feature(part: RunPart, id: FeatureId, unit: Partial<Unit> = {}): FeatureReading | undefined {
  return featuresOfRun(input(part, unit)).find((f) => f.id === id);
}

const cooling = {
  mode: 'cooling',
  outdoorAirF: 92,
  returnAirF: 76,
  returnWetBulbF: 63,
  suctionPsig: 130,
  dischargePsig: 365,
  suctionLineF: 55,
  dischargeLineF: 165,
  liquidLineF: 100,
  outdoorUnitW: 2_600,
} as const satisfies RunPart;

describe('evidence of a run', () => {
  it('identity: residual is reading less target, its uncertainty that of both', () => {
    const given = input(cooling);
    const found = featuresOfRun(given).find((f) => f.id === 'condensing');
    const target = given.targets.find((t) => t.id === 'condensingOverOutdoorFd');
    expect(found?.residual).toBeCloseToWithin((target?.reading ?? 0) - (target?.value ?? 0), 1e-12);
    const own = derivedById(given.derived, 'condensingOverOutdoorFd')?.sd ?? 0;
    expect(found?.sd).toBeCloseToWithin(Math.hypot(target?.sd ?? 0, own), 1e-12);
  });

  it('identity: "high" is a high pressure for both saturation temperatures, in both modes', () => {
    const higher = (mode: 'cooling' | 'heating', id: 'evaporating' | 'condensing') => {
      const base: RunPart =
        mode === 'cooling'
          ? cooling
          : { ...cooling, mode, outdoorAirF: 45, returnAirF: 70, suctionPsig: 105, dischargeLineF: 195 };
      const more: RunPart =
        id === 'evaporating'
          ? { ...base, suctionPsig: (base.suctionPsig ?? 0) + 8 }
          : { ...base, dischargePsig: (base.dischargePsig ?? 0) + 20 };
      return (feature(more, id)?.residual ?? Number.NaN) - (feature(base, id)?.residual ?? Number.NaN);
    };
    const all = (['cooling', 'heating'] as const).flatMap((mode) => [
      higher(mode, 'evaporating'),
      higher(mode, 'condensing'),
    ]);
    expect(all.filter((difference) => !(difference > 1))).toEqual([]);
    expect(all).toHaveLength(4);
  });

  it('identity: superheat and subcooling know their floor', () => {
    expect(feature(cooling, 'superheat')?.floor).toBe(-10);
    expect(feature({ ...cooling, suctionLineF: 45 }, 'superheat')?.residual).toBeCloseToWithin(-10, 0.1);
    expect(feature(cooling, 'subcooling')?.floor).toBe(-10);
  });

  it('identity: fixed metering goes by the table, by "below 5 F" at a dash, by a wide guess in heating', () => {
    const fixed = { metering: 'fixedOrifice' } as const;
    const at = (change: Partial<RunPart>) => feature({ ...cooling, ...change }, 'superheat', fixed);
    expect(at({ returnWetBulbF: 67, outdoorAirF: 95 })?.floor).toBeCloseToWithin(-12, 1e-9);
    expect(at({ returnWetBulbF: 58, outdoorAirF: 98 })?.floor).toBe(-4);
    expect(at({ returnWetBulbF: 79 })).toBeUndefined();
    const heating = {
      ...cooling,
      mode: 'heating',
      outdoorAirF: 42,
      dischargeLineF: 195,
      suctionPsig: 105,
    } as const;
    expect(feature(heating, 'superheat', fixed)?.floor).toBe(-8);
    expect(feature(heating, 'superheat', fixed)?.sd ?? 0).toBeGreaterThan(8);
  });

  it('identity: with a wet suction line the discharge says nothing, and efficiency less than with a dry one', () => {
    const wet = { ...cooling, suctionLineF: 46 };
    expect(feature(wet, 'discharge')).toBeUndefined();
    expect(feature(wet, 'efficiency')?.sd ?? 0).toBeGreaterThan(
      1.1 * (feature(cooling, 'efficiency')?.sd ?? 9),
    );
    expect(feature(wet, 'superheat')).toBeDefined();
    expect(feature(cooling, 'discharge')).toBeDefined();
  });

  it('identity: what rests on readings in conflict is left out; other readings stay as they are', () => {
    const conflicting = { ...cooling, liquidLineF: 118 };
    expect(feature(conflicting, 'subcooling')).toBeUndefined();
    expect(feature(conflicting, 'condensing')).toBeUndefined();
    expect(feature(conflicting, 'evaporating')).toEqual(feature(cooling, 'evaporating'));
  });

  it('identity: an unsteady run counts less', () => {
    const steady = feature({ ...cooling, runningMinutes: 20 }, 'condensing')?.sd ?? Number.NaN;
    expect(feature({ ...cooling, runningMinutes: 5 }, 'condensing')?.sd).toBeCloseToWithin(
      1.5 * steady,
      1e-9,
    );
  });

  it('identity: what was not read is no evidence', () => {
    expect(featuresOfRun(input({ mode: 'cooling' }))).toEqual([]);
    const capacitor = input({ mode: 'cooling', compressorCapUf: 40, compressorCapRatedUf: 45 });
    expect(featuresOfRun(capacitor).map((f) => f.id)).toEqual(['compressorCapacitor']);
  });

  it('identity: a clean drier, sound capacitors, strips and power factor sit at their expectation', () => {
    const run = {
      ...cooling,
      liquidBeforeMeteringF: 99.5,
      compressorCapUf: 44.1,
      compressorCapRatedUf: 45,
      stripKw: 5,
      stripA: 20.4,
      stripV: 240,
      lineV: 240,
      outdoorUnitA: 11.4,
    } as const;
    const ids: FeatureId[] = ['drierDrop', 'compressorCapacitor', 'stripAmps', 'powerFactor'];
    const sigmas = ids.map((id) => {
      const found = feature(run, id);
      return Math.abs((found?.residual ?? 99) / (found?.sd ?? 1));
    });
    expect(sigmas.filter((sigma) => sigma > 0.5)).toEqual([]);
  });

  it('identity: the refrigerant side over the air side tells of gas that bypasses the coil', () => {
    const air = { supplyAirF: 57, supplyWetBulbF: 55, airflowCfm: 1_200 } as const;
    expect(feature({ ...cooling, ...air }, 'capacityGap')).toBeDefined();
    expect(feature(cooling, 'capacityGap')).toBeUndefined();
    const strips = { mode: 'heating', outdoorAirF: 45, suctionPsig: 105, electricHeatOn: true } as const;
    expect(feature({ ...cooling, ...air, ...strips, supplyAirF: 110 }, 'capacityGap')).toBeUndefined();
  });
});
