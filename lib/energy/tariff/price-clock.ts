import type { TimeOfUseTariff } from '../../visit/tariff';
import { HOURS_OF_DAY, MONTHS } from '../climate-model';
import { DAY_KINDS, type DayKind, periodCovers } from './tariff-model';

/** Hours of a day with one price; without a price they are a gap. */
export type PriceSpan = {
  readonly fromHour: number;
  readonly toHour: number;
  /** How long it lasts. */
  readonly hours: number;
  readonly usdPerKwh?: number;
  /** More than one period names these hours; the first one's price stands. */
  readonly contested: boolean;
};

/** Months whose weeks are priced alike. */
export type PriceClock = {
  /** Months 1..12. */
  readonly months: readonly number[];
  readonly days: readonly { readonly day: DayKind; readonly spans: readonly PriceSpan[] }[];
};

/**
 * A time-of-use tariff as a picture of the day, with its gaps left open.
 *
 * @param tariff  as typed, before `checkTariff` fills what is missing
 * @returns groups of months in order of their first month; the spans of each day run from 0 to 24 without overlap
 * Check: tests/energy/tariff/price-clock.test.ts
 */
export function priceClocks(tariff: TimeOfUseTariff): PriceClock[] {
  const groups = new Map<string, { months: number[]; days: PriceClock['days'] }>();
  for (let month = 1; month <= MONTHS; month += 1) {
    const days = DAY_KINDS.map((day) => ({ day, spans: spansOf(tariff, month, day) }));
    const key = JSON.stringify(days);
    const group = groups.get(key) ?? { months: [], days };
    group.months.push(month);
    groups.set(key, group);
  }
  return [...groups.values()];
}

function spansOf(tariff: TimeOfUseTariff, month: number, day: DayKind): PriceSpan[] {
  const spans: PriceSpan[] = [];
  for (let hour = 0; hour < HOURS_OF_DAY; hour += 1) {
    const named = tariff.periods.filter((period) => periodCovers(period, month, day, hour));
    const usdPerKwh = named[0]?.energyUsdPerKwh ?? tariff.otherUsdPerKwh;
    const contested = named.length > 1;
    const last = spans.at(-1);
    if (last !== undefined && last.usdPerKwh === usdPerKwh && last.contested === contested) {
      spans[spans.length - 1] = { ...last, toHour: hour + 1, hours: last.hours + 1 };
    } else {
      const price = usdPerKwh === undefined ? {} : { usdPerKwh };
      spans.push({ fromHour: hour, toHour: hour + 1, hours: 1, ...price, contested });
    }
  }
  return spans;
}
