import type { Saying } from '../../visit/wording';
import {
  DAY_KINDS,
  type DayKind,
  type EnergyTariff,
  periodCovers,
  type TimeOfUseTariff,
} from './tariff-model';

const months = Array.from({ length: 12 }, (_, i) => i + 1);
const hours = Array.from({ length: 24 }, (_, i) => i);

/**
 * What is wrong with a tariff: months left out or named twice, hours without or with two prices, tiers out of
 * order, a negative price.
 *
 * @returns one saying per fault, worded in wording/en.json; none = usable
 * Check: tests/energy/tariff/check-tariff.test.ts
 */
export function checkTariff(tariff: EnergyTariff): Saying[] {
  const faults: Saying[] = [];
  if (pricesOf(tariff).some((price) => price < 0)) faults.push({ code: 'tariffNegativePrice' });
  if (tariff.kind === 'seasonal' || tariff.kind === 'tiered') faults.push(...seasonFaults(tariff.seasons));
  if (tariff.kind === 'tiered') faults.push(...tierFaults(tariff.seasons));
  if (tariff.kind === 'timeOfUse') faults.push(...hourFaults(tariff));
  return faults;
}

function pricesOf(tariff: EnergyTariff): number[] {
  switch (tariff.kind) {
    case 'flat':
      return [tariff.energyUsdPerKwh];
    case 'seasonal':
      return tariff.seasons.map((s) => s.energyUsdPerKwh);
    case 'tiered':
      return tariff.seasons.flatMap((s) => s.tiers.map((t) => t.energyUsdPerKwh));
    case 'timeOfUse':
      return [...tariff.periods.map((p) => p.energyUsdPerKwh), tariff.otherUsdPerKwh ?? 0];
  }
}

function seasonFaults(seasons: readonly { readonly months: readonly number[] }[]): Saying[] {
  const count = (month: number): number => seasons.filter((s) => s.months.includes(month)).length;
  return months.flatMap((month): Saying[] => {
    const n = count(month);
    if (n === 1) return [];
    return [{ code: n === 0 ? 'tariffMonthMissing' : 'tariffMonthTwice', values: { month } }];
  });
}

function tierFaults(
  seasons: readonly { readonly tiers: readonly { readonly upToKwh?: number | undefined }[] }[],
): Saying[] {
  const broken = seasons.some(({ tiers }) => {
    const ends = tiers.map((t) => t.upToKwh);
    const inner = ends.slice(0, -1);
    const rising = inner.every((end, i) => end !== undefined && end > (inner[i - 1] ?? 0));
    return tiers.length === 0 || !rising || ends[ends.length - 1] !== undefined;
  });
  return broken ? [{ code: 'tariffTiersBroken' }] : [];
}

function hourFaults(tariff: TimeOfUseTariff): Saying[] {
  const faults: Saying[] = [];
  for (const month of months) {
    for (const day of DAY_KINDS) {
      const uncovered = hours.filter((hour) => countAt(tariff, month, day, hour) === 0);
      const doubled = hours.filter((hour) => countAt(tariff, month, day, hour) > 1);
      const where = (first: number): Saying['values'] => ({ month, day, hour: first });
      if (uncovered[0] !== undefined && tariff.otherUsdPerKwh === undefined) {
        faults.push({ code: 'tariffHourMissing', ...valued(where(uncovered[0])) });
      }
      if (doubled[0] !== undefined) faults.push({ code: 'tariffHourTwice', ...valued(where(doubled[0])) });
    }
  }
  return faults;
}

function valued(values: Saying['values']): Pick<Saying, 'values'> {
  return values === undefined ? {} : { values };
}

function countAt(tariff: TimeOfUseTariff, month: number, day: DayKind, hour: number): number {
  return tariff.periods.filter((p) => periodCovers(p, month, day, hour)).length;
}
