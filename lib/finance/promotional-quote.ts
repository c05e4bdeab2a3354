import type { Financing } from '../visit/choice';
import type { Saying } from '../visit/wording';
import type { MoneyText } from './comparison';
import { deferredInterest } from './deferred-interest';
import { type LoanRow, levelLoan, scheduleOf } from './level-loan';
import { chargedOnFinancing, loanQuoteOf, type QuotedLoan } from './loan-quote';
import { type Money, money, moneyRoundedUp, moneyText } from './money';

type Promotional = Extract<Financing, { kind: 'promotional' }>;

/** Both endings of a promotion without interest. */
export type PromotionalQuote = {
  /** Months without interest that count. */
  readonly promotionMonths: number;
  /** Level payment that clears it in time. */
  readonly clearingPaymentUsd: MoneyText;
  readonly paidInTime: QuotedLoan;
  readonly notPaidInTime: QuotedLoan;
  /** Charged back to the first day when it is not paid in time; lenders differ between these two. */
  readonly interestSimpleUsd: MoneyText;
  readonly interestCompoundedUsd: MoneyText;
  readonly notes: readonly Saying[];
};

/**
 * Quote of a plan with deferred interest, for both endings. Paid in time: the level payment that clears it within the
 * promotion. Not paid in time: the payment named (else the debt spread over the whole term) during the promotion, then
 * what is left with the interest of all those months, compounded, in level payments to the end of the term.
 *
 * @param cashPriceUsd  what a customer paying cash would pay on the day
 * @param plan  promotion, rate, term; a promotion longer than the term is cut to it and said so
 * @returns both endings, or `undefined` when the down payment covers the price
 * Source: terms in 12 CFR 1026.16(h), read; arithmetic computed
 * Check: tests/finance/promotional-quote.test.ts
 */
export function quotePromotional(cashPriceUsd: MoneyText, plan: Promotional): PromotionalQuote | undefined {
  const charged = chargedOnFinancing(cashPriceUsd, plan);
  if (charged === undefined) return undefined;
  const { principal } = charged;
  const notes: Saying[] = [];
  const promotionMonths = Math.min(plan.promotionMonths, plan.termMonths);
  if (promotionMonths < plan.promotionMonths) {
    const values = { promotionMonths: plan.promotionMonths, termMonths: plan.termMonths };
    notes.push({ code: 'promotionOutlastsPlan', values });
  }
  const rate = plan.rateFracPerYear;
  const clearing = moneyRoundedUp(principal.div(promotionMonths));
  const payment =
    plan.monthlyPaymentUsd === undefined
      ? moneyRoundedUp(principal.div(plan.termMonths))
      : money(plan.monthlyPaymentUsd);
  const ending = deferredInterest(principal, rate, promotionMonths, payment);
  if (ending.left.isZero()) notes.push({ code: 'promotionClearedAnyway' });
  return {
    promotionMonths,
    clearingPaymentUsd: moneyText(clearing),
    paidInTime: loanQuoteOf(charged, scheduleOf(levelRows(principal, clearing, promotionMonths)), 0),
    notPaidInTime: loanQuoteOf(
      charged,
      scheduleOf(missedRows(plan, principal, payment, promotionMonths)),
      rate,
    ),
    interestSimpleUsd: moneyText(ending.interestSimple),
    interestCompoundedUsd: moneyText(ending.interestCompounded),
    notes,
  };
}

/** Payments without interest until nothing is left; the last one takes the rest. */
function levelRows(principal: Money, payment: Money, months: number): LoanRow[] {
  const rows: LoanRow[] = [];
  let balance = principal;
  for (let month = 1; month <= months && balance.gt(0); month += 1) {
    const paid = payment.gt(balance) ? balance : payment;
    balance = balance.minus(paid);
    rows.push({ month, payment: paid, interest: money(0), principal: paid, balance });
  }
  return rows;
}

function missedRows(plan: Promotional, principal: Money, payment: Money, promotionMonths: number): LoanRow[] {
  const before = levelRows(principal, payment, promotionMonths);
  const { left, interestCompounded } = deferredInterest(
    principal,
    plan.rateFracPerYear,
    promotionMonths,
    payment,
  );
  if (left.isZero()) return before;
  const owed = left.plus(interestCompounded);
  const last = before.at(-1);
  const charged =
    last === undefined
      ? []
      : [
          {
            ...last,
            interest: interestCompounded,
            principal: last.payment.minus(interestCompounded),
            balance: owed,
          },
        ];
  const after = levelLoan({
    principal: owed,
    rateFracPerYear: plan.rateFracPerYear,
    termMonths: Math.max(1, plan.termMonths - promotionMonths),
  });
  return [
    ...before.slice(0, -1),
    ...charged,
    ...after.rows.map((row) => ({ ...row, month: row.month + promotionMonths })),
  ];
}
