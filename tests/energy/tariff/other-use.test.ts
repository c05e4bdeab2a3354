import { describe, expect, it } from 'vitest';
import defaults from '@/lib/energy/data/load-defaults.json';
import { otherUseOf } from '@/lib/energy/tariff/other-use';
import type { Tariff } from '@/lib/visit/tariff';
import { energyOf, exampleVisit } from '../example-visit';

const months = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const tiered = (...tiers: { upToKwh?: number; energyUsdPerKwh: number }[]): Tariff => ({
  kind: 'tiered',
  seasons: [{ months, tiers }],
});
const twoTiers = tiered({ upToKwh: 500, energyUsdPerKwh: 0.1 }, { energyUsdPerKwh: 0.22 });

describe('wiring: what fills the lower tiers', () => {
  it('is asked only where a price depends on the amount', () => {
    expect(otherUseOf({ kind: 'flat', energyUsdPerKwh: 0.1 }, undefined)).toBeUndefined();
    expect(otherUseOf(tiered({ energyUsdPerKwh: 0.1 }), undefined)).toBeUndefined();
    expect(otherUseOf(twoTiers, undefined)).toMatchObject({
      kwhPerMonth: defaults.otherUseKwhPerMonth.value,
      basis: 'assumed',
    });
  });

  it('regression: assumed without bills, it is said among the notes and stands among the assumptions', () => {
    const energy = energyOf(exampleVisit({ tariff: twoTiers }));
    expect(energy.notes).toContainEqual({ code: 'tariffTiersOther', values: { otherKwh: 600 } });
    expect(energy.assumptions.find(({ name }) => name === 'otherUse')).toMatchObject({
      value: '600 kWh a month',
      basis: 'assumed',
    });
    const flat = energyOf(exampleVisit());
    expect(flat.assumptions.some(({ name }) => name === 'otherUse')).toBe(false);
    expect(flat.notes.some(({ code }) => code === 'tariffTiersOther')).toBe(false);
  });
});
