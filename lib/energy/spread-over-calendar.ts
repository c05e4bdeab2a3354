import { invariant } from '../math/invariant';
import { type Climate, HOURS_OF_DAY, hoursByMonthAndBin, MONTHS } from './climate-model';

/**
 * Hours of a year's bins spread over months and hours of day as the nearest bin of a calendar city that occurs.
 *
 * @param binF      temperatures of the bins [F]
 * @param binHours  hours of the year in each
 * @param calendar  city that lends its calendar
 * @returns hours, length 12 x 24 x bins, month-major
 * Check: tests/energy/climate.test.ts
 */
export function spreadOverCalendar(
  binF: readonly number[],
  binHours: readonly number[],
  calendar: Climate,
): number[] {
  const cityBins = calendar.binF.length;
  const total = new Float64Array(cityBins);
  hoursByMonthAndBin(calendar).forEach((h, i) => {
    total[i % cityBins] = (total[i % cityBins] ?? 0) + h;
  });
  const cells = MONTHS * HOURS_OF_DAY;
  const hours = new Array<number>(cells * binF.length).fill(0);
  binF.forEach((f, bin) => {
    const from = nearestBin(calendar.binF, total, f);
    const share = (binHours[bin] ?? 0) / (total[from] ?? 1);
    for (let cell = 0; cell < cells; cell += 1) {
      hours[cell * binF.length + bin] = (calendar.hours[cell * cityBins + from] ?? 0) * share;
    }
  });
  return hours;
}

function nearestBin(cityBinF: readonly number[], total: Float64Array, f: number): number {
  let best = -1;
  cityBinF.forEach((c, i) => {
    const better = best < 0 || Math.abs(c - f) < Math.abs((cityBinF[best] ?? 0) - f);
    if ((total[i] ?? 0) > 0 && better) best = i;
  });
  invariant(best >= 0, 'calendar city has no hours');
  return best;
}
