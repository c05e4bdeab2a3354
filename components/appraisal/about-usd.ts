import { dollarWords } from '@/lib/sheet/money-words';
import { wordsOf } from '@/lib/sheet/phrase';
import { roundUsdToRange } from '@/lib/sheet/round-to-range';

const words = wordsOf('en');

/** An estimated amount alone, rounded as estimates are: "$1,450". */
export function aboutUsd(usd: number): string {
  return dollarWords(words, roundUsdToRange({ low: usd, likely: usd, high: usd }).likely);
}
