import { t } from '@/components/words/words';
import { monthRunWords } from '@/lib/sheet/month-words';
import { plainNumber, wordsOf } from '@/lib/sheet/phrase';

const words = wordsOf('en');

/** A price of electricity: "14.2¢". */
export function centWords(usdPerKwh: number): string {
  return t('energy.cents', { n: plainNumber(words, usdPerKwh * 100, 1) });
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
  const spans = runs.map(([from, ...rest]) => (rest.length === 0 ? `${from}` : `${from}-${rest.at(-1)}`));
  return monthRunWords(words, spans.join(', '));
}
