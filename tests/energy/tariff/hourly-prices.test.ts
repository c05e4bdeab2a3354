import { describe, expect, it } from 'vitest';
import { hourlyPrices } from '@/lib/energy/tariff/hourly-prices';
import type { SeasonalTariff, TimeOfUseTariff } from '@/lib/visit/tariff';

const all = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const tou: TimeOfUseTariff = {
  kind: 'timeOfUse',
  periods: [
    { months: [6, 7, 8, 9], days: 'weekdays', fromHour: 16, toHour: 21, energyUsdPerKwh: 0.4 },
    { months: all, days: 'all', fromHour: 23, toHour: 6, energyUsdPerKwh: 0.08 },
  ],
  otherUsdPerKwh: 0.15,
};
const at = (prices: Float64Array, month: number, hour: number) =>
  prices[(month - 1) * 24 + hour] ?? Number.NaN;

describe('outside: prices by hour worked by hand [invented tariff]', () => {
  const standard = hourlyPrices(tou, false);

  it('a summer peak on weekdays is 5/7 of its price and 2/7 of the rest', () => {
    expect(at(standard, 7, 16)).toBeCloseTo((5 * 0.4 + 2 * 0.15) / 7, 12);
    expect(at(standard, 7, 20)).toBeCloseTo((5 * 0.4 + 2 * 0.15) / 7, 12);
    expect(at(standard, 7, 15)).toBeCloseTo(0.15, 12);
    expect(at(standard, 7, 21)).toBeCloseTo(0.15, 12);
    expect(at(standard, 1, 17)).toBeCloseTo(0.15, 12);
  });

  it('a period over midnight covers both sides of it', () => {
    expect(at(standard, 1, 23)).toBeCloseTo(0.08, 12);
    expect(at(standard, 1, 0)).toBeCloseTo(0.08, 12);
    expect(at(standard, 1, 5)).toBeCloseTo(0.08, 12);
    expect(at(standard, 1, 6)).toBeCloseTo(0.15, 12);
    expect(at(standard, 1, 22)).toBeCloseTo(0.15, 12);
  });

  it('daylight-saving time moves the peak an hour earlier by the standard clock of the weather', () => {
    const saved = hourlyPrices(tou);
    expect(at(saved, 7, 15)).toBeCloseTo((5 * 0.4 + 2 * 0.15) / 7, 12);
    expect(at(saved, 7, 20)).toBeCloseTo(0.15, 12);
    expect(at(saved, 1, 23)).toBeCloseTo(0.08, 12);
    // March: 21 of 31 days are moved, so hour 5 standard is hour 6 of the clock on those
    expect(at(saved, 3, 5)).toBeCloseTo((10 * 0.08 + 21 * 0.15) / 31, 12);
  });

  it('seasons have one price all day', () => {
    const seasonal: SeasonalTariff = {
      kind: 'seasonal',
      seasons: [
        { months: [6, 7, 8], energyUsdPerKwh: 0.18 },
        { months: [1, 2, 3, 4, 5, 9, 10, 11, 12], energyUsdPerKwh: 0.12 },
      ],
    };
    const prices = hourlyPrices(seasonal);
    expect(Array.from(prices.slice(6 * 24, 7 * 24))).toEqual(new Array(24).fill(0.18));
    expect(at(prices, 9, 12)).toBe(0.12);
  });

  it('flat is flat', () => {
    expect(new Set(hourlyPrices({ kind: 'flat', energyUsdPerKwh: 0.13 }))).toEqual(new Set([0.13]));
  });
});
