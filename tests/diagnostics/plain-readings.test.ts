import { describe, expect, it } from 'vitest';
import type { Target } from '@/lib/diagnostics/findings';
import { plainReadings } from '@/lib/diagnostics/plain-readings';
import type { Verdict } from '@/lib/diagnostics/verdict';
import wording from '@/lib/diagnostics/wording/en.json';

function target(id: string, verdict?: Verdict): Target {
  const part = { id, value: 1, low: 0, high: 2, unit: 'F', source: 's', status: 'read' };
  return verdict === undefined ? part : { ...part, reading: 1, verdict };
}

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
    const ids = [
      'dischargeLineF',
      'refrigerantCapacityBtuh',
      'totalCapacityBtuh',
      'airflowCfmPerTon',
      'airSplitFd',
      'airRiseFd',
      'outdoorUnitW',
      'suctionSuperheatFd',
      'liquidSubcoolingFd',
      'condensingOverOutdoorFd',
      'totalExternalStaticInWc',
      'compressorCapacitorDeviationFrac',
      'fanCapacitorDeviationFrac',
      'stripAmpsRatio',
      'voltageDeviationFrac',
    ];
    const told = (['above', 'below'] as const).flatMap((verdict) =>
      plainReadings(
        ids.map((id) => target(id, verdict)),
        [],
      ),
    );
    const words: Record<string, string> = wording;
    expect(told).toHaveLength(30);
    expect(told.filter(({ code }) => words[code] === undefined)).toEqual([]);
  });
});
