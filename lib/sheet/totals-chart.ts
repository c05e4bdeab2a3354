import type { ComparedChoice } from '../finance/comparison';
import { moneyAxis } from './axis';
import { type Composing, stayWords } from './composing';
import { moneyRangeWords } from './money-words';
import { phrase } from './phrase';
import type { TotalsChart } from './sheet';

/**
 * Totals in today's money on one zero-based scale, as printed beside the bars.
 *
 * @param choices  in the table's own order
 * Check: tests/sheet/compose-sheet.test.ts
 */
export function totalsChart(c: Composing, choices: readonly ComparedChoice[]): TotalsChart {
  const stay = stayWords(c);
  const bars = choices.map((choice) => {
    const money = moneyRangeWords(c.words, choice.totalTodayUsd);
    const { id, name, kind, priced } = choice;
    // a total without its price would stand lowest of all
    if (!priced) return { id, name, kind, label: phrase(c.words, 'general.notKnown'), belowZero: false };
    return { id, name, kind, total: money.usd, label: money.likely, belowZero: money.usd.low < 0 };
  });
  const highest = Math.max(...bars.map((bar) => bar.total?.high ?? 0), 0);
  return {
    title: phrase(c.words, 'totals.title', { stay }),
    axis: moneyAxis(c.words, highest, phrase(c.words, 'totals.axis', { stay })),
    bars,
    explanation: phrase(c.words, 'totals.range'),
  };
}
