import { invariant } from '../math/invariant';
import { exact, type Money, money, moneyRoundedUp } from './money';

/** "No interest if paid in full in n months": interest runs from the first day and is charged if any of it is left. */
export type DeferredInterest = {
  /** Smallest level payment that clears it in time; any part of a cent goes up. */
  readonly clearingPayment: Money;
  /** Owed on the last day of the promotion, before any interest is added. */
  readonly left: Money;
  /** Charged if `left` is not zero; lenders differ, so both ends of the range. 0 when it was paid in time. */
  readonly interestSimple: Money;
  readonly interestCompounded: Money;
};

/**
 * Both endings of a promotional plan with deferred interest, for a level payment.
 *
 * @param principal  bought on the plan [USD]
 * @param rateFracPerYear  rate that is charged back to the first day, a twelfth each month
 * @param promotionMonths  length of the promotion, whole number >= 1
 * @param payment  level payment at each month's end [USD]
 * @returns what is left and the interest that would be charged, without and with compounding
 * @throws invariant if a number is out of range
 * Interest as computed by a lender (daily balance, own compounding) lies within or near the range given.
 * Source: terms in 12 CFR 1026.16(h), read; arithmetic computed
 * Check: tests/finance/deferred-interest.test.ts
 */
export function deferredInterest(
  principal: Money,
  rateFracPerYear: number,
  promotionMonths: number,
  payment: Money,
): DeferredInterest {
  invariant(principal.gte(0) && payment.gte(0), `principal ${principal}, payment ${payment}`);
  invariant(rateFracPerYear >= 0 && Number.isFinite(rateFracPerYear), `rate ${rateFracPerYear}`);
  invariant(
    Number.isSafeInteger(promotionMonths) && promotionMonths >= 1,
    `promotion of ${promotionMonths} months`,
  );
  const i = exact(rateFracPerYear).div(12);
  let balance = exact(principal);
  let accrued = exact(0);
  let withInterest = exact(principal);
  for (let month = 1; month <= promotionMonths; month += 1) {
    const paid = payment.gt(balance) ? balance : payment;
    accrued = accrued.plus(balance.times(i));
    withInterest = withInterest.times(i.plus(1)).minus(paid);
    balance = balance.minus(paid);
  }
  const cleared = balance.isZero();
  return {
    clearingPayment: moneyRoundedUp(exact(principal).div(promotionMonths)),
    left: money(balance),
    interestSimple: cleared ? money(0) : money(accrued),
    interestCompounded: cleared ? money(0) : money(withInterest.minus(balance)),
  };
}
