import type { Financing } from '../visit/choice';
import { annualPercentageRate, type PaymentRun } from './annual-percentage-rate';
import type { LoanQuote, MoneyText } from './comparison';
import { type LoanSchedule, levelLoan } from './level-loan';
import { exact, type Money, money, moneyText, usdOf } from './money';

type LevelLoan = Extract<Financing, { kind: 'levelLoan' }>;

export type QuotedLoan = {
  readonly quote: LoanQuote;
  readonly schedule: LoanSchedule;
  /** Paid on the day: down payment and fee. */
  readonly upFront: Money;
};

/**
 * What counts as lent: the cash price less the down payment, plus what else is financed without being a finance
 * charge, less finance charges paid at the start (whether kept back by the lender or paid apart).
 *
 * Source: 12 CFR 1026.18(b), read; fee paid apart counts as well: comment 18(b)(3)-1, memory
 * Check: tests/finance/loan-quote.test.ts
 */
export function amountFinanced(parts: {
  readonly cashPrice: Money;
  readonly downPayment: Money;
  readonly otherFinanced?: Money;
  readonly prepaidFinanceCharge?: Money;
}): Money {
  return parts.cashPrice
    .minus(parts.downPayment)
    .plus(parts.otherFinanced ?? 0)
    .minus(parts.prepaidFinanceCharge ?? 0);
}

/**
 * Quote of a level loan with everything that must be shown beside a payment.
 *
 * @param cashPriceUsd  what a customer paying cash would pay on the day, after rebates taken off at once
 * @param loan  rate, term, down payment, fee paid at the start
 * @param financedPriceUsd  price charged to those who finance, when it is higher (a dealer fee passed on): the
 *   difference is a finance charge
 * @returns quote, schedule and what is paid on the day; `undefined` when the down payment covers the price, since
 *   then there is no loan. The rate is `none` when a fee takes all that is lent.
 * Source: 12 CFR 1026.18 and 1026.4(a), read; Appendix J
 * Check: tests/finance/loan-quote.test.ts
 */
export function quoteLoan(
  cashPriceUsd: MoneyText,
  loan: LevelLoan,
  financedPriceUsd: MoneyText = cashPriceUsd,
): QuotedLoan | undefined {
  const [cashPrice, down, fee] = [
    money(cashPriceUsd),
    money(loan.downPaymentUsd ?? 0),
    money(loan.feeUsd ?? 0),
  ];
  const principal = money(financedPriceUsd).minus(down);
  if (principal.lte(0)) return undefined;
  const { rateFracPerYear, termMonths } = loan;
  const schedule = levelLoan({ principal, rateFracPerYear, termMonths });
  const lent = amountFinanced({ cashPrice, downPayment: down, prepaidFinanceCharge: fee });
  const quote: LoanQuote = {
    cashPriceUsd: moneyText(cashPrice),
    downPaymentUsd: moneyText(down),
    amountFinancedUsd: moneyText(lent),
    paymentUsd: moneyText(schedule.payment),
    lastPaymentUsd: moneyText(schedule.lastPayment),
    termMonths,
    financeChargeUsd: moneyText(schedule.totalOfPayments.minus(lent)),
    totalOfPaymentsUsd: moneyText(schedule.totalOfPayments),
    totalPaidUsd: moneyText(down.plus(fee).plus(schedule.totalOfPayments)),
    noteRateFracPerYear: rateFracPerYear,
    apr: aprOf(lent, schedule),
  };
  return { quote, schedule, upFront: down.plus(fee) };
}

function aprOf(lent: Money, schedule: LoanSchedule): LoanQuote['apr'] {
  if (lent.lte(0)) return { kind: 'none', why: { code: 'aprNothingAdvanced' } };
  const payments: PaymentRun[] = [];
  for (const row of schedule.rows) {
    const amountUsd = usdOf(row.payment);
    const run = payments.at(-1);
    if (run !== undefined && run.amountUsd === amountUsd)
      payments.splice(-1, 1, { ...run, count: run.count + 1 });
    else payments.push({ count: 1, whole: row.month, fraction: 0, amountUsd });
  }
  return annualPercentageRate([{ count: 1, whole: 0, fraction: 0, amountUsd: usdOf(lent) }], payments, 12);
}

/** What is still owed after some months, for a stay that ends before the loan. */
export function balanceAfter(schedule: LoanSchedule, months: number): Money {
  return schedule.rows[months - 1]?.balance ?? exact(0);
}
