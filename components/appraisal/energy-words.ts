import { t } from '@/components/words/words';
import { plainNumber, wordsOf } from '@/lib/sheet/phrase';
import { parseNumber } from '@/lib/visit/parse-number';

const words = wordsOf('en');

/** A price of electricity: "14.2¢". */
export function centWords(usdPerKwh: number): string {
  return t('energy.cents', { n: plainNumber(words, usdPerKwh * 100, 1) });
}

/** "$1,204.50" and "1,204" of what was typed; what is no number stays as it is. */
export function typedWords(typed: string, money: boolean): string {
  const parsed = parseNumber(typed);
  if (parsed.kind !== 'number') return typed;
  const format = money ? ({ style: 'currency', currency: 'USD' } as const) : { maximumFractionDigits: 0 };
  return new Intl.NumberFormat(words.tag, format).format(parsed.value);
}

/** "Jan 15, 2026" of an ISO date; other text as it is. */
export function dayWords(isoDate: string): string {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(isoDate)) return isoDate;
  const day = new Date(`${isoDate}T00:00:00Z`);
  if (Number.isNaN(day.getTime())) return isoDate;
  return new Intl.DateTimeFormat(words.tag, { dateStyle: 'medium', timeZone: 'UTC' }).format(day);
}

/** Name of a month 1..12: "Jan", "January", or its letter. */
export function monthName(month: number, length: 'short' | 'long' | 'narrow'): string {
  const day = new Date(Date.UTC(2026, month - 1, 15));
  return new Intl.DateTimeFormat(words.tag, { month: length, timeZone: 'UTC' }).format(day);
}

/** Months 1..12 as runs: "Jan to May, Oct to Dec"; all of them are "All year". */
export function monthSpanWords(months: readonly number[]): string {
  if (months.length === 12) return t('energy.allYear');
  const rising = [...months].sort((a, b) => a - b);
  const runs: number[][] = [];
  for (const month of rising) {
    const run = runs.at(-1);
    if (run !== undefined && run.at(-1) === month - 1) run.push(month);
    else runs.push([month]);
  }
  return runs.map(runWords).join(', ');
}

function runWords(run: readonly number[]): string {
  const [from = 1] = run;
  const to = run.at(-1) ?? from;
  if (from === to) return monthName(from, 'short');
  return t('energy.monthRun', { from: monthName(from, 'short'), to: monthName(to, 'short') });
}
