import { describe, expect, it } from 'vitest';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import type { Target } from '@/lib/diagnostics/findings';
import { targetsOfRun } from '@/lib/diagnostics/targets/targets-of-run';
import type { ReadingName } from '@/lib/visit/run';
import type { Unit } from '@/lib/visit/unit';
import { contextOfRun, type RunPart } from '../support/visit-of';

const cooling = {
  mode: 'cooling',
  suctionPsig: 130,
  dischargePsig: 365,
  suctionLineF: 55,
  dischargeLineF: 165,
  liquidLineF: 100,
  outdoorAirF: 90,
  returnAirF: 76,
  returnWetBulbF: 63,
  supplyAirF: 57,
  airflowCfm: 1_200,
  outdoorUnitW: 2_700,
  lineV: 240,
  compressorA: 11,
} as const satisfies RunPart;
const heating = {
  ...cooling,
  mode: 'heating',
  outdoorAirF: 40,
  returnAirF: 70,
  supplyAirF: 95,
  suctionPsig: 95,
  dischargePsig: 330,
  suctionLineF: 35,
} as const satisfies RunPart;

const table = {
  outdoorF: [70, 90, 110],
  indoorF: [60, 70],
  suctionPsig: [
    [115, 125],
    [120, 132],
    [126, 138],
  ],
  dischargePsig: [
    [270, 280],
    [360, 370],
    [470, 480],
  ],
};

const CASES: readonly (readonly [string, RunPart, Partial<Unit>])[] = [
  ['cooling, expansion valve', cooling, {}],
  ['cooling, fixed metering', cooling, { metering: 'fixedOrifice' }],
  ['cooling, nameplate subcooling', cooling, { nameplateSubcoolingFd: 9 }],
  ['cooling, own charging table', cooling, { chargingTables: [{ mode: 'cooling', ...table }] }],
  ['heating, expansion valve', heating, {}],
  ['heating, fixed metering', heating, { metering: 'fixedOrifice' }],
];

/** Readings a rule may hang on; small steps that stay inside every table and band. */
const STEPS: Readonly<Partial<Record<ReadingName, number>>> = {
  outdoorAirF: 3,
  returnAirF: 2,
  returnWetBulbF: 1.5,
  suctionPsig: 4,
  dischargePsig: 12,
  suctionLineF: 2,
  dischargeLineF: 4,
  liquidLineF: 2,
  supplyAirF: 1,
  airflowCfm: 60,
  outdoorUnitW: 120,
  lineV: 4,
  compressorA: 0.4,
};

function targets(run: RunPart, unit: Partial<Unit>): readonly Target[] {
  const context = contextOfRun(run, unit);
  return targetsOfRun(context, deriveRun(context)).targets;
}

/** A condition counts as named when it is there itself, or as the value derived from it. */
const STANDS_FOR: Readonly<Record<string, readonly string[]>> = {
  compressionRatio: ['suctionPsig', 'dischargePsig'],
};

function named(target: Target): readonly string[] {
  return (target.conditions ?? []).flatMap(({ name }) => [name, ...(STANDS_FOR[name] ?? [])]);
}

describe('every target opens to its rule and the conditions it was asked at', () => {
  it.each(CASES)('property: no target moves with a reading it does not name: %s', (_, run, unit) => {
    const before = targets(run, unit);
    const silent: string[] = [];
    for (const [reading, step] of Object.entries(STEPS)) {
      const value = run[reading as ReadingName];
      const moved = targets({ ...run, [reading]: (value ?? 0) + step }, unit);
      for (const target of before) {
        const after = moved.find(({ id }) => id === target.id);
        const changed = after === undefined || Math.abs(after.value - target.value) > 1e-9;
        if (changed && !named(target).includes(reading)) silent.push(`${target.id} moves with ${reading}`);
      }
    }
    expect(before.length).toBeGreaterThan(8);
    expect(silent).toEqual([]);
  });

  it.each(CASES)('wiring: each has a rule in words, a source and a status: %s', (_, run, unit) => {
    const lacking = targets(run, unit).filter(
      ({ formula, source, status }) => [formula, source, status].includes('') || formula === undefined,
    );
    expect(lacking).toEqual([]);
  });

  it('wiring: the table of fixed metering names the two readings it was entered with', () => {
    const [superheat] = targets(cooling, { metering: 'fixedOrifice' });
    expect(superheat?.formula).toBe('table of outdoor air and return wet bulb, +/-5 F');
    expect(superheat?.conditions?.map(({ name, value }) => [name, value])).toEqual([
      ['outdoorAirF', 90],
      ['returnWetBulbF', 63],
    ]);
  });
});
