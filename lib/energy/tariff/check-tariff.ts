import type { SeasonalTariff, Tariff, TieredTariff, TimeOfUseTariff } from '../../visit/tariff';
import type { Saying } from '../../visit/wording';
import { HOURS_OF_DAY, MONTHS } from '../climate-model';
import calendar from '../data/tariff-calendar.json';
import { DAY_KINDS, type DayKind, periodCovers } from './tariff-model';

const months = Array.from({ length: MONTHS }, (_, i) => i + 1);
const hours = Array.from({ length: HOURS_OF_DAY }, (_, i) => i);

export type CheckedTariff = {
  /** Every month and hour has one price, tiers rise and end open. */
  readonly tariff: Tariff;
  readonly notes: readonly Saying[];
  /** A month or an hour has a price that nobody typed for it. */
  readonly standsIn: boolean;
};

/**
 * A tariff made whole: what can be used is used, what stood in for a gap or lost a contest is said.
 *
 * @param tariff         as typed
 * @param averageUsdPerKwh  price of electricity where nothing is known of the tariff
 * @returns months without a price take that of the month before; hours without one take the tariff's lowest price, since
 *   what is left out of a tariff by time of day is its ordinary hours, or the average price while one price alone is known or
 *   most hours have none (unless the tariff prices all other hours); where two prices claim a month or an hour the first
 *   counts; tiers are put in order and the highest goes on without end. One note per fault, worded in wording/en.json
 * Source: `leastPricedFrac` of data/tariff-calendar.json, status assumption
 * Check: tests/energy/tariff/check-tariff.test.ts
 */
export function checkTariff(tariff: Tariff, averageUsdPerKwh: number): CheckedTariff {
  const notes: Saying[] = [];
  const whole = wholeTariff(tariff, averageUsdPerKwh, notes);
  return { tariff: whole, notes, standsIn: notes.some(({ code }) => STAND_INS.includes(code)) };
}

const STAND_INS: readonly string[] = ['tariffMonthMissing', 'tariffHourMissing', 'tariffHourAverage'];

function wholeTariff(tariff: Tariff, averageUsdPerKwh: number, notes: Saying[]): Tariff {
  switch (tariff.kind) {
    case 'flat':
      return tariff;
    case 'seasonal':
      return { ...tariff, seasons: wholeYear(tariff.seasons, notes) };
    case 'tiered':
      return wholeTiers(tariff, notes);
    case 'timeOfUse':
      return wholeWeek(tariff, averageUsdPerKwh, notes);
  }
}

type Season = SeasonalTariff['seasons'][number] | TieredTariff['seasons'][number];

function wholeYear<S extends Season>(seasons: readonly S[], notes: Saying[]): S[] {
  const claims = (month: number): number => seasons.filter((s) => s.months.includes(month)).length;
  const missing = months.filter((month) => claims(month) === 0);
  const twice = months.filter((month) => claims(month) > 1);
  if (missing.length > 0)
    notes.push({ code: 'tariffMonthMissing', values: { months: spansOf(missing, MONTHS) } });
  if (twice.length > 0) notes.push({ code: 'tariffMonthTwice', values: { months: spansOf(twice, MONTHS) } });
  const own = (month: number): S | undefined => seasons.find((s) => s.months.includes(month));
  const season = (month: number): S | undefined => {
    for (let back = 0; back < MONTHS; back += 1) {
      const found = own(((month - 1 - back + MONTHS) % MONTHS) + 1);
      if (found !== undefined) return found;
    }
    return undefined;
  };
  return seasons
    .map((s) => ({ ...s, months: months.filter((month) => season(month) === s) }))
    .filter((s) => s.months.length > 0);
}

