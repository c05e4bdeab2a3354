import type { Basis } from '../visit/basis';
import type { Saying } from '../visit/wording';

export const MONTHS = 12;
export const HOURS_OF_DAY = 24;
export const HOURS_OF_YEAR = 8760;

/** One year of outdoor temperatures as hours per bin. */
export type Climate = {
  readonly id: string;
  readonly name: string;
  readonly kind: 'city' | 'region' | 'own';
  /** Temperature each bin stands for, rising [F]. */
  readonly binF: readonly number[];
  /** Hours, length 12 x 24 x bins, month-major, then hour of day (standard time, index 0 = hour ending 01:00). */
  readonly hours: readonly number[];
  /** Mean humidity ratio of each bin, where known [lb/lb]. */
  readonly humidityRatioByBin?: readonly number[];
  readonly heatingDesignF: number;
  readonly coolingDesignF: number;
  readonly elevationFt?: number;
  /** Heating and cooling degree-days to 65 F of the source, by (daily max + min)/2, where known. */
  readonly hdd65Fday?: number;
  readonly cdd65Fday?: number;
  /** Mean temperature of each month, January first, where known [F]. */
  readonly monthMeanF?: readonly number[];
  /** `assumed` when nobody chose it. */
  readonly basis: Basis;
  readonly source: string;
  readonly status: string;
  readonly notes: readonly Saying[];
};

/**
 * Hours of each month in each temperature bin.
 *
 * @returns length 12 x bins, month-major
 * Check: tests/energy/climate.test.ts
 */
export function hoursByMonthAndBin(climate: Climate): Float64Array {
  const bins = climate.binF.length;
  const result = new Float64Array(MONTHS * bins);
  for (let month = 0; month < MONTHS; month += 1) {
    for (let hour = 0; hour < HOURS_OF_DAY; hour += 1) {
      const from = (month * HOURS_OF_DAY + hour) * bins;
      for (let bin = 0; bin < bins; bin += 1) {
        result[month * bins + bin] = (result[month * bins + bin] ?? 0) + (climate.hours[from + bin] ?? 0);
      }
    }
  }
  return result;
}

/**
 * Mean temperature of each month: the source's own, or from the bins' middles.
 *
 * @returns January first; a month without hours has the year's mean [F]
 * Check: tests/energy/climate.test.ts
 */
export function monthMeansF(climate: Climate): readonly number[] {
  if (climate.monthMeanF !== undefined) return climate.monthMeanF;
  const bins = climate.binF.length;
  const hours = hoursByMonthAndBin(climate);
  const meanOver = (from: number, to: number): number => {
    let sum = 0;
    let total = 0;
    for (let i = from; i < to; i += 1) {
      sum += (hours[i] ?? 0) * (climate.binF[i % bins] ?? 0);
      total += hours[i] ?? 0;
    }
    return total > 0 ? sum / total : Number.NaN;
  };
  const year = meanOver(0, hours.length);
  return Array.from({ length: MONTHS }, (_, m) => {
    const mean = meanOver(m * bins, (m + 1) * bins);
    return Number.isNaN(mean) ? year : mean;
  });
}
