import type { Bill } from '../../../lib/visit/bills';

/** A house's electricity as a line over the temperature, in kWh a day; and how its bills are charged. */
export type BilledHouse = {
  readonly baseKwhPerDay: number;
  readonly heatingKwhPerDayF: number;
  readonly heatingBelowF: number;
  readonly coolingKwhPerDayF: number;
  readonly coolingAboveF: number;
  readonly usdPerKwh: number;
  readonly fixedUsd: number;
};

export type BilledPeriod = { readonly readOn: string; readonly meanOutdoorF: number };

/** How far each bill lies off the line; invented, adds up to next to nothing. */
const offFrac = [0.03, -0.05, 0.02, 0.06, -0.04, -0.02, 0.05, -0.03, 0.04, -0.06, 0.01, -0.01];

/**
 * Invented bills, whole kWh and cents, one per period; each period ends on its reading and begins on the one before.
 *
 * @param first   date of the reading before the first period
 * @param periods at most twelve
 */
export function inventedBills(house: BilledHouse, first: string, periods: readonly BilledPeriod[]): Bill[] {
  return periods.map(({ readOn, meanOutdoorF }, i) => {
    const fromDate = periods[i - 1]?.readOn ?? first;
    const days = (Date.parse(readOn) - Date.parse(fromDate)) / 86_400_000;
    const perDay =
      house.baseKwhPerDay +
      house.heatingKwhPerDayF * Math.max(0, house.heatingBelowF - meanOutdoorF) +
      house.coolingKwhPerDayF * Math.max(0, meanOutdoorF - house.coolingAboveF);
    const kwh = Math.round(perDay * days * (1 + (offFrac[i] ?? 0)));
    const costUsd = Math.round((house.fixedUsd + house.usdPerKwh * kwh) * 100) / 100;
    return { fromDate, toDate: readOn, kwh, costUsd, meanOutdoorF };
  });
}
