import { invariant } from '../math/invariant';

type CivilDate = { readonly year: number; readonly month: number; readonly day: number };

/**
 * Whole days from one ISO date to another, negative when the second comes first.
 *
 * @throws invariant if a text is no calendar date
 * Source: days from civil date in the proleptic Gregorian calendar; computed
 * Check: tests/finance/calendar.test.ts
 */
export function daysBetween(from: string, to: string): number {
  return dayNumber(civil(to)) - dayNumber(civil(from));
}

/**
 * ISO date some months before or after another; a day the month does not have becomes its last day.
 *
 * @param months whole number, may be negative
 * Check: tests/finance/calendar.test.ts
 */
export function addMonths(date: string, months: number): string {
  invariant(Number.isSafeInteger(months), `months ${months}`);
  const { year, month, day } = civil(date);
  const index = year * 12 + month - 1 + months;
  const [newYear, newMonth] = [Math.floor(index / 12), (index % 12) + 1];
  return iso({ year: newYear, month: newMonth, day: Math.min(day, daysInMonth(newYear, newMonth)) });
}

/** Calendar year of an ISO date. */
export function yearOf(date: string): number {
  return civil(date).year;
}

function civil(date: string): CivilDate {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  invariant(parts !== null, `date "${date}"`);
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  invariant(month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month), `date "${date}"`);
  return { year, month, day };
}

function iso({ year, month, day }: CivilDate): string {
  return [String(year).padStart(4, '0'), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join(
    '-',
  );
}

function isLeap(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeap(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

function dayNumber({ year, month, day }: CivilDate): number {
  const before = year - 1;
  let days = before * 365 + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400);
  for (let m = 1; m < month; m += 1) days += daysInMonth(year, m);
  return days + day;
}
