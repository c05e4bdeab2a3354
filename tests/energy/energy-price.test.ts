import { describe, expect, it } from 'vitest';
import prices from '@/lib/energy/data/energy-prices.json';
import { energyPrice } from '@/lib/energy/energy-price';
import { exampleVisit } from './example-visit';

const { tariff: _, ...rest } = exampleVisit();
const withoutTariff = { ...rest, site: {} };

describe('outside: average prices by state [US EIA Electric Power Annual 2023, read; agrees with the table to 0.01 cent]', () => {
  it.each([
    ['GA', 0.1373],
    ['CA', 0.2954],
    ['TX', 0.1446],
    ['NY', 0.2225],
    ['TN', 0.1219],
  ])('%s', (state, usdPerKwh) => {
    const table: Readonly<Record<string, number>> = prices.electricityUsdPerKwh;
    expect(table[state]).toBeCloseTo(usdPerKwh, 3);
  });

  it('has every state, the district and the nation', () => {
    expect(Object.keys(prices.electricityUsdPerKwh)).toHaveLength(52);
    expect(Object.keys(prices.gasUsdPerTherm)).toHaveLength(52);
  });
});

describe('wiring: which price counts', () => {
  it('the tariff of the visit first', () => {
    expect(energyPrice(exampleVisit())).toMatchObject({ tariff: { energyUsdPerKwh: 0.15 }, basis: 'bill' });
  });

  it('then a price set in the visit, even when the state is known', () => {
    const price = energyPrice({
      ...withoutTariff,
      site: { stateCode: 'GA' },
      assumptions: [
        { key: 'electricityUsdPerKwh', low: 0.1, likely: 0.11, high: 0.12, source: 'co-op leaflet' },
      ],
    });
    expect(price).toEqual({
      tariff: { kind: 'flat', energyUsdPerKwh: 0.11 },
      basis: 'assumed',
      source: 'co-op leaflet',
      notes: [],
    });
  });

  it("then the state's average, then the nation's", () => {
    const table: Readonly<Record<string, number>> = prices.electricityUsdPerKwh;
    expect(energyPrice({ ...withoutTariff, site: { stateCode: 'GA' } }).tariff).toMatchObject({
      energyUsdPerKwh: table.GA,
    });
    expect(energyPrice({ ...withoutTariff, site: { stateCode: 'GA' } }).source).toContain('2023');
    expect(energyPrice(withoutTariff)).toMatchObject({ tariff: { energyUsdPerKwh: 0.16 }, basis: 'assumed' });
    expect(energyPrice({ ...withoutTariff, site: { stateCode: 'ZZ' } }).tariff).toMatchObject({
      energyUsdPerKwh: 0.16,
    });
  });

  it('regression: a peak alone is billed for its own hours; the rest is the average of the state, and all is assumed', () => {
    const table: Readonly<Record<string, number>> = prices.electricityUsdPerKwh;
    const peak = { months: [7], days: 'weekdays' as const, fromHour: 16, toHour: 21, energyUsdPerKwh: 0.4 };
    const price = energyPrice({
      ...withoutTariff,
      site: { stateCode: 'GA' },
      tariff: { kind: 'timeOfUse', periods: [peak] },
    });
    expect(price).toMatchObject({ basis: 'assumed', tariff: { otherUsdPerKwh: table.GA, periods: [peak] } });
    expect(price.source).toContain('Average of GA, 2023');
  });
});
