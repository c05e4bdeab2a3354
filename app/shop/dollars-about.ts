import { dollarWords } from '@/lib/sheet/money-words';
import { wordsOf } from '@/lib/sheet/phrase';
import { roundUsdToRange } from '@/lib/sheet/round-to-range';

/** A single estimated amount, rounded as on the papers; cents would claim more than an estimate knows. */
export function dollarsAbout(usd: number): string {
  return dollarWords(wordsOf('en'), roundUsdToRange({ low: usd, likely: usd, high: usd }).likely);
}
