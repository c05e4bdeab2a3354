/**
 * Spreadsheet functions under their usual names and sign rule (money out negative). The product does not need them;
 * they check its own functions from outside, and are themselves held against published answers.
 */
import { annualPercentageRate } from '@/lib/finance/annual-percentage-rate';
import { daysBetween } from '@/lib/finance/calendar';
import { levelFactor, presentValueFactor } from '@/lib/finance/discount-factors';
import { levelPayment } from '@/lib/finance/level-loan';
import { presentValue } from '@/lib/finance/measures';
import { money } from '@/lib/finance/money';

export const npv = (rate: number, values: readonly number[]) => presentValue(values, rate);

export const pv = (rate: number, nper: number, pmt: number, fv = 0) =>
  -pmt * levelFactor(rate, nper) - fv * presentValueFactor(rate, nper);

export const fv = (rate: number, nper: number, pmt: number, pv0: number) =>
  -(pv0 + pmt * levelFactor(rate, nper)) / presentValueFactor(rate, nper);

/** Payment by the product's own loan code; the rate is of one month. */
export const pmt = (rate: number, nper: number, pv0: number) =>
  -levelPayment({ principal: money(pv0), rateFracPerYear: rate * 12, termMonths: nper }).toNumber();

export function nper(rate: number, payment: number, pv0: number, fv0 = 0, begin = false): number {
  if (rate === 0) return -(fv0 + pv0) / payment;
  const z = (payment * (begin ? 1 + rate : 1)) / rate;
  return Math.log((-fv0 + z) / (pv0 + z)) / Math.log1p(rate);
}

/** Rate by the product's general equation: one advance, level payments, and an amount at the end. */
export function rate(count: number, payment: number, pv0: number, fv0: number): number | null {
  // a loan taken (money in, payments out) or a sum put aside (money out, money back): both as positive runs
  const out = [
    { count: 1, whole: 0, fraction: 0, amountUsd: -Math.min(pv0, 0) },
    { count, whole: 1, fraction: 0, amountUsd: -Math.min(payment, 0) },
    { count: 1, whole: count, fraction: 0, amountUsd: -Math.min(fv0, 0) },
  ];
  const back = [
    { count: 1, whole: 0, fraction: 0, amountUsd: Math.max(pv0, 0) },
    { count, whole: 1, fraction: 0, amountUsd: Math.max(payment, 0) },
    { count: 1, whole: count, fraction: 0, amountUsd: Math.max(fv0, 0) },
  ];
  const found = annualPercentageRate(out, back, 1);
  return found.kind === 'rate' ? found.fracPerYear : null;
}

/** Every rate above -100 % at which the flows are worth nothing, rising. */
export function internalRates(
  values: readonly number[],
  exponents: readonly number[] = values.map((_, t) => t),
): number[] {
  const worth = (r: number) => values.reduce((sum, v, t) => sum + v * (1 + r) ** -(exponents[t] ?? 0), 0);
  const roots: number[] = [];
  // grid in log(1 + r) from -98 % to +5,000 %
  const grid = Array.from({ length: 20_001 }, (_, k) => Math.expm1(-4 + (8 * k) / 20_000));
  for (let k = 1; k < grid.length; k += 1) {
    let [low, high] = [grid[k - 1] ?? 0, grid[k] ?? 0];
    if (worth(low) > 0 === worth(high) > 0) continue;
    for (let i = 0; i < 200; i += 1) {
      const mid = (low + high) / 2;
      if (worth(mid) > 0 === worth(low) > 0) low = mid;
      else high = mid;
    }
    roots.push((low + high) / 2);
  }
  return roots;
}

export function mirr(values: readonly number[], financeRate: number, reinvestRate: number): number {
  const n = values.length - 1;
  const paid = -npv(
    financeRate,
    values.map((v) => Math.min(v, 0)),
  );
  const got =
    npv(
      reinvestRate,
      values.map((v) => Math.max(v, 0)),
    ) / presentValueFactor(reinvestRate, n);
  return (got / paid) ** (1 / n) - 1;
}

export function xnpv(yearlyRate: number, dates: readonly string[], values: readonly number[]): number {
  const start = dates[0] ?? '';
  return values.reduce(
    (sum, v, k) => sum + v * presentValueFactor(yearlyRate, daysBetween(start, dates[k] ?? '') / 365),
    0,
  );
}
