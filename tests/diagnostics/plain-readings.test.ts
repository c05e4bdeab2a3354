import { describe, expect, it } from 'vitest';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import type { Target } from '@/lib/diagnostics/findings';
import { plainReadings } from '@/lib/diagnostics/plain-readings';
import { targetsOfRun } from '@/lib/diagnostics/targets/targets-of-run';
import type { Verdict } from '@/lib/diagnostics/verdict';
import wording from '@/lib/diagnostics/wording/en.json';
import { contextOfRun } from './support/visit-of';

function target(id: string, verdict?: Verdict): Target {
  const part = { id, value: 1, low: 0, high: 2, unit: 'F', source: 's', status: 'read' };
  return verdict === undefined ? part : { ...part, reading: 1, verdict };
}

/** Every target there can be in a mode, read or not. */
function targetIds(mode: 'cooling' | 'heating'): readonly string[] {
  const context = contextOfRun(
    { mode, ...EVERYTHING },
    { nameplateSubcoolingFd: 10, ratedV: 230, ratedLoadA: 16, chargingTables: [{ mode, ...TABLE }] },
  );
  const { targets, noTargets } = targetsOfRun(context, deriveRun(context));
  return [...targets, ...noTargets].map(({ id }) => id);
}

const TABLE = {
  outdoorF: [50, 100],
  indoorF: [60],
  suctionPsig: [[110], [130]],
  dischargePsig: [[250], [400]],
};

const EVERYTHING = {
  suctionPsig: 130,
  dischargePsig: 365,
  suctionLineF: 55,
  dischargeLineF: 165,
  liquidLineF: 100,
  liquidBeforeMeteringF: 99,
  outdoorAirF: 60,
  returnAirF: 76,
  returnWetBulbF: 63,
  supplyAirF: 80,
  lineV: 238,
  compressorA: 11,
  outdoorUnitW: 2_700,
  airflowCfm: 1_150,
  returnStaticInWc: -0.25,
  supplyStaticInWc: 0.2,
  filterDropInWc: 0.1,
  coilDropInWc: 0.2,
  compressorCapRatedUf: 45,
  compressorCapUf: 44,
  fanCapRatedUf: 5,
  fanCapUf: 4.9,
  stripKw: 10,
  stripA: 41,
} as const;

describe('plain readings for the homeowner', () => {
  it('identity: what is off, in the order that matters to them', () => {
    const targets = [
      target('suctionSuperheatFd', 'above'),
      target('dischargeLineF', 'above'),
      target('airSplitFd', 'within'),
    ];
    expect(plainReadings(targets, [])).toEqual([
      { code: 'homeowner.dischargeLineF.above' },
      { code: 'homeowner.suctionSuperheatFd.above' },
    ]);
  });

  it('identity: all within, nothing judged, conflicting readings', () => {
    expect(plainReadings([target('airSplitFd', 'within')], [])).toEqual([{ code: 'homeowner.allWithin' }]);
    expect(plainReadings([target('airSplitFd')], [])).toEqual([]);
    const conflict = { code: 'x', severity: 'conflict', readings: [] } as const;
    expect(plainReadings([target('airSplitFd', 'above')], [conflict])).toEqual([
      { code: 'homeowner.conflict' },
    ]);
  });

  it('wiring: every sentence that can come has its words', () => {
    const ids = [...targetIds('cooling'), ...targetIds('heating')];
    expect(ids.length).toBeGreaterThan(25);
    const told = (['above', 'below'] as const).flatMap((verdict) =>
      plainReadings(
        ids.map((id) => target(id, verdict)),
        [],
      ),
    );
    const words: Record<string, string> = wording;
    expect(new Set(told.map(({ code }) => code)).size).toBe(2 * new Set(ids).size);
    expect(told.filter(({ code }) => words[code] === undefined)).toEqual([]);
  });
});
