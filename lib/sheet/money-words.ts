import type { Estimate } from '../math/estimate';
import { invariant } from '../math/invariant';
import { phrase, plainNumber, type Words } from './phrase';
import { roundUsdToRange } from './round-to-range';

/**
 * A whole amount of dollars: "$1,400", "−$300".
 *
 * @param usd  rounded amount [USD]
 * Check: tests/sheet/money-words.test.ts
 */
export function dollarWords(words: Words, usd: number): string {
  const sign = usd < 0 ? '\u2212' : '';
  return `${sign}$${plainNumber(words, Math.abs(usd), 0)}`;
}

/**
 * A quoted amount, to the cent: "$1,234.50". Works on the digits, never through a float.
 *
 * @param money  decimal text with two places, as quoted by the comparison ("1234.50")
 * @throws invariant if it is not such a text
 * Check: tests/sheet/money-words.test.ts
 */
export function quotedWords(money: string): string {
  const parts = /^(-?)(\d+)\.(\d{2})$/.exec(money);
  invariant(parts !== null, `money text ${money}`);
  const [, minus = '', whole = '', cents = ''] = parts;
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  const isZero = /^0*$/.test(whole + cents);
  return `${minus !== '' && !isZero ? '\u2212' : ''}$${grouped}.${cents}`;
}

/** True for a quoted amount of nothing. */
export function isZeroMoney(money: string): boolean {
  return /^-?0+\.00$/.test(money);
}

/** An estimate of money as printed: the likely amount, its range, and both in one sentence part. */
export type MoneyRange = {
  /** "about $1,400" */
  readonly likely: string;
  /** "$1,100 to $1,800"; left out when the range is nothing. */
  readonly range?: string;
  /** "about $1,400 (between $1,100 and $1,800)" */
  readonly full: string;
  /** "$1,100", "$1,400" and "$1,800" */
  readonly ends: Readonly<Record<'low' | 'likely' | 'high', string>>;
  /** The rounded numbers that the words say [USD]. */
  readonly usd: Estimate;
};

/**
 * An estimate of money in words, rounded to what its range supports.
 *
 * @param value  low / likely / high [USD]
 * Check: tests/sheet/money-words.test.ts
 */
export function moneyRangeWords(words: Words, value: Estimate): MoneyRange {
  const r = roundUsdToRange(value);
  const ends = {
    low: dollarWords(words, r.low),
    likely: dollarWords(words, r.likely),
    high: dollarWords(words, r.high),
  };
  const usd = { low: r.low, likely: r.likely, high: r.high };
  const likely = phrase(words, 'money.about', ends);
  if (value.low === value.high) return { likely, full: phrase(words, 'money.noRange', ends), ends, usd };
  return {
    likely,
    range: phrase(words, 'money.range', ends),
    full: phrase(words, 'money.full', ends),
    ends,
    usd,
  };
}

/**
 * A difference in money against leaving it: saving, extra cost, either, or none.
 *
 * @param saving  low / likely / high [USD]; positive = costs less
 * Check: tests/sheet/money-words.test.ts
 */
export function savingWords(words: Words, saving: Estimate): string {
  const r = roundUsdToRange(saving);
  const less = {
    low: dollarWords(words, r.low),
    likely: dollarWords(words, r.likely),
    high: dollarWords(words, r.high),
  };
  if (r.low === 0 && r.high === 0) return phrase(words, 'saving.none');
  if (r.low >= 0) return phrase(words, 'saving.less', less);
  const more = {
    low: dollarWords(words, -r.high),
    likely: dollarWords(words, -r.likely),
    high: dollarWords(words, -r.low),
  };
  if (r.high <= 0) return phrase(words, 'saving.more', more);
  return phrase(words, 'saving.either', { more: more.high, less: less.high });
}
