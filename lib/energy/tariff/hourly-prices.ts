import type { FlatTariff, SeasonalTariff, TimeOfUseTariff } from '../../visit/tariff';
import { HOURS_OF_DAY, MONTHS } from '../climate-model';
import calendar from '../data/tariff-calendar.json';
import { type DayKind, periodCovers } from './tariff-model';

/**
 * Mean price of each hour of day in each month, for tariffs whose price does not depend on the amount used.
 *
 * @param tariff  flat, seasonal or time-of-use; checked with `checkTariff` before
 * @param daylightSaving  the house keeps daylight-saving time (weather files do not)
 * @returns length 12 x 24, month-major, hour of day in standard time as in the weather [USD/kWh]
 * Weekdays weigh 5/7: typical years have no days of the week. In months that change to daylight-saving time the
 * price is the mean by days. An hour two periods claim has the first one's price.
 * Source: data/tariff-calendar.json
 * Check: tests/energy/tariff/hourly-prices.test.ts
 */
export function hourlyPrices(
  tariff: FlatTariff | SeasonalTariff | TimeOfUseTariff,
  daylightSaving = true,
): Float64Array {
  const prices = new Float64Array(MONTHS * HOURS_OF_DAY);
  for (let month = 1; month <= MONTHS; month += 1) {
    const saved = daylightSaving ? (calendar.daylightSavingFrac[month - 1] ?? 0) : 0;
    for (let hour = 0; hour < HOURS_OF_DAY; hour += 1) {
      const standard = priceOfHour(tariff, month, hour);
      const shifted = priceOfHour(tariff, month, (hour + 1) % HOURS_OF_DAY);
      prices[(month - 1) * HOURS_OF_DAY + hour] = (1 - saved) * standard + saved * shifted;
    }
  }
  return prices;
}

function priceOfHour(
  tariff: FlatTariff | SeasonalTariff | TimeOfUseTariff,
  month: number,
  hour: number,
): number {
  if (tariff.kind === 'flat') return tariff.energyUsdPerKwh;
  if (tariff.kind === 'seasonal') {
    return tariff.seasons.find((s) => s.months.includes(month))?.energyUsdPerKwh ?? 0;
  }
  const weekdays = calendar.weekdayFrac.value;
  return (
    weekdays * touPrice(tariff, month, 'weekday', hour) +
    (1 - weekdays) * touPrice(tariff, month, 'weekend', hour)
  );
}

function touPrice(tariff: TimeOfUseTariff, month: number, day: DayKind, hour: number): number {
  const period = tariff.periods.find((p) => periodCovers(p, month, day, hour));
  return period?.energyUsdPerKwh ?? tariff.otherUsdPerKwh ?? 0;
}
