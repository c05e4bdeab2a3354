import type { ExpectedYear } from './expected-years';
import { type Exact, exact, type Money, money } from './money';
import type { MoneyBasis } from './money-basis';
import type { MoneyDraw } from './money-draw';
import type { CapitalFlow } from './priced-choice';

/**
 * Total in today's money by decimal arithmetic, rounded to the cent at the very end: prices, loan payments, growth
 * of prices and discounting are all decimal; only the chances of failure and the energy costs come in as floats.
 *
 * @returns money in whole cents; agrees with the float path of `yearRows` within half a cent
 * Source: same conventions as `yearRows`; second computation of every quoted total
 * Check: tests/finance/quoted-total.test.ts
 */
export function quotedTotal(
  expected: readonly ExpectedYear[],
  flows: readonly CapitalFlow[],
  netPrice: Money,
  draw: MoneyDraw,
  timing: MoneyBasis['timing'],
): Money {
  const { values } = draw;
  const yearlyDiscount = exact(values.discountFracPerYear).plus(1);
  const prices = exact(values.inflationFracPerYear).plus(1).div(yearlyDiscount);
  const energyPrices = exact(values.electricityEscalationFracPerYear).plus(1).div(yearlyDiscount);
  const premium = exact(values.outOfHoursPremiumFrac).plus(1);
  const start = (ratio: Exact) => (timing === 'midYear' ? ratio.sqrt() : ratio);
  let [atPrices, atEnergyPrices] = [start(prices), start(energyPrices)];
  let total = flowsToday(flows, yearlyDiscount);
  for (const year of expected) {
    const replaced = exact(draw.replacementUsd).times(
      premium.times(exact(year.failsFrac)).plus(exact(year.plannedFrac)),
    );
    const other = exact(values.upkeepUsdPerYear).plus(exact(year.smallRepairsUsd)).plus(replaced);
    total = total.plus(other.times(atPrices)).plus(exact(year.energyUsd).times(atEnergyPrices));
    atPrices = atPrices.times(prices);
    atEnergyPrices = atEnergyPrices.times(energyPrices);
  }
  const last = expected.at(-1);
  if (last !== undefined) {
    const left = netPrice
      .times(exact(last.boughtLeftFrac))
      .plus(exact(draw.replacementUsd).times(exact(last.laterLeftFrac)));
    const counted = left.times(exact(draw.valueLeftFrac));
    total = total.minus(counted.times(prices.pow(expected.length)));
  }
  return money(total);
}

/** Each flow discounted from its own month. */
function flowsToday(flows: readonly CapitalFlow[], yearlyDiscount: Exact): Exact {
  const last = Math.max(0, ...flows.map((flow) => flow.months));
  const monthly = last > 0 ? exact(1).div(yearlyDiscount.pow(exact(1).div(12))) : exact(1);
  const factors = [exact(1)];
  for (let month = 1; month <= last; month += 1)
    factors.push((factors[month - 1] ?? exact(1)).times(monthly));
  return flows.reduce((sum, flow) => sum.plus(flow.amount.times(factors[flow.months] ?? exact(1))), exact(0));
}
