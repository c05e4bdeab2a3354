import type { Estimate } from '../math/estimate';
import { invariant } from '../math/invariant';
import { phrase, plainNumber, type Words } from './phrase';
import { endAboveZeroUsd, roundUsdToRange } from './round-to-range';

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
 * The likely amount is told where the range keeps to one side of zero and does not swallow it; an end that is clearly
 * above nothing is never printed as $0.
 *
 * @param saving  low / likely / high [USD]; positive = costs less
 * Check: tests/sheet/money-words.test.ts
 */
export function savingWords(words: Words, saving: Estimate): string {
  const r = roundUsdToRange(saving);
  if (r.low === 0 && r.high === 0) return phrase(words, 'saving.none');
  if (r.low >= 0) return oneSided(words, saving, r, 'less');
  if (r.high <= 0) return oneSided(words, negated(saving), negated(r), 'more');
  return phrase(words, 'saving.either', {
    more: dollarWords(words, -r.low),
    less: dollarWords(words, r.high),
  });
}

/** All of it on one side of zero; `value` as computed, `r` rounded [USD]. */
function oneSided(words: Words, value: Estimate, r: Estimate, side: 'less' | 'more'): string {
  const low = r.low > 0 ? r.low : endAboveZeroUsd(value.low);
  const ends = {
    low: dollarWords(words, low),
    likely: dollarWords(words, r.likely),
    high: dollarWords(words, r.high),
  };
  return phrase(words, r.likely > low ? `saving.${side}` : `saving.${side}Range`, ends);
}

function negated({ low, likely, high }: Estimate): Estimate {
  return { low: 0 - high, likely: 0 - likely, high: 0 - low };
}
