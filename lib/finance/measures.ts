import { invariant } from '../math/invariant';
import type { Rate, Ratio, Years } from './comparison';
import { capitalRecoveryFactor, presentValueFactor } from './discount-factors';

/**
 * Present value of flows at year ends; the first is of the base date and not discounted.
 *
 * @param flowsUsd  flow of year 0, 1, 2, ... [USD]
 * @param discountFracPerYear  discount rate [fraction per year], > -1
 * @returns [USD]; 0 for no flows
 * Check: tests/finance/measures.test.ts
 */
export function presentValue(flowsUsd: readonly number[], discountFracPerYear: number): number {
  return flowsUsd.reduce((sum, flow, year) => sum + flow * presentValueFactor(discountFracPerYear, year), 0);
}

/**
 * Level yearly cost over the stay that is worth a total in today's money.
 *
 * Source: capital recovery, read (see `capitalRecoveryFactor`)
 * Check: tests/finance/measures.test.ts
 */
export function equivalentPerYear(totalTodayUsd: number, discountFracPerYear: number, years: number): number {
  return totalTodayUsd * capitalRecoveryFactor(discountFracPerYear, years);
}

/**
 * Savings-to-investment ratio: yearly items above the line, capital items (first cost, replacements, value left)
 * below it, all in present value against the base choice.
 *
 * @returns the ratio, or `none` when no extra capital is spent: then the ratio has no meaning
 * Source: 10 CFR 436.21 and NIST Handbook 135; placement rule secondary
 * Check: tests/finance/measures.test.ts
 */
export function savingsToInvestment(yearlySavingsTodayUsd: number, extraCapitalTodayUsd: number): Ratio {
  if (extraCapitalTodayUsd <= 0) return { kind: 'none', why: { code: 'costsNoExtraCapital' } };
  return { kind: 'ratio', ratio: yearlySavingsTodayUsd / extraCapitalTodayUsd };
}

/**
 * Adjusted internal rate of return: yearly return when savings are put aside at the discount rate until the end.
 *
 * @param ratio  savings-to-investment ratio
 * @param years  whole number of years, >= 1
 * @returns (1 + d) ratio^(1/n) - 1, or `none` when the ratio has no meaning or nothing is saved
 * Source: 10 CFR 436.22, read
 * Check: tests/finance/measures.test.ts
 */
export function adjustedReturn(ratio: Ratio, discountFracPerYear: number, years: number): Rate {
  invariant(years >= 1, `years ${years}`);
  if (ratio.kind === 'none') return ratio;
  if (ratio.ratio <= 0) return { kind: 'none', why: { code: 'savesNothing' } };
  return { kind: 'rate', fracPerYear: (1 + discountFracPerYear) * ratio.ratio ** (1 / years) - 1 };
}

/**
 * Extra first cost over the saving of the first year; a rough screen that sees nothing after payback.
 *
 * @returns years, or `none` when it costs no more at the start, or saves nothing in the first year
 * Source: 10 CFR 436.18(d), read
 * Check: tests/finance/measures.test.ts
 */
export function simplePayback(extraFirstCostUsd: number, firstYearSavingUsd: number): Years {
  if (extraFirstCostUsd <= 0) return { kind: 'none', why: { code: 'costsLessUpFront' } };
  if (firstYearSavingUsd <= 0) return { kind: 'none', why: { code: 'savesNothing' } };
  return { kind: 'years', years: extraFirstCostUsd / firstYearSavingUsd };
}

/**
 * First whole year from whose end on the savings so far, in today's money, have paid for the extra first cost and go
 * on doing so to the end.
 *
 * @param extraFirstCostTodayUsd  present value of the extra first cost, loan payments included
 * @param savingsTodayUsd  present value of the saving of year 1, 2, ... to the end of the stay
 * @returns whole years, or `none` when it costs no more at the start, or is not paid back at the end of the years given
 * Source: 10 CFR 436.23 and E1121; whole-year form, computed
 * Check: tests/finance/measures.test.ts
 */
export function discountedPayback(extraFirstCostTodayUsd: number, savingsTodayUsd: readonly number[]): Years {
  if (extraFirstCostTodayUsd <= 0) return { kind: 'none', why: { code: 'costsLessUpFront' } };
  let open = extraFirstCostTodayUsd;
  let lastOpen = 0;
  for (const [k, saving] of savingsTodayUsd.entries()) {
    open -= saving;
    if (open > 0) lastOpen = k + 1;
  }
  return lastOpen === savingsTodayUsd.length
    ? { kind: 'none', why: { code: 'notPaidBackInStay' } }
    : { kind: 'years', years: lastOpen + 1 };
}
