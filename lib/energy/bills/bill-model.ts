import type { Bill } from '../../visit/bills';

const DAY_MS = 86_400_000;

/**
 * Day count of an ISO date (days since 1970-01-01), or undefined if the text is no calendar date.
 *
 * Check: tests/energy/bills/check-bills.test.ts
 */
export function dayNumber(date: string): number | undefined {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  if (parts === null) return undefined;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  const ms = Date.UTC(year, month - 1, day);
  const back = new Date(ms);
  const real = back.getUTCMonth() === month - 1 && back.getUTCDate() === day;
  return real ? Math.round(ms / DAY_MS) : undefined;
}

/** ISO date of a day count. */
export function dateOfDay(day: number): string {
  return new Date(day * DAY_MS).toISOString().slice(0, 10);
}

/** Month 0..11 of a day count. */
export function monthOfDay(day: number): number {
  return new Date(day * DAY_MS).getUTCMonth();
}

/** Days of a bill's period; 0 if a date is no date. */
export function billDays(bill: Bill): number {
  return (dayNumber(bill.toDate) ?? 0) - (dayNumber(bill.fromDate) ?? 0);
}
