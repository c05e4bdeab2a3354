import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tieredAddedUsd, tieredMonthUsd } from '@/lib/energy/tariff/tiered-cost';
import type { TieredTariff } from '@/lib/visit/tariff';

const tariff: TieredTariff = {
  kind: 'tiered',
  seasons: [
    {
      months: [6, 7, 8, 9],
      tiers: [
        { upToKwh: 650, energyUsdPerKwh: 0.09 },
        { upToKwh: 1_000, energyUsdPerKwh: 0.15 },
        { energyUsdPerKwh: 0.16 },
      ],
    },
    {
      months: [1, 2, 3, 4, 5, 10, 11, 12],
      tiers: [{ upToKwh: 650, energyUsdPerKwh: 0.085 }, { energyUsdPerKwh: 0.073 }],
    },
  ],
};

describe('outside: tiered bills worked by hand [invented tariff]', () => {
  // July: 650 x 0.09 + 350 x 0.15 + 200 x 0.16 = 58.50 + 52.50 + 32.00
  it.each([
    [7, 0, 0],
    [7, 650, 58.5],
    [7, 651, 58.65],
    [7, 1_000, 111],
    [7, 1_200, 143],
    // January, a falling block: 650 x 0.085 + 550 x 0.073 = 55.25 + 40.15
    [1, 1_200, 95.4],
  ])('month %d, %d kWh', (month, kwh, usd) => {
    expect(tieredMonthUsd(tariff, month, kwh)).toBeCloseTo(usd, 9);
  });

  it('a load on top of 600 kWh pays 50 at the first price, 350 at the second, 100 at the third', () => {
    expect(tieredAddedUsd(tariff, 7, 600, 500)).toBeCloseTo(50 * 0.09 + 350 * 0.15 + 100 * 0.16, 9);
  });

  it('a month without a season is our own mistake', () => {
    expect(() => tieredMonthUsd({ kind: 'tiered', seasons: [] }, 3, 10)).toThrow('month 3 has no season');
  });
});

describe('property: tiered bills', () => {
  it('more use never costs less, and two loads cost what both cost together', () => {
    const kwh = fc.double({ min: 0, max: 3_000, noNaN: true });
    fc.assert(
      fc.property(kwh, kwh, fc.integer({ min: 1, max: 12 }), (a, b, month) => {
        expect(tieredMonthUsd(tariff, month, a + b)).toBeGreaterThanOrEqual(
          tieredMonthUsd(tariff, month, a) - 1e-9,
        );
        expect(tieredMonthUsd(tariff, month, a) + tieredAddedUsd(tariff, month, a, b)).toBeCloseTo(
          tieredMonthUsd(tariff, month, a + b),
          9,
        );
      }),
    );
  });
});
