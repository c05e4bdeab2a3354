import { describe, expect, it } from 'vitest';
import type { Loss } from '@/lib/diagnostics/findings';
import { shownLoss } from '@/lib/energy/shown-loss';

function loss(mode: 'cooling' | 'heating', likely: number, basis: Loss['basis']): Loss {
  const ratio = { low: likely, likely, high: likely };
  const ln = { mean: Math.log(likely), sd: 0 };
  return {
    mode,
    capacityRatioToHealthy: ratio,
    powerRatioToHealthy: ratio,
    lnCapacity: ln,
    lnPower: ln,
    routes: [],
    basis,
    notes: [],
  };
}

const found = { cooling: loss('cooling', 0.8, 'assumed'), heating: loss('heating', 0.8, 'measured') };
const lossByRun = [
  { runId: 'as-found', loss: found.heating },
  { runId: 'opened', loss: loss('heating', 0.99, 'measured') },
];

describe('wiring: a repair shown by a later run', () => {
  it('takes the loss that run measured, and carries the share left of it over where nobody measured', () => {
    const after = shownLoss(
      { loss: { ...found, cooling: loss('cooling', 0.9, 'assumed') }, lossByRun },
      'opened',
    );
    expect(after?.heating?.capacityRatioToHealthy.likely).toBe(0.99);
    expect(after?.cooling).toMatchObject({ mode: 'cooling', basis: 'assumed' });
    const left = Math.log(0.99) / Math.log(0.8);
    expect(after?.cooling?.capacityRatioToHealthy.likely).toBeCloseTo(0.9 ** left, 12);
  });

  it('changes nothing in either mode when the same readings are shown again', () => {
    const cooling = loss('cooling', 0.93, 'assumed');
    const after = shownLoss({ loss: { ...found, cooling }, lossByRun }, 'as-found');
    expect(after?.heating).toEqual(found.heating);
    expect(after?.cooling?.capacityRatioToHealthy.likely).toBeCloseTo(0.93, 12);
    expect(after?.cooling?.powerRatioToHealthy.likely).toBeCloseTo(0.93, 12);
  });

  it('leaves the other mode alone when the measured loss is too small to compare', () => {
    const small = { cooling: loss('cooling', 0.9, 'assumed'), heating: loss('heating', 0.99, 'measured') };
    const after = shownLoss(
      { loss: small, lossByRun: [{ runId: 'b', loss: loss('heating', 1.02, 'measured') }] },
      'b',
    );
    expect(after?.cooling?.capacityRatioToHealthy.likely).toBeCloseTo(0.9, 12);
  });

  it('claims nothing for a mode that was measured itself', () => {
    const measured = { ...found, cooling: loss('cooling', 0.7, 'measured') };
    expect(shownLoss({ loss: measured, lossByRun }, 'opened')?.cooling).toBe(measured.cooling);
  });

  it('is nothing without a run or without usable readings in it', () => {
    expect(shownLoss({ loss: found, lossByRun }, undefined)).toBeUndefined();
    expect(shownLoss({ loss: found, lossByRun }, 'empty')).toBeUndefined();
    expect(shownLoss({ loss: found }, 'opened')).toBeUndefined();
  });

  it('does not give an air conditioner a heating loss', () => {
    const cooling = [{ runId: 'c', loss: loss('cooling', 0.9, 'measured') }];
    expect(shownLoss({ loss: { cooling: found.cooling }, lossByRun: cooling }, 'c')).not.toHaveProperty(
      'heating',
    );
  });
});
