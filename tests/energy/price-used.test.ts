import { describe, expect, it } from 'vitest';
import type { Tariff } from '@/lib/visit/tariff';
import { energyOf, exampleVisit, scenarioNamed } from './example-visit';

const all = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const result = (tariff: Tariff) => energyOf(exampleVisit({ tariff }));
const tiers = (...rows: [number | undefined, number][]): Tariff => ({
  kind: 'tiered',
  seasons: [
    {
      months: all,
      tiers: rows.map(([upToKwh, energyUsdPerKwh]) => ({
        ...(upToKwh === undefined ? {} : { upToKwh }),
        energyUsdPerKwh,
      })),
    },
  ],
  fixedUsdPerMonth: 11,
});

describe('identity: average and marginal price', () => {
  it('a flat price is both', () => {
    const { price } = result({ kind: 'flat', energyUsdPerKwh: 0.15 });
    expect(price).toMatchObject({
      kind: 'flat',
      averageUsdPerKwh: 0.15,
      marginalUsdPerKwh: 0.15,
      basis: 'bill',
    });
  });

  it('beyond the first tier the margin is the dear tier, the average lies between', () => {
    // the rest of the house is assumed at 600 kWh a month, so the unit always starts within the second tier
    const { price } = result(tiers([500, 0.1], [undefined, 0.2]));
    expect(price?.marginalUsdPerKwh).toBeCloseTo(0.2, 9);
    expect(price?.averageUsdPerKwh).toBeCloseTo(0.2, 9);
    const { price: spread } = result(tiers([900, 0.1], [undefined, 0.2]));
    expect(spread?.averageUsdPerKwh).toBeGreaterThan(0.1);
    expect(spread?.averageUsdPerKwh).toBeLessThan(spread?.marginalUsdPerKwh ?? 0);
    expect(spread?.marginalUsdPerKwh).toBeLessThanOrEqual(0.2 + 1e-12);
    expect(spread?.fixedUsdPerMonth).toBe(11);
  });

  it('a saving is the difference of two bills, not the mean price times the kWh [worked by hand]', () => {
    const energy = result(tiers([100_00, 0.1], [undefined, 0.2]));
    const [found, healthy] = [
      scenarioNamed(energy, 'asFound').likely,
      scenarioNamed(energy, 'healthy').likely,
    ];
    // no month passes 10,000 kWh: all at the first tier
    expect(found.costUsd - healthy.costUsd).toBeCloseTo(0.1 * (found.totalKwh - healthy.totalKwh), 6);
  });

  it('by hour the unit pays more than the mean price where it runs in the dear hours', () => {
    const tariff = (peak: number): Tariff => ({
      kind: 'timeOfUse',
      periods: [{ months: all, days: 'all', fromHour: 14, toHour: 20, energyUsdPerKwh: peak }],
      otherUsdPerKwh: 0.1,
    });
    const cooling = energyOf(
      exampleVisit({ site: { climate: { kind: 'city', city: 'phoenix-az' } }, tariff: tariff(0.3) }),
    );
    // six of 24 hours at 0.30 and the rest at 0.10 average 0.15; cooling is used most in the afternoon
    expect(cooling.price?.averageUsdPerKwh).toBeGreaterThan(0.15);
    expect(cooling.price?.averageUsdPerKwh).toBeLessThan(0.3);
    expect(cooling.priceUsdPerKwh).toBe(cooling.price?.averageUsdPerKwh);
  });
});

describe('identity: carbon dioxide at both factors', () => {
  it('one year, two factors, the chosen one in every year', () => {
    const at = (co2Factor?: 'marginal' | 'average') =>
      energyOf(
        exampleVisit({
          site: {
            climate: { kind: 'city', city: 'atlanta-ga' },
            stateCode: 'GA',
            ...(co2Factor === undefined ? {} : { co2Factor }),
          },
        }),
      );
    const [marginal, average] = [at(), at('average')];
    const found = scenarioNamed(marginal, 'asFound');
    expect(marginal.co2?.used).toBe('marginal');
    expect(average.co2?.used).toBe('average');
    expect(found.co2Lb?.marginal).toBeCloseTo(found.likely.co2Lb, 6);
    expect(found.co2Lb?.average).toBeCloseTo(found.likely.totalKwh * (average.co2?.average.lbPerKwh ?? 0), 6);
    expect(scenarioNamed(average, 'asFound').likely.co2Lb).toBeCloseTo(found.co2Lb?.average ?? 0, 6);
    expect(marginal.assumptions.map((a) => a.name)).toEqual(
      expect.arrayContaining(['marginalCo2', 'averageCo2']),
    );
  });
});
