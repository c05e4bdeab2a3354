import { describe, expect, it } from 'vitest';
import { compareRuns } from '@/lib/diagnostics/causes/compare-runs';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { targetsOfRun } from '@/lib/diagnostics/targets/targets-of-run';
import '../support/matchers';
import { contextOf, type RunPart, visitOf } from '../support/visit-of';

function compared(before: Omit<RunPart, 'mode'>, after: Omit<RunPart, 'mode'>) {
  const visit = visitOf([
    { mode: 'heating', ...before },
    { mode: 'heating', ...after },
  ]);
  const [a, b] = visit.runs.map((_, i) => {
    const context = contextOf(visit, i);
    const derived = deriveRun(context);
    return { context, derived, targets: targetsOfRun(context, derived).targets };
  });
  if (a === undefined || b === undefined) throw new Error('two runs');
  return compareRuns(a, b);
}

const found = {
  outdoorAirF: 35,
  returnAirF: 70,
  supplyAirF: 110,
  airflowCfm: 650,
  suctionPsig: 88,
  dischargePsig: 400,
  returnStaticInWc: -0.5,
  supplyStaticInWc: 0.4,
} as const;

describe('before and after', () => {
  it('identity: real changes are told from noise, with the direction to the target', () => {
    const { changes, fromRunId, toRunId, notes } = compared(found, {
      ...found,
      airflowCfm: 1_100,
      dischargePsig: 330,
      supplyAirF: 97,
      suctionPsig: 89,
    });
    const of = (id: string) => changes.find((change) => change.id === id);
    expect([fromRunId, toRunId, notes]).toEqual(['run-1', 'run-2', []]);
    expect(of('airflowCfm')).toMatchObject({ before: 650, after: 1_100, real: true });
    expect(of('condensingOverReturnFd')).toMatchObject({ real: true, towardsTarget: true });
    expect(of('evaporatingBelowOutdoorFd')).toMatchObject({ real: false });
    expect(of('totalExternalStaticInWc')?.real).toBe(false);
  });

  it('identity: only what was read in both runs is compared', () => {
    const { changes } = compared(found, { outdoorAirF: 35, airflowCfm: 900 });
    expect(changes.map(({ id }) => id)).toEqual(['airflowCfm']);
  });

  it('identity: changed weather is said from more than 5 F; unknown weather is no change', () => {
    expect(compared(found, { ...found, outdoorAirF: 40 }).notes).toEqual([]);
    expect(compared(found, { ...found, outdoorAirF: 41 }).notes).toEqual([
      { code: 'weatherChanged', values: { difference: 6 } },
    ]);
    expect(compared({ airflowCfm: 900 }, { airflowCfm: 800, outdoorAirF: 41 }).notes).toEqual([]);
  });

  it('identity: what both runs assume alike does not blur the change', () => {
    const amps = { ...found, compressorA: 11, lineV: 240 };
    const { changes } = compared(amps, { ...amps, compressorA: 9.9 });
    const power = changes.find(({ id }) => id === 'outdoorUnitW');
    // volts 1 % and amps 2 % of each run; the power factor is the same part in both
    expect((power?.sd ?? 0) / (power?.before ?? 1)).toBeCloseToWithin(0.03, 0.003);
    expect(power?.real).toBe(true);
  });
});
