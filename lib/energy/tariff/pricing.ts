import type { Tariff } from '../../visit/tariff';
import { type Climate, HOURS_OF_DAY, MONTHS } from '../climate-model';
import defaults from '../data/load-defaults.json';
import { hourlyPrices } from './hourly-prices';
import { tieredAddedUsd } from './tiered-cost';

/** A tariff made ready for the bins of one climate. */
export type Pricing =
  | {
      readonly kind: 'byHour';
      /** Cost of a steady kilowatt: hours x price, length 12 x bins, month-major [USD/kW]. */
      readonly usdPerKwByMonthBin: Float64Array;
    }
  | {
      readonly kind: 'byAmount';
      /** Cost of a month's kWh on top of the rest of the house; month 0..11 [USD]. */
      readonly monthUsd: (month: number, kwh: number) => number;
    };

/**
 * Joins a tariff with the weather, so that a year is priced without going through its hours again.
 *
 * @param tariff   any tariff
 * @param climate  hours by month, hour of day and bin
 * @param otherKwhPerMonth  what the rest of the house uses each month, for tiered tariffs; left out = assumed
 * Check: tests/energy/tariff/pricing.test.ts
 */
export function pricingOf(tariff: Tariff, climate: Climate, otherKwhPerMonth?: number): Pricing {
  if (tariff.kind === 'tiered') {
    const other = otherKwhPerMonth ?? defaults.otherUseKwhPerMonth.value;
    return { kind: 'byAmount', monthUsd: (month, kwh) => tieredAddedUsd(tariff, month + 1, other, kwh) };
  }
  const prices = hourlyPrices(tariff);
  const bins = climate.binF.length;
  const usdPerKw = new Float64Array(MONTHS * bins);
  for (let month = 0; month < MONTHS; month += 1) {
    for (let hour = 0; hour < HOURS_OF_DAY; hour += 1) {
      const cell = month * HOURS_OF_DAY + hour;
      const price = prices[cell] ?? 0;
      for (let bin = 0; bin < bins; bin += 1) {
        const i = month * bins + bin;
        usdPerKw[i] = (usdPerKw[i] ?? 0) + (climate.hours[cell * bins + bin] ?? 0) * price;
      }
    }
  }
  return { kind: 'byHour', usdPerKwByMonthBin: usdPerKw };
}
