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
  it('takes the loss that run measured, in the other mode too where nobody measured', () => {
    const after = shownLoss({ loss: found, lossByRun }, 'opened');
    expect(after?.heating?.capacityRatioToHealthy.likely).toBe(0.99);
    expect(after?.cooling).toMatchObject({
      mode: 'cooling',
      basis: 'assumed',
      capacityRatioToHealthy: { likely: 0.99 },
    });
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
