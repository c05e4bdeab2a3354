/**
 * Electricity tariffs. Shapes follow the visit's (`flat` is the visit's own); fixed charges are kept apart, since
 * no choice saves them. Months are 1..12, hours of the clock 0..24, prices in USD per kWh.
 */
export type FlatTariff = {
  readonly kind: 'flat';
  readonly energyUsdPerKwh: number;
  readonly fixedUsdPerMonth?: number | undefined;
};

/** A price by season: every month belongs to one season. */
export type SeasonalTariff = {
  readonly kind: 'seasonal';
  readonly seasons: readonly { readonly months: readonly number[]; readonly energyUsdPerKwh: number }[];
  readonly fixedUsdPerMonth?: number | undefined;
};

/** Blocks of kWh per month; the last block has no upper end. */
export type TieredTariff = {
  readonly kind: 'tiered';
  readonly seasons: readonly {
    readonly months: readonly number[];
    readonly tiers: readonly {
      /** kWh of the month at which this price ends; left out = no end. */
      readonly upToKwh?: number | undefined;
      readonly energyUsdPerKwh: number;
    }[];
  }[];
  readonly fixedUsdPerMonth?: number | undefined;
};

export type DayKind = 'weekday' | 'weekend';

/** A price by month, kind of day and hour of the clock; what no period covers has the price of the rest. */
export type TimeOfUseTariff = {
  readonly kind: 'timeOfUse';
  readonly periods: readonly {
    readonly label?: string | undefined;
    readonly months: readonly number[];
    readonly days: 'weekdays' | 'weekends' | 'all';
    /** First hour, 0..23; the period runs to `toHour` (1..24), over midnight if that is not later. */
    readonly fromHour: number;
    readonly toHour: number;
    readonly energyUsdPerKwh: number;
  }[];
  /** Price of every hour without a period; left out = the periods must cover the week. */
  readonly otherUsdPerKwh?: number | undefined;
  readonly fixedUsdPerMonth?: number | undefined;
};

export type EnergyTariff = FlatTariff | SeasonalTariff | TieredTariff | TimeOfUseTariff;

export const DAY_KINDS: readonly DayKind[] = ['weekday', 'weekend'];

/** Whether a period of a time-of-use tariff covers an hour (0..23) of a kind of day in a month (1..12). */
export function periodCovers(
  period: TimeOfUseTariff['periods'][number],
  month: number,
  day: DayKind,
  hour: number,
): boolean {
  if (!period.months.includes(month)) return false;
  if (period.days === 'weekdays' && day !== 'weekday') return false;
  if (period.days === 'weekends' && day !== 'weekend') return false;
  const { fromHour, toHour } = period;
  return fromHour < toHour ? hour >= fromHour && hour < toHour : hour >= fromHour || hour < toHour;
}
