import type { TriedRate } from '@/components/appraisal/tried-rates';
import { type Draft, listAt, textAt, valueAt, withValue } from '@/components/draft/draft-tree';

/** A rate is told apart to a hundredth of a percent. */
const DIGITS = 6;

/**
 * The draft with another likely value of a rate; its range moves along with it.
 *
 * @param likely  new likely value [fraction per year]
 * @param source  words of where it comes from
 * Check: tests/screens/assumption-draft.test.ts
 */
export function withRate(draft: Draft, rate: TriedRate, likely: number, source: string): Draft {
  const at = (value: number) => Number((value + likely - rate.likely).toFixed(DIGITS));
  const own = { key: rate.key, low: at(rate.low), likely: at(rate.likely), high: at(rate.high), source };
  const others = listAt(draft, 'assumptions').filter((a) => textAt(a, 'key') !== rate.key);
  return withValue(draft, 'assumptions', [...others, own]);
}

/** Likely value of a rate as the draft has it, else as it counts. Check: tests/screens/assumption-draft.test.ts */
export function likelyOf(draft: Draft, rate: TriedRate): number {
  const own = valueAt(
    listAt(draft, 'assumptions').find((a) => textAt(a, 'key') === rate.key),
    'likely',
  );
  return typeof own === 'number' ? own : rate.likely;
}
