import { describe, expect, it } from 'vitest';
import { checkTariff as checked } from '@/lib/energy/tariff/check-tariff';
import words from '@/lib/energy/wording/en.json';
import type { Tariff, TimeOfUseTariff } from '@/lib/visit/tariff';

const all = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const period = (fromHour: number, toHour: number, days: 'weekdays' | 'weekends' | 'all' = 'all') => ({
  months: all,
  days,
  fromHour,
  toHour,
  energyUsdPerKwh: 0.1,
});
const tou = (...periods: ReturnType<typeof period>[]): TimeOfUseTariff => ({ kind: 'timeOfUse', periods });
/** The average price does not matter where every hour can be priced from the tariff. */
const checkTariff = (tariff: Tariff, averageUsdPerKwh = 0.16) => checked(tariff, averageUsdPerKwh);
const codes = (tariff: Tariff) => checkTariff(tariff).notes.map((f) => f.code);

describe('wiring: faults of a tariff', () => {
  it('none in a whole day, over midnight or split by kind of day; the tariff stays as it is', () => {
    for (const whole of [
      tou(period(0, 24)),
      tou(period(6, 22), period(22, 6)),
      tou(period(0, 24, 'weekdays'), period(0, 24, 'weekends')),
      { ...tou(period(0, 16), period(18, 24)), otherUsdPerKwh: 0.3 },
    ]) {
      expect(checkTariff(whole)).toEqual({ tariff: whole, notes: [], standsIn: false });
    }
  });

  it('a gap in the day names its hours, kind of day and months; the lowest of its prices stands in', () => {
    const dear = { ...period(18, 24), energyUsdPerKwh: 0.3 };
    const { tariff, notes, standsIn } = checkTariff(tou(dear, period(0, 16)));
    expect(tariff).toMatchObject({ otherUsdPerKwh: 0.1 });
    expect(standsIn).toBe(true);
    const where = { from: 16, to: 18, months: '1-12', priceUsdPerKwh: 0.1 };
    expect(notes).toEqual([
      { code: 'tariffHourMissing', values: { day: 'weekday', ...where } },
      { code: 'tariffHourMissing', values: { day: 'weekend', ...where } },
    ]);
  });

  it('a peak alone never prices the other hours: an average price stands in and is named', () => {
    const peak = { ...period(16, 21, 'weekdays'), energyUsdPerKwh: 0.4 };
    const { tariff, notes, standsIn } = checkTariff(tou(peak), 0.1373);
    expect(tariff).toMatchObject({ otherUsdPerKwh: 0.1373 });
    expect(standsIn).toBe(true);
    expect(notes.map(({ code }) => code)).toEqual(Array(3).fill('tariffHourAverage'));
    expect(notes[0]?.values).toMatchObject({ from: 0, to: 16, priceUsdPerKwh: 0.1373 });
  });

  it('neither do two peaks, nor one price of many hours; half of the hours at two prices do', () => {
    const other = (...periods: ReturnType<typeof period>[]) => {
      const { tariff } = checkTariff(tou(...periods), 0.15);
      return tariff.kind === 'timeOfUse' ? tariff.otherUsdPerKwh : undefined;
    };
    const at = (energyUsdPerKwh: number, from: number, to: number) => ({
      ...period(from, to),
      energyUsdPerKwh,
    });
    expect(other(at(0.4, 16, 19), at(0.35, 6, 9))).toBe(0.15);
    expect(other(at(0.09, 0, 22))).toBe(0.15);
    expect(other(at(0.4, 16, 20), at(0.2, 0, 7))).toBe(0.15);
    expect(other(at(0.4, 16, 20), at(0.2, 0, 9))).toBe(0.2);
  });

  it('overlapping periods: the first one counts', () => {
    const { tariff, notes } = checkTariff(
      tou(period(0, 17, 'weekdays'), period(16, 24, 'weekdays'), period(0, 24, 'weekends')),
    );
    expect(notes).toEqual([
      { code: 'tariffHourTwice', values: { day: 'weekday', from: 16, to: 17, months: '1-12' } },
    ]);
    expect(tariff.kind).toBe('timeOfUse');
  });

  it('months left out take the price of the month before, over the turn of the year too', () => {
    const season = (months: number[], energyUsdPerKwh: number) => ({ months, energyUsdPerKwh });
    const { tariff, notes } = checkTariff({
      kind: 'seasonal',
      seasons: [season([3, 4, 5], 0.1), season([8, 9, 10, 11], 0.2)],
    });
    expect(notes).toEqual([{ code: 'tariffMonthMissing', values: { months: '1-2, 6-7, 12' } }]);
    expect(tariff).toEqual({
      kind: 'seasonal',
      seasons: [season([3, 4, 5, 6, 7], 0.1), season([1, 2, 8, 9, 10, 11, 12], 0.2)],
    });
  });

  it('a month named twice keeps the first price', () => {
    const season = (months: number[], energyUsdPerKwh: number) => ({ months, energyUsdPerKwh });
    const { tariff, notes } = checkTariff({
      kind: 'seasonal',
      seasons: [season(all, 0.1), season([7], 0.4)],
    });
    expect(notes).toEqual([{ code: 'tariffMonthTwice', values: { months: '7' } }]);
    expect(tariff).toEqual({ kind: 'seasonal', seasons: [season(all, 0.1)] });
  });

  it('tiers are put in order and end open', () => {
    const tiered = (...ends: (number | undefined)[]): Tariff => ({
      kind: 'tiered',
      seasons: [
        {
          months: all,
          tiers: ends.map((upToKwh, i) => ({
            ...(upToKwh === undefined ? {} : { upToKwh }),
            energyUsdPerKwh: (10 + i) / 100,
          })),
        },
      ],
    });
    expect(checkTariff(tiered(500, 1_000, undefined))).toEqual({
      tariff: tiered(500, 1_000, undefined),
      notes: [],
      standsIn: false,
    });
    expect(codes(tiered(1_000, 500, undefined))).toEqual(['tariffTiersBroken']);
    expect(codes(tiered(500, 1_000))).toEqual(['tariffTiersBroken']);
    const { tariff } = checkTariff(tiered(1_000, 500, undefined));
    expect(tariff.kind === 'tiered' ? tariff.seasons[0]?.tiers : []).toEqual([
      { upToKwh: 500, energyUsdPerKwh: 0.11 },
      { upToKwh: 1_000, energyUsdPerKwh: 0.1 },
      { energyUsdPerKwh: 0.12 },
    ]);
  });

  it('words for every fault', () => {
    const named = Object.keys(words).filter((key) => key.startsWith('tariff'));
    expect(named).toEqual([
      'tariffMonthMissing',
      'tariffMonthTwice',
      'tariffTiersBroken',
      'tariffHourMissing',
      'tariffHourAverage',
      'tariffTiersOther',
      'tariffHourTwice',
    ]);
  });
});
