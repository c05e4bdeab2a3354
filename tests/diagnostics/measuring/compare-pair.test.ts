import { describe, expect, it } from 'vitest';
import { diagnose } from '@/lib/diagnostics/diagnose';
import { comparePairs } from '@/lib/diagnostics/measuring/compare-pair';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import '../support/matchers';
import { healthyOf, type RunPart, visitOf } from '../support/visit-of';

function pairs(...runs: RunPart[]) {
  const visit = visitOf(runs);
  const found = diagnose({ visit, healthy: healthyOf(visit), properties: refrigerantProperties('R-410A') });
  return comparePairs(visit, found.runs);
}

const found = {
  mode: 'heating',
  outdoorAirF: 35,
  returnAirF: 70,
  supplyAirF: 110,
  airflowCfm: 650,
  suctionPsig: 88,
  dischargePsig: 400,
} as const;

describe('any two runs of one mode', () => {
  it('identity: every pair of a mode, earlier first, none across modes', () => {
    const all = pairs(found, { mode: 'cooling' }, found, { ...found, airflowCfm: 900 });
    expect(all.map(({ fromRunId, toRunId }) => [fromRunId, toRunId])).toEqual([
      ['run-1', 'run-3'],
      ['run-1', 'run-4'],
      ['run-3', 'run-4'],
    ]);
  });

  it('identity: of many runs the first with each, each with the next and each with the last', () => {
    const of = (count: number) => pairs(...Array.from({ length: count }, () => found)).length;
    // 6 runs: 15 pairs; 7 runs: 6 with the first, 5 more with the next, 4 more with the last
    expect([of(4), of(6), of(7), of(20)]).toEqual([6, 15, 15, 54]);
    const ids = pairs(...Array.from({ length: 8 }, () => found)).map((p) => `${p.fromRunId} ${p.toRunId}`);
    expect(ids).toEqual(expect.arrayContaining(['run-1 run-5', 'run-3 run-4', 'run-3 run-8', 'run-7 run-8']));
    expect(ids).not.toContain('run-3 run-5');
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('identity: pressures as read are compared too, real beyond the gauges', () => {
    const [pair] = pairs(found, { ...found, dischargePsig: 330, suctionPsig: 89, airflowCfm: 1_100 });
    const of = (id: string) => pair?.changes.find((change) => change.id === id);
    expect(of('dischargePsig')).toMatchObject({ before: 400, after: 330, real: true, unit: 'psig' });
    // 1 % of 400 and of 330 psi
    expect(of('dischargePsig')?.sd).toBeCloseToWithin(Math.hypot(4, 3.3), 1e-9);
    expect(of('suctionPsig')).toMatchObject({ real: false });
    expect(of('condensingOverReturnFd')).toMatchObject({ real: true, towardsTarget: true });
  });

  it('identity: conditions are told with whether they changed; those nobody read are left out', () => {
    const { returnAirF: _unread, ...blind } = found;
    const [pair] = pairs(found, { ...blind, outdoorAirF: 45, lineV: 240, electricHeatOn: true });
    expect(pair?.conditions).toEqual([
      { id: 'outdoorAirF', before: 35, after: 45, verdict: 'changed' },
      { id: 'returnAirF', before: 70, verdict: 'unknown' },
      { id: 'lineV', after: 240, verdict: 'unknown' },
    ]);
    expect(pair).toMatchObject({ electricHeatDiffers: true, notes: [{ code: 'weatherChanged' }] });
    expect(pairs(found, { ...found, outdoorAirF: 40 })[0]?.conditions[0]?.verdict).toBe('same');
  });

  it('identity: each reading is held against the target of its own weather', () => {
    const table = {
      mode: 'heating',
      outdoorF: [20, 60],
      indoorF: [70],
      dischargePsig: [[300], [400]],
    } as const;
    const at = (outdoorAirF: number, dischargePsig: number) =>
      ({ mode: 'heating', outdoorAirF, returnAirF: 70, dischargePsig }) as const;
    const visit = visitOf([at(20, 300), at(60, 330)], {
      chargingTables: [
        { ...table, outdoorF: [...table.outdoorF], indoorF: [70], dischargePsig: [[300], [400]] },
      ],
    });
    const runs = diagnose({
      visit,
      healthy: healthyOf(visit),
      properties: refrigerantProperties('R-410A'),
    }).runs;
    const change = comparePairs(visit, runs)[0]?.changes.find(({ id }) => id === 'dischargePsig');
    // on target at 20 F (300 psig), 70 psi below it at 60 F, though nearer to 400 psig than before
    expect(change?.towardsTarget).toBe(false);
  });
});