function wholeTiers(tariff: TieredTariff, notes: Saying[]): TieredTariff {
  let broken = false;
  const seasons = wholeYear(tariff.seasons, notes).map((season) => {
    const end = (upToKwh: number | undefined): number => upToKwh ?? Number.POSITIVE_INFINITY;
    const rising = [...season.tiers]
      .sort((a, b) => end(a.upToKwh) - end(b.upToKwh))
      .filter((tier, i, all) => i === 0 || end(tier.upToKwh) > end(all[i - 1]?.upToKwh));
    const tiers = rising.map((tier, i) =>
      i === rising.length - 1 ? { energyUsdPerKwh: tier.energyUsdPerKwh } : tier,
    );
    const same = tiers.every((tier, i) => tier.upToKwh === season.tiers[i]?.upToKwh);
    if (tiers.length !== season.tiers.length || !same) broken = true;
    return { ...season, tiers };
  });
  if (broken) notes.push({ code: 'tariffTiersBroken' });
  return { ...tariff, seasons };
}

function wholeWeek(tariff: TimeOfUseTariff, averageUsdPerKwh: number, notes: Saying[]): TimeOfUseTariff {
  const twice = spansByDay((month, day, hour) => claimsAt(tariff, month, day, hour) > 1);
  notes.push(...twice.map((values) => ({ code: 'tariffHourTwice', values })));
  if (tariff.otherUsdPerKwh !== undefined) return tariff;
  const missing = spansByDay((month, day, hour) => claimsAt(tariff, month, day, hour) === 0);
  if (missing.length === 0) return tariff;
  const prices = new Set(tariff.periods.map((period) => period.energyUsdPerKwh));
  const tells = prices.size > 1 && pricedFrac(tariff) >= calendar.leastPricedFrac.value;
  const other = tells ? Math.min(...prices) : averageUsdPerKwh;
  const code = tells ? 'tariffHourMissing' : 'tariffHourAverage';
  const priceUsdPerKwh = Math.round(other * 10_000) / 10_000;
  notes.push(...missing.map((values) => ({ code, values: { ...values, priceUsdPerKwh } })));
  return { ...tariff, otherUsdPerKwh: other };
}

function claimsAt(tariff: TimeOfUseTariff, month: number, day: DayKind, hour: number): number {
  return tariff.periods.filter((p) => periodCovers(p, month, day, hour)).length;
}

/** Share of the hours of a year that a period covers, weekdays weighing 5/7. */
function pricedFrac(tariff: TimeOfUseTariff): number {
  const weights = { weekday: calendar.weekdayFrac.value, weekend: 1 - calendar.weekdayFrac.value };
  let priced = 0;
  for (const month of months)
    for (const day of DAY_KINDS)
      for (const hour of hours) if (claimsAt(tariff, month, day, hour) > 0) priced += weights[day];
  return priced / (MONTHS * HOURS_OF_DAY);
}

type Where = { readonly months: string; readonly day: DayKind; readonly from: number; readonly to: number };

/** Runs of hours for which something holds, by kind of day; months with the same run are told together. */
function spansByDay(holds: (month: number, day: DayKind, hour: number) => boolean): Where[] {
  const found = new Map<string, { day: DayKind; from: number; to: number; months: number[] }>();
  for (const day of DAY_KINDS) {
    for (const month of months) {
      let from: number | undefined;
      for (let hour = 0; hour <= HOURS_OF_DAY; hour += 1) {
        const here = hour < HOURS_OF_DAY && holds(month, day, hour);
        if (here && from === undefined) from = hour;
        if (here || from === undefined) continue;
        const key = `${day} ${from} ${hour}`;
        const span = found.get(key) ?? { day, from, to: hour, months: [] };
        span.months.push(month);
        found.set(key, span);
        from = undefined;
      }
    }
  }
  return [...found.values()].map(({ months: of, ...span }) => ({ ...span, months: spansOf(of, MONTHS) }));
}

/** Rising whole numbers as runs: "1-3, 12". */
function spansOf(values: readonly number[], last: number): string {
  const runs: string[] = [];
  let from: number | undefined;
  for (let value = 1; value <= last + 1; value += 1) {
    const here = values.includes(value);
    if (here && from === undefined) from = value;
    if (here || from === undefined) continue;
    runs.push(from === value - 1 ? `${from}` : `${from}-${value - 1}`);
    from = undefined;
  }
  return runs.join(', ');
}
