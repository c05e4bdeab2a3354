import { describe, expect, it } from 'vitest';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import type { Flag } from '@/lib/diagnostics/findings';
import { airConflicts, airSideGross } from '@/lib/diagnostics/plausibility/air-conflicts';
import { refrigerantConflicts } from '@/lib/diagnostics/plausibility/refrigerant-conflicts';
import wording from '@/lib/diagnostics/wording/en.json';
import { RefrigerantName } from '@/lib/visit/refrigerant-names';
import type { Unit } from '@/lib/visit/unit';
import { say } from '@/lib/visit/wording';
import checks from '../reference/refrigerants-cycle-checks.json';
import './support/matchers';
import { contextOfRun, type RunPart } from './support/visit-of';

const plausible = {
  mode: 'cooling',
  runningMinutes: 20,
  suctionPsig: 130,
  dischargePsig: 365,
  suctionLineF: 55,
  dischargeLineF: 165,
  liquidLineF: 100,
  outdoorAirF: 90,
  returnAirF: 76,
  returnWetBulbF: 63,
  supplyAirF: 57,
  supplyWetBulbF: 54.5,
  airflowCfm: 1_200,
  outdoorUnitW: 2_700,
  lineV: 240,
  outdoorUnitA: 12,
} as const satisfies RunPart;

function flagsOf(part: RunPart, unit: Partial<Unit> = {}): readonly Flag[] {
  const context = contextOfRun(part, unit);
  const values = deriveRun(context);
  return [...refrigerantConflicts(context, values), ...airConflicts(context, values)];
}

function codes(part: RunPart, unit: Partial<Unit> = {}): string[] {
  return flagsOf(part, unit).map((flag) => flag.code);
}

describe('readings that can all be true', () => {
  it('identity: an ordinary run raises nothing', () => {
    expect(codes(plausible)).toEqual([]);
  });

  it('outside: the possible check cycles raise nothing, the impossible ones are flagged by name', () => {
    const found = checks.points.map((point) => {
      const { input } = point;
      const run: RunPart = {
        mode: input.mode === 'cooling' ? 'cooling' : 'heating',
        suctionPsig: input.suction_psig,
        suctionLineF: input.suctionLine_F,
        dischargePsig: input.discharge_psig,
        dischargeLineF: input.dischargeLine_F,
        liquidLineF: input.liquidLine_F,
        outdoorUnitW: input.compressor_W,
      };
      return [point.id, codes(run, { refrigerant: RefrigerantName.parse(input.refrigerant) })];
    });
    expect(found).toHaveLength(14);
    expect(Object.fromEntries(found.filter(([, flags]) => (flags?.length ?? 0) > 0))).toEqual({
      x01: ['liquidWarmerThanCondensing'],
      x02: ['dischargeCoolerThanLossless'],
    });
  });
});

