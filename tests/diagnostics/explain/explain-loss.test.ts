import { describe, expect, it } from 'vitest';
import { isClearLoss, lossParts } from '@/lib/diagnostics/explain/explain-loss';
import type { Loss } from '@/lib/diagnostics/findings';

function loss(shares: Loss['shares']): Loss {
  const ratio = { low: 0.7, likely: 0.8, high: 0.9 };
  const ln = { mean: -0.2, sd: 0.1 };
  return {
    mode: 'cooling',
    capacityRatioToHealthy: ratio,
    powerRatioToHealthy: ratio,
    lnCapacity: ln,
    lnPower: ln,
    routes: [],
    basis: 'measured',
    notes: [],
    ...(shares === undefined ? {} : { shares }),
  };
}

describe('the loss split by what explains it', () => {
  it('identity: largest first; small causes go with what none explains; all together are the whole', () => {
    const parts = lossParts(
      loss([
        { cause: 'overcharge', shareFrac: 0.04 },
        { cause: 'lowIndoorAirflow', shareFrac: 0.2 },
        { cause: 'lowCharge', shareFrac: 0.55 },
      ]),
    );
    expect(parts.map(({ cause }) => cause)).toEqual(['lowCharge', 'lowIndoorAirflow', 'unexplained']);
    expect(parts.reduce((sum, { shareFrac }) => sum + shareFrac, 0)).toBeCloseTo(1, 9);
  });

  it('identity: nothing is left over, or nothing was split', () => {
    expect(lossParts(loss([{ cause: 'lowCharge', shareFrac: 0.97 }]))).toHaveLength(1);
    expect(lossParts(loss([{ cause: 'lowCharge', shareFrac: 0.02 }]))).toEqual([]);
    expect(lossParts(loss(undefined))).toEqual([]);
  });

  it('identity: a loss whose good end reaches a healthy unit is not clear, and is not split', () => {
    const clear = loss([{ cause: 'lowCharge', shareFrac: 0.6 }]);
    expect(isClearLoss(clear)).toBe(true);
    const wide = { ...clear, capacityRatioToHealthy: { low: 0.8, likely: 0.95, high: 1.05 } };
    expect(isClearLoss(wide)).toBe(false);
    expect(lossParts(wide)).toEqual([]);
    expect(isClearLoss({ ...wide, powerRatioToHealthy: { low: 1.02, likely: 1.1, high: 1.2 } })).toBe(true);
  });
});
