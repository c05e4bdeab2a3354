import type { EnergyMonth, EnergyYear } from './energy-result';

/** What a unit's energy goes to; standing by counts with the blower. */
export const YEAR_USES = ['heating', 'strip', 'cooling', 'blower', 'fuel'] as const;
export type YearUse = (typeof YEAR_USES)[number];

/** Of one use; what burns fuel has no kWh. */
export type UseAmount = { readonly usd: number; readonly kwh: number };
export type ByUse = Readonly<Record<YearUse, UseAmount>>;

export type YearByUse = {
  /** Length 12, January first. */
  readonly months: readonly ByUse[];
  readonly year: ByUse;
};

/**
 * Where the money of a year goes, month by month and in all.
 *
 * @param year  a year with its months
 * @returns dollars and kWh by use. Each month's cost of electricity is shared out by kWh: within a month a
 *   kilowatt-hour costs every use the same, also where its price hangs on the hour. The uses add up to `costUsd`
 * Check: tests/energy/year-by-use.test.ts
 */
export function yearByUse(year: EnergyYear): YearByUse {
  const fuelBtu = year.fuelBtu ?? 0;
  const usdPerBtu = fuelBtu > 0 ? (year.fuelCostUsd ?? 0) / fuelBtu : 0;
  const months = year.byMonth.map((month) => monthByUse(month, usdPerBtu));
  return { months, year: summed(months) };
}

function monthByUse(month: EnergyMonth, usdPerBtu: number): ByUse {
  const kwh: Readonly<Record<YearUse, number>> = {
    heating: month.heatingKwh,
    strip: month.stripKwh,
    cooling: month.coolingKwh,
    blower: month.blowerKwh + month.standbyKwh,
    fuel: 0,
  };
  const fuelUsd = (month.fuelBtu ?? 0) * usdPerBtu;
  const all = YEAR_USES.reduce((sum, use) => sum + kwh[use], 0);
  const usdPerKwh = all > 0 ? (month.costUsd - fuelUsd) / all : 0;
  const of = (use: YearUse): UseAmount => ({ kwh: kwh[use], usd: kwh[use] * usdPerKwh });
  return {
    heating: of('heating'),
    strip: of('strip'),
    cooling: of('cooling'),
    blower: of('blower'),
    fuel: { kwh: 0, usd: fuelUsd },
  };
}

function summed(months: readonly ByUse[]): ByUse {
  const of = (use: YearUse): UseAmount => ({
    kwh: months.reduce((sum, month) => sum + month[use].kwh, 0),
    usd: months.reduce((sum, month) => sum + month[use].usd, 0),
  });
  return {
    heating: of('heating'),
    strip: of('strip'),
    cooling: of('cooling'),
    blower: of('blower'),
    fuel: of('fuel'),
  };
}

/**
 * The use that makes one year dearer than another more than every other use does.
 *
 * @returns the use and by how much [USD]; undefined if none is dearer
 * Check: tests/energy/year-by-use.test.ts
 */
export function dearestDifference(
  dearer: ByUse,
  cheaper: ByUse,
): { readonly use: YearUse; readonly usd: number } | undefined {
  const apart = YEAR_USES.map((use) => ({ use, usd: dearer[use].usd - cheaper[use].usd }));
  const most = apart.reduce((best, one) => (one.usd > best.usd ? one : best));
  return most.usd > 0 ? most : undefined;
}

/**
 * The month that costs most.
 *
 * @returns month 1..12 and its cost [USD]
 * Check: tests/energy/year-by-use.test.ts
 */
export function dearestMonth(months: readonly ByUse[]): { readonly month: number; readonly usd: number } {
  const totals = months.map((month, i) => ({ month: i + 1, usd: monthUsd(month) }));
  return totals.reduce((best, one) => (one.usd > best.usd ? one : best), { month: 1, usd: 0 });
}

/** All uses of a month together [USD]. Check: tests/energy/year-by-use.test.ts */
export function monthUsd(month: ByUse): number {
  return YEAR_USES.reduce((sum, use) => sum + month[use].usd, 0);
}
