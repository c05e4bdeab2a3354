import type { ComparedChoice, YearRow } from './comparison';
import { type ComparisonModel, capitalTodayUsd, type Outcome } from './comparison-model';
import { presentValueFactor } from './discount-factors';
import { adjustedReturn, discountedPayback, savingsToInvestment, simplePayback } from './measures';
import { usdOf } from './money';
import type { PricedChoice } from './priced-choice';
import { timeOfYear } from './year-rows';

type Measures = Pick<
  ComparedChoice,
  'simplePayback' | 'discountedPayback' | 'savingsToInvestment' | 'adjustedReturn'
>;
type Side = { readonly priced: PricedChoice; readonly outcome: Outcome };

const NONE = { kind: 'none', why: { code: 'isTheBase' } } as const;
export const measuresOfBase: Measures = {
  simplePayback: NONE,
  discountedPayback: NONE,
  savingsToInvestment: NONE,
  adjustedReturn: NONE,
};

/**
 * Measures of a choice against leaving it, with everything likely. Running costs (energy, upkeep, small repairs)
 * stand above the line of the ratio; the choice's own money, replacements after a failure and the value left below.
 * Payback counts replacements in their year and the value left at the end, so that it never contradicts the net
 * saving; a loan counts as if its worth today were paid at the start.
 *
 * Source: placement rule of NIST Handbook 135, secondary
 * Check: tests/finance/measures-against.test.ts
 */
export function measuresAgainst(model: ComparisonModel, base: Side, other: Side): Measures {
  const [b, o] = [parts(model, base.outcome), parts(model, other.outcome)];
  const runningSaved = b.runningToday.map((usd, k) => usd - (o.runningToday[k] ?? 0));
  const replacedSaved = b.replacedToday.map((usd, k) => usd - (o.replacedToday[k] ?? 0));
  const extraOwn = o.ownToday - b.ownToday;
  const extraCapital = extraOwn - sum(replacedSaved) - (o.leftToday - b.leftToday);
  const ratio = savingsToInvestment(sum(runningSaved), extraCapital);
  const saved = runningSaved.map((usd, k) => usd + (replacedSaved[k] ?? 0));
  const end = saved.length - 1;
  const savedToEnd = saved.map((usd, k) => (k === end ? usd + o.leftToday - b.leftToday : usd));
  return {
    simplePayback: simplePayback(
      usdOf(other.priced.netPrice) - usdOf(base.priced.netPrice),
      b.firstYearUsd - o.firstYearUsd,
    ),
    discountedPayback: discountedPayback(extraOwn, savedToEnd),
    savingsToInvestment: ratio,
    adjustedReturn: adjustedReturn(ratio, model.likely.values.discountFracPerYear, model.basis.stayYears),
  };
}

/** Present values by kind: the choice's own money, running costs and replacements by year, value left. */
function parts(model: ComparisonModel, outcome: Outcome) {
  const d = model.likely.values.discountFracPerYear;
  const running = (row: YearRow) => row.energyUsd + row.upkeepUsd + row.expectedRepairUsd;
  const years = outcome.rows.slice(1);
  const today = (row: YearRow) => presentValueFactor(d, timeOfYear(row.year, model.basis.timing));
  return {
    ownToday: capitalTodayUsd(outcome.flows, d),
    runningToday: years.map((row) => running(row) * today(row)),
    replacedToday: years.map((row) => row.expectedReplacementUsd * today(row)),
    leftToday: sum(years.map((row) => -row.residualUsd * presentValueFactor(d, row.year))),
    firstYearUsd: years[0] === undefined ? 0 : running(years[0]),
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}
