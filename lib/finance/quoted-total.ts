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
  basis: Pick<MoneyBasis, 'timing' | 'residual'>,
): Money {
  const { values } = draw;
  const yearlyDiscount = exact(values.discountFracPerYear).plus(1);
  const prices = exact(values.inflationFracPerYear).plus(1);
  const energyPrices = exact(values.electricityEscalationFracPerYear).plus(1);
  const premium = exact(values.outOfHoursPremiumFrac).plus(1);
  const half = basis.timing === 'midYear' ? exact('0.5') : exact(0);
  let total = flowsToday(flows, yearlyDiscount);
  expected.forEach((year, k) => {
    const time = exact(k + 1).minus(half);
    const atPrices = exact(values.upkeepUsdPerYear)
      .plus(exact(year.smallRepairsUsd))
      .plus(
        exact(draw.replacementUsd).times(premium.times(exact(year.failsFrac)).plus(exact(year.plannedFrac))),
      )
      .times(prices.pow(time));
    const energy = exact(year.energyUsd).times(energyPrices.pow(time));
    total = total.plus(atPrices.plus(energy).div(yearlyDiscount.pow(time)));
  });
  const last = expected.at(-1);
  if (basis.residual === 'linear' && last !== undefined) {
    const left = netPrice
      .times(exact(last.boughtLeftFrac))
      .plus(exact(draw.replacementUsd).times(exact(last.laterLeftFrac)));
    total = total.minus(left.times(prices.div(yearlyDiscount).pow(expected.length)));
  }
  return money(total);
}

/** Each flow discounted from its own month. */
function flowsToday(flows: readonly CapitalFlow[], yearlyDiscount: Exact): Exact {
  const later = flows.some((flow) => flow.months > 0);
  const monthly = later ? yearlyDiscount.pow(exact(1).div(12)) : exact(1);
  return flows.reduce((sum, flow) => sum.plus(flow.amount.div(monthly.pow(flow.months))), exact(0));
}
