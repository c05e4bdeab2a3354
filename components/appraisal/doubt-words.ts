import { t } from '@/components/words/words';
import { type Estimate, Z_10_90 } from '@/lib/math/estimate';
import { phrase, plainNumber, type Words, wordsOf } from '@/lib/sheet/phrase';
import { roundToRange } from '@/lib/sheet/round-to-range';
import { unitWords } from '@/lib/visit/field-at';

/** "give or take 0.8 °F": one standard uncertainty, to two figures. */
export function doubtWords(words: Words, sd: number, unit: string): string {
  if (!(sd > 0)) return t('derived.exact');
  const percent = unit === 'frac';
  const figures = Number((percent ? sd * 100 : sd).toPrecision(2));
  const shown = percent ? '%' : unitWords(unit);
  return t('derived.doubt', { sd: plainNumber(words, figures, 4), unit: shown }).trim();
}

/** A ratio with its range in percent: "about 71 % (between 62 % and 80 %)". */
export function percentRangeWords(ratio: Estimate): string {
  const r = roundToRange({ low: ratio.low * 100, likely: ratio.likely * 100, high: ratio.high * 100 }, 1);
  return phrase(wordsOf('en'), 'percent.full', { low: r.low, likely: r.likely, high: r.high });
}

/** The 10 % and 90 % points of a ratio whose logarithm is given. */
export function rangeOfLog(ln: { readonly mean: number; readonly sd: number }): Estimate {
  return {
    low: Math.exp(ln.mean - Z_10_90 * ln.sd),
    likely: Math.exp(ln.mean),
    high: Math.exp(ln.mean + Z_10_90 * ln.sd),
  };
}