describe('readings in conflict are named, with the physics in one sentence', () => {
  const conflicts: readonly (readonly [string, Partial<RunPart>, string, readonly string[]])[] = [
    [
      'discharge below suction',
      { dischargePsig: 120 },
      'dischargeNotAboveSuction',
      ['dischargePsig', 'suctionPsig'],
    ],
    [
      'liquid above discharge pressure',
      { liquidPsig: 420 },
      'liquidAboveDischargePressure',
      ['liquidPsig', 'dischargePsig'],
    ],
    [
      'suction line below saturation',
      { suctionLineF: 35 },
      'suctionColderThanSaturation',
      ['suctionLineF', 'suctionPsig'],
    ],
    [
      'liquid warmer than condensing',
      { liquidLineF: 118 },
      'liquidWarmerThanCondensing',
      ['liquidLineF', 'dischargePsig'],
    ],
    [
      'discharge cooler than lossless',
      { dischargeLineF: 140 },
      'dischargeCoolerThanLossless',
      ['dischargeLineF', 'suctionLineF', 'suctionPsig', 'dischargePsig'],
    ],
    [
      'discharge below saturation',
      { dischargeLineF: 100 },
      'dischargeCoolerThanLossless',
      ['dischargeLineF', 'suctionLineF', 'suctionPsig', 'dischargePsig'],
    ],
    [
      'condensing below outdoor',
      { outdoorAirF: 115, liquidLineF: 105 },
      'condensingBelowAir',
      ['dischargePsig', 'outdoorAirF'],
    ],
    [
      'evaporating above return',
      { returnAirF: 41, supplyAirF: 38 },
      'evaporatingAboveAir',
      ['suctionPsig', 'returnAirF'],
    ],
    [
      'liquid colder than outdoor',
      { liquidLineF: 84 },
      'liquidColderThanOutdoor',
      ['liquidLineF', 'outdoorAirF'],
    ],
    [
      'wet bulb above dry bulb',
      { returnWetBulbF: 80 },
      'wetBulbAboveDryBulb',
      ['returnWetBulbF', 'returnAirF'],
    ],
    [
      'wet bulb against humidity',
      { returnHumidityFrac: 0.9 },
      'wetBulbAgainstHumidity',
      ['returnWetBulbF', 'returnHumidityFrac'],
    ],
    ['supply warmer in cooling', { supplyAirF: 92 }, 'supplyWarmerInCooling', ['supplyAirF', 'returnAirF']],
    ['supply colder in heating', { mode: 'heating' }, 'supplyColderInHeating', ['supplyAirF', 'returnAirF']],
    [
      'watts above volt-amps',
      { outdoorUnitA: 9 },
      'wattsAboveVoltAmps',
      ['outdoorUnitW', 'lineV', 'outdoorUnitA'],
    ],
    [
      'parts above the whole',
      { compressorA: 12.5, outdoorFanA: 1 },
      'partsDrawMoreThanWhole',
      ['compressorA', 'outdoorUnitA'],
    ],
  ];

  it.each(conflicts)('identity: %s', (_, change, code, readings) => {
    const found = flagsOf({ ...plausible, ...change }).filter((flag) => flag.code === code);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ severity: 'conflict', runId: 'run-1' });
    expect(found[0]?.readings).toEqual(readings);
    const words: Record<string, string> = wording;
    const sentence = say(words, {
      code: `flag.${code}`,
      ...(found[0]?.values === undefined ? {} : { values: found[0].values }),
    });
    expect(sentence).not.toMatch(/^flag\.|\{/);
  });

  it('identity: two ways of measuring airflow that disagree are both named', () => {
    const found = flagsOf({
      ...plausible,
      heatRiseV: 240,
      heatRiseA: 40,
      heatRiseSupplyF: 120,
      heatRiseReturnF: 70,
    });
    const flag = found.find((f) => f.code === 'airflowMethodsDisagree');
    expect(flag?.readings).toEqual(['airflowCfm', 'heatRiseSupplyF', 'heatRiseReturnF', 'heatRiseA']);
  });

  it('identity: air side and refrigerant side beyond both uncertainties', () => {
    const cold = { ...plausible, supplyAirF: 44, supplyWetBulbF: 43, airflowCfm: 1_900 };
    expect(codes(cold)).toContain('capacitiesDisagree');
    expect(codes({ ...cold, electricHeatOn: true })).not.toContain('capacitiesDisagree');
  });
});

