import type { YearRow } from './comparison';
import { presentValueFactor } from './discount-factors';
import type { ExpectedYear } from './expected-years';
import type { MoneyBasis } from './money-basis';
import type { MoneyDraw } from './money-draw';
import type { CapitalFlow } from './priced-choice';

/** When the money of year t falls, in years from the visit. */
export function timeOfYear(year: number, timing: MoneyBasis['timing']): number {
  return timing === 'midYear' ? year - 0.5 : year;
}

/**
 * Cash of a choice year by year, in nominal dollars; costs are positive, money back is negative. Conventions, for
 * every choice alike:
 * - base date = day of the visit = year 0;
 * - energy, upkeep, small repairs and replacements after a failure fall at the end of their year (or in its middle,
 *   if so chosen), at prices grown up to then: today's price times (1 + growth)^time;
 * - price, loan payments and rebates count on their own day, discounted by (1 + d)^(-months / 12);
 * - what is left of a unit bought in the stay counts at its end, on a straight line over its life and on the price
 *   level of the end, times the share of it that the draw lets count;
 * - everything is discounted at one nominal yearly rate.
 *
 * @param expected   what each year of the stay brings on average
 * @param flows      price, loan and rebate flows of the choice over the same stay
 * @param netPriceUsd  price of the unit bought with the choice, less rebates [USD]
 * @returns row 0 (the day) to row n; the last cumulative value is the total in today's money
 * Check: tests/finance/year-rows.test.ts
 */
export function yearRows(
  expected: readonly ExpectedYear[],
  flows: readonly CapitalFlow[],
  netPriceUsd: number,
  draw: MoneyDraw,
  timing: MoneyBasis['timing'],
): YearRow[] {
  const { values } = draw;
  const years = expected.length;
  const d = values.discountFracPerYear;
  const capital = capitalByYear(flows, years, d);
  const rows: YearRow[] = [];
  let cumulative = 0;
  for (let year = 0; year <= years; year += 1) {
    const own = capital[year] ?? NOTHING;
    const yearly = year === 0 ? NO_YEAR : yearlyCosts(expected, year, draw, timing);
    const left = year === years ? valueLeftUsd(expected, netPriceUsd, draw) * draw.valueLeftFrac : 0;
    const running =
      yearly.energyUsd + yearly.upkeepUsd + yearly.expectedRepairUsd + yearly.expectedReplacementUsd;
    const presentValueUsd =
      own.presentValueUsd +
      running * presentValueFactor(d, year === 0 ? 0 : timeOfYear(year, timing)) -
      left * presentValueFactor(d, year);
    cumulative += presentValueUsd;
    rows.push({
      year,
      upFrontUsd: own.upFrontUsd,
      loanUsd: own.loanUsd,
      ...yearly,
      residualUsd: left === 0 ? 0 : -left,
      totalUsd: own.upFrontUsd + own.loanUsd + running - left,
      presentValueUsd,
      cumulativePresentValueUsd: cumulative,
      failedByFrac: expected[year - 1]?.failedByFrac ?? 0,
    });
  }
  return rows;
}

type OwnFlows = { upFrontUsd: number; loanUsd: number; presentValueUsd: number };
const NOTHING: OwnFlows = { upFrontUsd: 0, loanUsd: 0, presentValueUsd: 0 };
const NO_YEAR = { energyUsd: 0, upkeepUsd: 0, expectedRepairUsd: 0, expectedReplacementUsd: 0 };

/** Flows in the year they fall in; one after the end of the stay stands in the last year, discounted from its own day. */
function capitalByYear(flows: readonly CapitalFlow[], years: number, d: number): OwnFlows[] {
  const sums = Array.from({ length: years + 1 }, () => ({ ...NOTHING }));
  for (const { kind, months, usd } of flows) {
    const sum = sums[Math.min(years, Math.ceil(months / 12))];
    if (sum === undefined) continue;
    if (kind === 'loan') sum.loanUsd += usd;
    else sum.upFrontUsd += usd;
    sum.presentValueUsd += usd * presentValueFactor(d, months / 12);
  }
  return sums;
}

function yearlyCosts(
  expected: readonly ExpectedYear[],
  year: number,
  draw: MoneyDraw,
  timing: MoneyBasis['timing'],
) {
  const { values } = draw;
  const time = timeOfYear(year, timing);
  const prices = (1 + values.inflationFracPerYear) ** time;
  const own = expected[year - 1];
  return {
    energyUsd: (own?.energyUsd ?? 0) * (1 + values.electricityEscalationFracPerYear) ** time,
    upkeepUsd: values.upkeepUsdPerYear * prices,
    expectedRepairUsd: (own?.smallRepairsUsd ?? 0) * prices,
    expectedReplacementUsd:
      ((own?.failsFrac ?? 0) * (1 + values.outOfHoursPremiumFrac) + (own?.plannedFrac ?? 0)) *
      draw.replacementUsd *
      prices,
  };
}

/** Expected value left at the end of the last year on a straight line, in dollars of then. */
export function valueLeftUsd(
  expected: readonly ExpectedYear[],
  netPriceUsd: number,
  draw: MoneyDraw,
): number {
  const last = expected.at(-1);
  const today = (last?.boughtLeftFrac ?? 0) * netPriceUsd + (last?.laterLeftFrac ?? 0) * draw.replacementUsd;
  return today * (1 + draw.values.inflationFracPerYear) ** expected.length;
}

/**
 * The same rows in constant dollars of the day of the visit. Discounted at the real rate they give the same total.
 *
 * @param rows    nominal rows
 * @param inflationFracPerYear  general price growth
 * Flows inside a year are deflated to the row's own time (year end or middle); `presentValueUsd` is unchanged.
 * Check: tests/finance/year-rows.test.ts
 */
export function inConstantDollars(
  rows: readonly YearRow[],
  inflationFracPerYear: number,
  timing: MoneyBasis['timing'],
): YearRow[] {
  return rows.map((row) => {
    const yearly = 1 / (1 + inflationFracPerYear) ** (row.year === 0 ? 0 : timeOfYear(row.year, timing));
    const end = 1 / (1 + inflationFracPerYear) ** row.year;
    const parts = {
      upFrontUsd: row.upFrontUsd * end,
      loanUsd: row.loanUsd * end,
      energyUsd: row.energyUsd * yearly,
      upkeepUsd: row.upkeepUsd * yearly,
      expectedRepairUsd: row.expectedRepairUsd * yearly,
      expectedReplacementUsd: row.expectedReplacementUsd * yearly,
      residualUsd: row.residualUsd * end,
    };
    return { ...row, ...parts, totalUsd: Object.values(parts).reduce((a, b) => a + b, 0) };
  });
}
