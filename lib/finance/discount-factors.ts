import { invariant } from '../math/invariant';

const SAME_RATE = 1e-9;

/**
 * Present value of 1 paid at the end of year n.
 *
 * @param discountFracPerYear  discount rate [fraction per year], > -1
 * @param years  years from the base date, >= 0; fractions allowed
 * @returns (1 + d)^-n
 * @throws invariant if the rate is <= -1 or years negative
 * Source: NIST Handbook 135, SPV; formula secondary
 * Check: tests/finance/discount-factors.test.ts
 */
export function presentValueFactor(discountFracPerYear: number, years: number): number {
  checkRate(discountFracPerYear);
  invariant(Number.isFinite(years) && years >= 0, `years ${years}`);
  return (1 + discountFracPerYear) ** -years;
}

/**
 * Present value of 1 paid at the end of each of the years 1..n.
 *
 * @param discountFracPerYear  discount rate [fraction per year], > -1; 0 gives n
 * @param years  whole number of years, >= 0
 * @returns ((1 + d)^n - 1) / (d (1 + d)^n)
 * @throws invariant if the rate is <= -1 or years is not whole
 * Source: NIST Handbook 135, UPV; formula secondary
 * Check: tests/finance/discount-factors.test.ts
 */
export function levelFactor(discountFracPerYear: number, years: number): number {
  return growingFactor(discountFracPerYear, 0, years);
}

/**
 * Present value of a yearly cost that is 1 in prices of the base date and grows from there at a fixed rate; the
 * first payment is (1 + e) at the end of year 1.
 *
 * @param discountFracPerYear  discount rate [fraction per year], > -1
 * @param growthFracPerYear    price growth [fraction per year], > -1; may exceed the discount rate
 * @param years  whole number of years, >= 0
 * @returns (1 + e)/(d - e) (1 - ((1 + e)/(1 + d))^n)
 * @throws invariant if a rate is <= -1 or years is not whole
 * Equal rates (within 1e-9): the limit n is used.
 * Source: NIST Handbook 135, UPV*; formula secondary
 * Check: tests/finance/discount-factors.test.ts
 */
export function growingFactor(discountFracPerYear: number, growthFracPerYear: number, years: number): number {
  checkRate(discountFracPerYear);
  checkRate(growthFracPerYear);
  invariant(Number.isSafeInteger(years) && years >= 0, `years ${years}`);
  const gap = discountFracPerYear - growthFracPerYear;
  if (Math.abs(gap) < SAME_RATE) return years;
  const logRatio = Math.log1p(growthFracPerYear) - Math.log1p(discountFracPerYear);
  return ((1 + growthFracPerYear) / gap) * -Math.expm1(years * logRatio);
}

/**
 * Level yearly amount worth 1 today (A/P): turns a total in today's money into an equal cost each year.
 *
 * @param discountFracPerYear  discount rate [fraction per year], > -1
 * @param years  whole number of years, >= 1
 * @returns 1 / UPV
 * @throws invariant if the rate is <= -1 or years is not a whole number >= 1
 * Source: capital recovery factor, e.g. White and others, Principles of Engineering Economic Analysis, 5th ed., read
 * Check: tests/finance/discount-factors.test.ts
 */
export function capitalRecoveryFactor(discountFracPerYear: number, years: number): number {
  invariant(years >= 1, `years ${years}`);
  return 1 / levelFactor(discountFracPerYear, years);
}

/**
 * Half a year of discounting, (1 + d)^0.5: what the present value of yearly costs is multiplied by when they fall in
 * the middle of the year, their amounts unmoved. With prices that grow at g up to the middle of the year: times
 * (1 + g)^-0.5 as well. First cost and value left are points in time and stay where they are.
 *
 * Source: scaling identity, computed
 * Check: tests/finance/discount-factors.test.ts
 */
export function midYearFactor(discountFracPerYear: number): number {
  checkRate(discountFracPerYear);
  return Math.sqrt(1 + discountFracPerYear);
}

/**
 * Nominal rate from a real one: (1 + real)(1 + inflation) - 1. Also for price growth.
 *
 * Source: NIST Handbook 135 and 10 CFR 436, relation read
 * Check: tests/finance/discount-factors.test.ts
 */
export function nominalRate(realFracPerYear: number, inflationFracPerYear: number): number {
  checkRate(realFracPerYear);
  checkRate(inflationFracPerYear);
  return (1 + realFracPerYear) * (1 + inflationFracPerYear) - 1;
}

/** Real rate from a nominal one: (1 + nominal) / (1 + inflation) - 1. Inverse of `nominalRate`. */
export function realRate(nominalFracPerYear: number, inflationFracPerYear: number): number {
  checkRate(nominalFracPerYear);
  checkRate(inflationFracPerYear);
  return (1 + nominalFracPerYear) / (1 + inflationFracPerYear) - 1;
}

/** Rate for a part of the year that compounds to the yearly one: (1 + d)^(1/parts) - 1. */
export function partYearRate(fracPerYear: number, partsPerYear: number): number {
  checkRate(fracPerYear);
  invariant(partsPerYear > 0, `parts ${partsPerYear}`);
  return Math.expm1(Math.log1p(fracPerYear) / partsPerYear);
}

function checkRate(fracPerYear: number): void {
  invariant(Number.isFinite(fracPerYear) && fracPerYear > -1, `rate ${fracPerYear}`);
}
