import { parseNumber } from '@/lib/visit/parse-number';

const TAG = 'en-US';

/** "$1,204.50" and "1,204" of what was typed; what is no number stays as it is. Check: tests/screens/entry-words.test.ts */
export function typedWords(typed: string, money: boolean): string {
  const parsed = parseNumber(typed);
  if (parsed.kind !== 'number') return typed;
  const format = money ? ({ style: 'currency', currency: 'USD' } as const) : { maximumFractionDigits: 0 };
  return new Intl.NumberFormat(TAG, format).format(parsed.value);
}

/** Name of a month 1..12: "Jan", "January", or its letter. Check: tests/screens/entry-words.test.ts */
export function monthName(month: number, length: 'short' | 'long' | 'narrow'): string {
  const day = new Date(Date.UTC(2026, month - 1, 15));
  return new Intl.DateTimeFormat(TAG, { month: length, timeZone: 'UTC' }).format(day);
}