describe('doubts', () => {
  it('identity: efficiency above 0.85 is a doubt, surely above it a conflict, below 0.35 a doubt', () => {
    const at = (dischargeLineF: number) =>
      flagsOf({ ...plausible, dischargeLineF })
        .filter((flag) => flag.code.startsWith('efficiency'))
        .map((flag) => `${flag.code} ${flag.severity}`);
    // 147.3 F is lossless; efficiencies 0.84, 0.87, 0.96 and 0.34
    expect(at(154.3)).toEqual([]);
    expect(at(153)).toEqual(['efficiencyTooHigh doubt']);
    expect(at(148.8)).toEqual(['efficiencyTooHigh conflict']);
    expect(at(225)).toEqual(['efficiencyTooLow doubt']);
  });

  it('identity: no subcooling, liquid returning, low superheat', () => {
    expect(codes({ ...plausible, liquidLineF: 110.5 })).toEqual(['noSubcooling']);
    const returning = flagsOf({ ...plausible, suctionLineF: 45.5 });
    expect(returning.map((flag) => `${flag.code} ${flag.severity}`)).toContain('liquidReturning danger');
    expect(codes({ ...plausible, suctionLineF: 48.9 })).toContain('superheatBelowFloor');
  });

  it('identity: a cool discharge beside a wet suction line is liquid at work, not a conflict', () => {
    const wet = { ...plausible, suctionLineF: 46, dischargeLineF: 130 };
    const found = flagsOf(wet).map((flag) => `${flag.code} ${flag.severity}`);
    expect(found).toContain('dischargeCooledByLiquid doubt');
    expect(found.filter((flag) => flag.endsWith('conflict'))).toEqual([]);
    expect(codes({ ...plausible, dischargeLineF: 130 })).toContain('dischargeCoolerThanLossless');
  });

  it('identity: no superheat is a danger in cooling, in heating a doubt: an accumulator is there for it', () => {
    const wet = { suctionPsig: 130, suctionLineF: 45.5 };
    const severities = (mode: 'cooling' | 'heating') =>
      flagsOf({ mode, ...wet }).map((flag) => `${flag.code} ${flag.severity}`);
    expect(severities('cooling')).toEqual(['liquidReturning danger']);
    expect(severities('heating')).toEqual(['noSuperheat doubt']);
  });

  it('identity: fewer than 15 minutes is not steady, 15 is', () => {
    expect(codes({ ...plausible, runningMinutes: 14 })).toEqual(['notSteady']);
    expect(codes({ ...plausible, runningMinutes: 15 })).toEqual([]);
  });

  it('identity: electric heat on hides the heat pump in heating', () => {
    expect(codes({ mode: 'heating', electricHeatOn: true })).toEqual(['electricHeatOn']);
  });

  it('identity: liquid warming on the way and a low power factor', () => {
    expect(codes({ ...plausible, liquidBeforeMeteringF: 105 })).toEqual(['liquidWarmsOnTheWay']);
    expect(codes({ ...plausible, outdoorUnitW: 1_500 })).toContain('powerFactorLow');
  });

  // Superheat and subcooling are differences of two readings (California Energy Commission 2008, RA3.2, read).
  it('outside: a superheat or subcooling the gauge shows must be the difference of the readings behind it', () => {
    const superheat = flagsOf({ ...plausible, statedSuperheatFd: 25 });
    expect(superheat.map(({ code }) => code)).toEqual(['statedSuperheatContradicted']);
    expect(superheat[0]).toMatchObject({
      severity: 'conflict',
      readings: ['statedSuperheatFd', 'suctionPsig', 'suctionLineF'],
      values: { stated: 25 },
    });
    const subcooling = flagsOf({ ...plausible, statedSubcoolingFd: 2 });
    expect(subcooling.map(({ code }) => code)).toEqual(['statedSubcoolingContradicted']);
    expect(subcooling[0]?.readings).toEqual(['statedSubcoolingFd', 'dischargePsig', 'liquidLineF']);
    expect(
      say(
        wording,
        superheat[0]?.code === undefined
          ? { code: '' }
          : { code: 'flag.statedSuperheatContradicted', values: superheat[0].values ?? {} },
      ),
    ).toContain('Superheat of 25 °F');
  });

  it('identity: one that fits within both uncertainties, or has nothing to be held against, is no conflict', () => {
    const derived = deriveRun(contextOfRun(plausible));
    const value = (id: string) => derived.find((d) => d.id === id)?.value ?? Number.NaN;
    const fitting = {
      statedSuperheatFd: value('suctionSuperheatFd') + 2,
      statedSubcoolingFd: value('liquidSubcoolingFd') - 2,
    };
    expect(codes({ ...plausible, ...fitting })).toEqual([]);
    expect(codes({ mode: 'cooling', statedSuperheatFd: 40, statedSubcoolingFd: 40 })).toEqual([]);
  });

  it('identity: nothing to compare, nothing flagged', () => {
    expect(codes({ mode: 'cooling' })).toEqual([]);
    expect(codes({ mode: 'heating', suctionPsig: 100 })).toEqual([]);
  });
});

describe('air side as gross heat', () => {
  it('identity: blower heat is put back: plus in cooling, minus in heating', () => {
    const readings = { ...plausible, blowerW: 500 };
    const cooling = contextOfRun(readings);
    const values = deriveRun(cooling);
    const net = values.find((value) => value.id === 'totalCapacityBtuh')?.value ?? Number.NaN;
    expect(airSideGross(cooling, values)?.value).toBeCloseToWithin(net + 3.412 * 500, 1e-6);
    const heating = contextOfRun({
      mode: 'heating',
      returnAirF: 70,
      supplyAirF: 95,
      airflowCfm: 1_000,
      blowerW: 500,
    });
    expect(airSideGross(heating, deriveRun(heating))?.value).toBeCloseToWithin(27_000 - 3.412 * 500, 1e-6);
    expect(airSideGross(heating, [])).toBeUndefined();
  });
});

describe('air that heat and rise ask for', () => {
  const heating = {
    mode: 'heating',
    suctionPsig: 100,
    dischargePsig: 340,
    suctionLineF: 42,
    dischargeLineF: 165,
    liquidLineF: 92,
    outdoorAirF: 45,
    returnAirF: 70,
    outdoorUnitW: 2_700,
  } as const satisfies RunPart;

  // FSEC 1997, abstract read: 130-510 cfm/ton in 27 homes; limits 200-600 are judgement.
  it('outside: only an airflow outside 200-600 cfm per ton is doubted, and none that was read', () => {
    const doubted = (supplyAirF: number, rest: Partial<RunPart> = {}) =>
      codes({ ...heating, supplyAirF, ...rest }).includes('impliedAirflow');
    expect([78, 95, 100].map((supplyAirF) => doubted(supplyAirF))).toEqual([true, false, false]);
    expect(doubted(140)).toBe(true);
    expect(doubted(78, { airflowCfm: 1_200 })).toBe(false);
  });
});
