import { describe, expect, it } from 'vitest';
import { checkTariff } from '@/lib/energy/tariff/check-tariff';
import type { EnergyTariff, TimeOfUseTariff } from '@/lib/energy/tariff/tariff-model';
import words from '@/lib/energy/wording/en.json';

const all = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const period = (fromHour: number, toHour: number, days: 'weekdays' | 'weekends' | 'all' = 'all') => ({
  months: all,
  days,
  fromHour,
  toHour,
  energyUsdPerKwh: 0.1,
});
const tou = (...periods: ReturnType<typeof period>[]): TimeOfUseTariff => ({ kind: 'timeOfUse', periods });
const codes = (tariff: EnergyTariff) => [...new Set(checkTariff(tariff).map((f) => f.code))];

describe('wiring: faults of a tariff', () => {
  it('none in a whole day, over midnight or split by kind of day', () => {
    expect(checkTariff(tou(period(0, 24)))).toEqual([]);
    expect(checkTariff(tou(period(6, 22), period(22, 6)))).toEqual([]);
    expect(checkTariff(tou(period(0, 24, 'weekdays'), period(0, 24, 'weekends')))).toEqual([]);
  });

  it('a gap names month, kind of day and first hour; a price for the rest closes it', () => {
    const gap = tou(period(0, 16), period(18, 24));
    expect(checkTariff(gap)[0]).toEqual({
      code: 'tariffHourMissing',
      values: { month: 1, day: 'weekday', hour: 16 },
    });
    expect(checkTariff(gap)).toHaveLength(24);
    expect(checkTariff({ ...gap, otherUsdPerKwh: 0.1 })).toEqual([]);
  });

  it('overlapping periods', () => {
    expect(codes(tou(period(0, 17), period(16, 24)))).toEqual(['tariffHourTwice']);
  });

  it('months left out or named twice', () => {
    const season = (months: number[]) => ({ months, energyUsdPerKwh: 0.1 });
    expect(codes({ kind: 'seasonal', seasons: [season([1, 2, 3])] })).toEqual(['tariffMonthMissing']);
    expect(codes({ kind: 'seasonal', seasons: [season(all), season([7])] })).toEqual(['tariffMonthTwice']);
    expect(checkTariff({ kind: 'seasonal', seasons: [season(all)] })).toEqual([]);
  });

  it('tiers must rise and end open', () => {
    const tiered = (...ends: (number | undefined)[]): EnergyTariff => ({
      kind: 'tiered',
      seasons: [{ months: all, tiers: ends.map((upToKwh) => ({ upToKwh, energyUsdPerKwh: 0.1 })) }],
    });
    expect(checkTariff(tiered(500, 1_000, undefined))).toEqual([]);
    expect(codes(tiered(1_000, 500, undefined))).toEqual(['tariffTiersBroken']);
    expect(codes(tiered(500, 1_000))).toEqual(['tariffTiersBroken']);
    expect(codes(tiered())).toEqual(['tariffTiersBroken']);
  });

  it('a negative price, and words for every fault', () => {
    expect(codes({ kind: 'flat', energyUsdPerKwh: -0.1 })).toEqual(['tariffNegativePrice']);
    const named = Object.keys(words).filter((key) => key.startsWith('tariff'));
    expect(named).toEqual([
      'tariffNegativePrice',
      'tariffMonthMissing',
      'tariffMonthTwice',
      'tariffTiersBroken',
      'tariffHourMissing',
      'tariffHourTwice',
    ]);
  });
});
