import { describe, expect, it } from 'vitest';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import type { Flag } from '@/lib/diagnostics/findings';
import { dangersOfRun } from '@/lib/diagnostics/plausibility/dangers';
import wording from '@/lib/diagnostics/wording/en.json';
import sheetWording from '@/lib/sheet/wording/en.json';
import type { Unit } from '@/lib/visit/unit';
import { contextOfRun, type RunPart } from './support/visit-of';

function dangers(part: RunPart, unit: Partial<Unit> = {}): readonly Flag[] {
  const context = contextOfRun(part, unit);
  return dangersOfRun(context, deriveRun(context));
}

function shown(part: RunPart, unit: Partial<Unit> = {}): string[] {
  return dangers(part, unit).map((flag) => `${flag.code} ${flag.severity}`);
}

describe('dangers come whatever the economics say', () => {
  // Limit 225 F near the compressor, read; 214 F close to where oil and valves suffer: common practice, no source.
  it.each([
    [209.9, []],
    [210, ['dischargeLineNearLimit danger']],
    [214, ['dischargeLineNearLimit danger']],
    [224.9, ['dischargeLineNearLimit danger']],
    [225, ['dischargeLineTooHot danger']],
  ])('outside: discharge line at %f F', (dischargeLineF, expected) => {
    expect(shown({ mode: 'cooling', dischargeLineF })).toEqual(expected);
  });

  // NEMA Condensed MG 1, read: +/-10 % of rated voltage; 208/230 V compressors 197-253 V, secondary.
  it.each([
    [230, 207, []],
    [230, 206.9, ['voltageOutsideNameplate danger']],
    [230, 253, []],
    [230, 253.1, ['voltageOutsideNameplate danger']],
    [undefined, 197, []],
    [undefined, 196, ['voltageOutsideDualRating danger']],
    [undefined, 254, ['voltageOutsideDualRating danger']],
  ])('outside: nameplate %s V, %f V at the unit', (ratedV, lineV, expected) => {
    expect(shown({ mode: 'cooling', lineV }, ratedV === undefined ? {} : { ratedV })).toEqual(expected);
  });

  it('identity: amps over the rated load amps, not on them', () => {
    expect(shown({ mode: 'cooling', compressorA: 16 }, { ratedLoadA: 16 })).toEqual([]);
    expect(shown({ mode: 'cooling', compressorA: 16.1 }, { ratedLoadA: 16 })).toEqual([
      'ampsOverRating danger',
    ]);
  });

  it('identity: compression ratio: high is a doubt, beyond 10 a danger', () => {
    expect(shown({ mode: 'heating', suctionPsig: 25, dischargePsig: 250 })).toEqual([]);
    expect(shown({ mode: 'heating', suctionPsig: 18, dischargePsig: 250 })).toEqual([
      'compressionRatioHigh doubt',
    ]);
    expect(shown({ mode: 'heating', suctionPsig: 8, dischargePsig: 250 })).toEqual([
      'compressionRatioTooHigh danger',
    ]);
  });

  it('identity: high side near its cut-out depends on the refrigerant', () => {
    expect(shown({ mode: 'cooling', dischargePsig: 400 }, { refrigerant: 'R-22' })).toEqual([
      'highSideNearCutOut danger',
    ]);
    expect(shown({ mode: 'cooling', dischargePsig: 400 }, { refrigerant: 'R-410A' })).toEqual([]);
    expect(dangers({ mode: 'cooling', liquidPsig: 560 })[0]?.readings).toEqual(['liquidPsig']);
  });

  it('identity: electric heat short of air, or on while cooling', () => {
    expect(shown({ mode: 'heating', heatRiseSupplyF: 160 })).toEqual(['electricHeatShortOfAir danger']);
    expect(shown({ mode: 'heating', supplyAirF: 159 })).toEqual([]);
    expect(shown({ mode: 'cooling', stripA: 20 })).toEqual(['electricHeatInCooling danger']);
    expect(shown({ mode: 'cooling', stripA: 0.4 })).toEqual([]);
    expect(shown({ mode: 'cooling', electricHeatOn: true })).toEqual(['electricHeatOnInCooling danger']);
    expect(shown({ mode: 'heating', stripA: 20, electricHeatOn: true })).toEqual([]);
  });

  it('identity: a coil below freezing is a doubt in cooling only', () => {
    // R-410A at 95 psig evaporates at 29 F
    expect(shown({ mode: 'cooling', suctionPsig: 95 })).toEqual(['coilBelowFreezing doubt']);
    expect(shown({ mode: 'heating', suctionPsig: 95 })).toEqual([]);
  });

  it('identity: suction near vacuum, in either mode', () => {
    for (const mode of ['cooling', 'heating'] as const) {
      expect(shown({ mode, suctionPsig: 5 })).toEqual(['suctionNearVacuum danger', ...FROZEN[mode]]);
      expect(shown({ mode, suctionPsig: 5.1 })).toEqual(FROZEN[mode]);
    }
  });

  it('identity: static twice the rated is a danger where electric heat hangs on the air', () => {
    const high = { mode: 'heating', returnStaticInWc: -0.5, supplyStaticInWc: 0.5 } as const;
    expect(shown(high)).toEqual(['staticFarTooHigh doubt']);
    expect(shown(high, { electricHeatKw: 10 })).toEqual(['staticFarTooHighWithHeat danger']);
    expect(shown({ ...high, supplyStaticInWc: 0.49 }, { electricHeatKw: 10 })).toEqual([]);
  });

  // 10 kW is 34,121 Btu/h; over 1.08 x 350 cfm it lifts 70 F air by 90 F to 160 F.
  it('outside: electric heat in too little air, worked out from heat and airflow, in heating only', () => {
    const run = { mode: 'heating', electricHeatOn: true, stripKw: 10, returnAirF: 70 } as const;
    expect(shown({ ...run, airflowCfm: 340 })).toEqual(['electricHeatTooLittleAir danger']);
    expect(shown({ ...run, airflowCfm: 360 })).toEqual([]);
    expect(shown({ ...run, airflowCfm: 340, electricHeatOn: false })).toEqual([]);
    expect(shown({ ...run, airflowCfm: 340, mode: 'cooling' })).toEqual(['electricHeatOnInCooling danger']);
    expect(shown({ ...run, airflowCfm: 340, supplyAirF: 170 })).toEqual(['electricHeatShortOfAir danger']);
  });

  // 5 kW at 240 V: 20.8 A (P = V^2 / R); circuits are sized at 125 % of it.
  it('outside: electric heat drawing more than its circuit is sized for', () => {
    const strip = (stripA: number) => shown({ mode: 'heating', stripKw: 5, stripV: 240, stripA });
    expect(strip(24)).toEqual([]);
    expect(strip(28)).toEqual(['stripAmpsOverCircuit danger']);
  });

  it('identity: a capacitor far off is a doubt, at half its label a danger', () => {
    const at = (compressorCapUf: number) =>
      shown({ mode: 'cooling', compressorCapRatedUf: 40, compressorCapUf });
    expect(at(33)).toEqual([]);
    expect(at(30)).toEqual(['capacitorFarOff doubt']);
    expect(at(20)).toEqual(['capacitorDead danger']);
    expect(at(0)).toEqual(['capacitorDead danger']);
    expect(at(50)).toEqual(['capacitorFarOff doubt']);
  });

  it('wiring: every danger there is says what licensed practice asks, and the homeowner has words for it', () => {
    const told: Record<string, string> = wording;
    const home: Record<string, string> = sheetWording;
    const codes = Object.keys(home)
      .filter((code) => code.startsWith('danger.'))
      .map((code) => code.slice('danger.'.length));
    expect(codes.length).toBeGreaterThan(25);
    expect(codes.filter((code) => !(told[`flag.${code}`] ?? '').includes('Licensed practice:'))).toEqual([]);
    const asked = Object.keys(told)
      .filter((code) => (told[code] ?? '').includes('Licensed practice:'))
      .map((code) => code.slice('flag.'.length));
    expect(asked.filter((code) => !codes.includes(code))).toEqual([]);
  });
});

/** What so low a suction pressure raises besides: the coil ices in cooling. */
const FROZEN = { cooling: ['coilBelowFreezing doubt'], heating: [] } as const;
