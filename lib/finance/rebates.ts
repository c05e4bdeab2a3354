import type { Rebate } from '../visit/choice';
import type { Saying } from '../visit/wording';
import type { MoneyText } from './comparison';
import { type Money, money, moneyText } from './money';

/** A rebate that counts on the day of the visit. */
export type CountedRebate = {
  readonly label: string;
  readonly amountUsd: MoneyText;
  /** 0 = taken off the price on the day. */
  readonly paidAfterMonths: number;
  /** Goes against the loan when it comes. */
  readonly toPrincipal: boolean;
};

export type RebateReading = {
  readonly counted: readonly CountedRebate[];
  /** Taken off the price on the day. */
  readonly atOnceUsd: MoneyText;
  /** Everything that counts, paid at once or later, not discounted. */
  readonly totalUsd: MoneyText;
  readonly notes: readonly Saying[];
};

/**
 * Which rebates count, and how much. Nothing is assumed: a rebate whose first date has not come or whose last date
 * is past drops out and says so; together they never exceed the price (the last listed is cut first).
 *
 * @param rebates  as entered
 * @param visitDate  ISO date; the first and last dates of a rebate are inclusive
 * @param priceUsd   price before rebates
 * @returns rebates that count, their sums, and notes under `finance.rebate...`
 * ISO dates compare as text.
 * Source: rule of the house: no incentive is ever assumed
 * Check: tests/finance/rebates.test.ts
 */
export function readRebates(
  rebates: readonly Rebate[],
  visitDate: string,
  priceUsd: MoneyText,
): RebateReading {
  const notes: Saying[] = [];
  const counted: CountedRebate[] = [];
  let left = money(priceUsd);
  let atOnce = money(0);
  for (const rebate of rebates) {
    const outside = outsideDates(rebate, visitDate);
    if (outside !== undefined) {
      notes.push(outside);
      continue;
    }
    const amount = capped(rebate, left, notes);
    if (amount.isZero()) continue;
    left = left.minus(amount);
    const months = rebate.paidAfterMonths ?? 0;
    if (months === 0) atOnce = atOnce.plus(amount);
    else notes.push({ code: 'rebatePaidLater', values: { rebate: rebate.label, months } });
    if (rebate.condition !== undefined) {
      notes.push({ code: 'rebateCondition', values: { rebate: rebate.label, condition: rebate.condition } });
    }
    counted.push({
      label: rebate.label,
      amountUsd: moneyText(amount),
      paidAfterMonths: months,
      toPrincipal: rebate.toPrincipal ?? false,
    });
  }
  const total = money(priceUsd).minus(left);
  return { counted, atOnceUsd: moneyText(atOnce), totalUsd: moneyText(total), notes };
}

function outsideDates(rebate: Rebate, visitDate: string): Saying | undefined {
  if (rebate.lastDate !== undefined && visitDate > rebate.lastDate) {
    return { code: 'rebateExpired', values: { rebate: rebate.label, date: rebate.lastDate } };
  }
  if (rebate.firstDate !== undefined && visitDate < rebate.firstDate) {
    return { code: 'rebateNotStarted', values: { rebate: rebate.label, date: rebate.firstDate } };
  }
  return undefined;
}

function capped(rebate: Rebate, left: Money, notes: Saying[]): Money {
  const amount = money(rebate.amountUsd);
  if (amount.lte(left)) return amount;
  const values = { rebate: rebate.label, amountUsd: moneyText(amount), countedUsd: moneyText(left) };
  notes.push({ code: 'rebateOverPrice', values });
  return left;
}
