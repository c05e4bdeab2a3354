import type { TimeOfUseTariff } from '../../visit/tariff';

export type DayKind = 'weekday' | 'weekend';

export const DAY_KINDS: readonly DayKind[] = ['weekday', 'weekend'];

/**
 * Whether a period of a time-of-use tariff covers an hour (0..23) of a kind of day in a month (1..12).
 *
 * Check: tests/energy/tariff/check-tariff.test.ts
 */
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
