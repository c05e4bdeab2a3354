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
};

/**
 * A tariff made whole: what can be used is used, what stood in for a gap or lost a contest is said.
 *
 * @param tariff  as typed
 * @returns months without a price take that of the month before; hours without one take the mean of the others
 *   (unless the tariff prices all other hours); where two prices claim a month or an hour the first counts; tiers are
 *   put in order and the highest goes on without end. One note per fault, worded in wording/en.json
 * Check: tests/energy/tariff/check-tariff.test.ts
 */
export function checkTariff(tariff: Tariff): CheckedTariff {
  const notes: Saying[] = [];
  switch (tariff.kind) {
    case 'flat':
      return { tariff, notes };
    case 'seasonal':
      return { tariff: { ...tariff, seasons: wholeYear(tariff.seasons, notes) }, notes };
    case 'tiered':
      return { tariff: wholeTiers(tariff, notes), notes };
    case 'timeOfUse':
      return { tariff: wholeWeek(tariff, notes), notes };
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

function wholeWeek(tariff: TimeOfUseTariff, notes: Saying[]): TimeOfUseTariff {
  const twice = spansByDay((month, day, hour) => claimsAt(tariff, month, day, hour) > 1);
  notes.push(...twice.map((values) => ({ code: 'tariffHourTwice', values })));
  if (tariff.otherUsdPerKwh !== undefined) return tariff;
  const missing = spansByDay((month, day, hour) => claimsAt(tariff, month, day, hour) === 0);
  if (missing.length === 0) return tariff;
  const mean = meanUsdPerKwh(tariff);
  const price = Math.round(mean * 10_000) / 10_000;
  notes.push(...missing.map((values) => ({ code: 'tariffHourMissing', values: { ...values, price } })));
  return { ...tariff, otherUsdPerKwh: mean };
}

function claimsAt(tariff: TimeOfUseTariff, month: number, day: DayKind, hour: number): number {
  return tariff.periods.filter((p) => periodCovers(p, month, day, hour)).length;
}

/** Mean price of the hours that have one, weekdays weighing 5/7. */
function meanUsdPerKwh(tariff: TimeOfUseTariff): number {
  let usd = 0;
  let total = 0;
  for (const month of months) {
    for (const day of DAY_KINDS) {
      const weight = day === 'weekday' ? calendar.weekdayFrac.value : 1 - calendar.weekdayFrac.value;
      for (const hour of hours) {
        const period = tariff.periods.find((p) => periodCovers(p, month, day, hour));
        if (period === undefined) continue;
        usd += weight * period.energyUsdPerKwh;
        total += weight;
      }
    }
  }
  return total > 0 ? usd / total : 0;
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
