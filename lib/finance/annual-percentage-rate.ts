import { findRoot } from '../math/brent';
import { invariant } from '../math/invariant';
import type { Rate } from './comparison';
import credit from './data/consumer-credit.json';

/** Equal amounts, one per unit period, the first after `whole` periods plus `fraction` of one. */
export type PaymentRun = {
  readonly count: number;
  readonly whole: number;
  readonly fraction: number;
  readonly amountUsd: number;
};

/** Highest rate per unit period that is looked for: 100,000 %. */
const HIGHEST_PER_PERIOD = 1000;

/**
 * Annual percentage rate by the actuarial method: the rate at which advances and payments have equal value, with
 * simple interest over the fraction of a unit period and compound interest over whole ones, times the number of
 * unit periods in a year (multiplied, not compounded).
 *
 * @param advances  what the lender gives [USD], amounts >= 0
 * @param payments  what the customer pays [USD], amounts >= 0
 * @param unitPeriodsPerYear  12 for monthly payments
 * @returns the rate; 0 when payments equal advances; `none` when the payments never repay the advances, or when
 *   no rate up to 100,000 % per period makes them equal
 * @throws invariant if a run is malformed
 * Source: 12 CFR 1026 Appendix J (a), (b)(8) general equation, secondary; (b)(1) multiplication, read
 * Check: tests/finance/annual-percentage-rate.test.ts
 */
export function annualPercentageRate(
  advances: readonly PaymentRun[],
  payments: readonly PaymentRun[],
  unitPeriodsPerYear: number,
): Rate {
  invariant(
    Number.isFinite(unitPeriodsPerYear) && unitPeriodsPerYear > 0,
    `${unitPeriodsPerYear} periods a year`,
  );
  for (const run of [...advances, ...payments]) checkRun(run);
  const gap = (i: number): number => valueAtStart(payments, i) - valueAtStart(advances, i);
  const charge = gap(0);
  const advanced = valueAtStart(advances, 0);
  if (advanced <= 0) return { kind: 'none', why: { code: 'aprNothingAdvanced' } };
  if (Math.abs(charge) < 1e-9 * advanced) return { kind: 'rate', fracPerYear: 0 };
  if (charge < 0) return { kind: 'none', why: { code: 'aprNeverRepays' } };
  let high = 0.01;
  while (gap(high) > 0) {
    high *= 2;
    if (high > HIGHEST_PER_PERIOD) return { kind: 'none', why: { code: 'aprNotFound' } };
  }
  const found = findRoot(gap, 0, high, 1e-14);
  return found.kind === 'root'
    ? { kind: 'rate', fracPerYear: found.x * unitPeriodsPerYear }
    : { kind: 'none', why: { code: 'aprNotFound' } };
}

/**
 * Range within which a stated annual percentage rate counts as accurate.
 *
 * @param exactFracPerYear  the computed rate
 * @param irregular  several advances, or irregular periods or amounts (an odd first period, first or last payment
 *   alone does not count)
 * Source: 12 CFR 1026.22(a)(2) and (3), read
 * Check: tests/finance/annual-percentage-rate.test.ts
 */
export function aprAccuracyRange(
  exactFracPerYear: number,
  irregular: boolean,
): { readonly low: number; readonly high: number } {
  const { aprToleranceRegularFrac, aprToleranceIrregularFrac } = credit.values;
  const width = irregular ? aprToleranceIrregularFrac.value : aprToleranceRegularFrac.value;
  return { low: exactFracPerYear - width, high: exactFracPerYear + width };
}

/** Value at the start of the term, at rate i per unit period. */
function valueAtStart(runs: readonly PaymentRun[], i: number): number {
  let sum = 0;
  for (const { count, whole, fraction, amountUsd } of runs) {
    const first = amountUsd / ((1 + fraction * i) * (1 + i) ** whole);
    const annuity = i === 0 ? count : ((1 + i) * -Math.expm1(-count * Math.log1p(i))) / i;
    sum += first * annuity;
  }
  return sum;
}

function checkRun({ count, whole, fraction, amountUsd }: PaymentRun): void {
  invariant(Number.isSafeInteger(count) && count >= 1, `count ${count}`);
  invariant(Number.isSafeInteger(whole) && whole >= 0, `whole periods ${whole}`);
  invariant(fraction >= 0 && fraction < 1.04, `fraction ${fraction}`);
  invariant(Number.isFinite(amountUsd) && amountUsd >= 0, `amount ${amountUsd}`);
}
