import type { Financing } from '../visit/choice';
import type { Saying } from '../visit/wording';
import { annualPercentageRate, type PaymentRun } from './annual-percentage-rate';
import type { LoanQuote, MoneyText } from './comparison';
import { type LoanSchedule, levelLoan } from './level-loan';
import { exact, type Money, money, moneyText, usdOf } from './money';
import { type PeriodCount, unitPeriodsBetween } from './unit-periods';

type LevelLoan = Extract<Financing, { kind: 'levelLoan' }>;

export type QuotedLoan = {
  readonly quote: LoanQuote;
  readonly schedule: LoanSchedule;
  /** Paid on the day: down payment and fee. */
  readonly upFront: Money;
  /** Months, to the nearest whole one, by which all payments fall later than one a month from the start. */
  readonly monthsLater: number;
  readonly notes: readonly Saying[];
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

/** Parts of a plan that a lender charges for, whatever its kind. */
type LoanParts = Pick<LevelLoan, 'downPaymentUsd' | 'feeUsd' | 'dealerFeeFrac'>;

/** What a plan lends and what it costs at the start. */
export type ChargedLoan = {
  readonly cashPrice: Money;
  readonly downPayment: Money;
  readonly fee: Money;
  /** Raised price less the cash price: a finance charge. */
  readonly dealerFee: Money;
  readonly principal: Money;
};

/**
 * What is lent on a price. A dealer fee that is passed on raises the price of those who finance so far that the
 * contractor keeps the cash price: (price - down) / (1 - fee).
 *
 * @returns `undefined` when the down payment covers the price, since then there is no loan
 * Source: a price raised for those who finance is a finance charge: 12 CFR 1026.4(a), read
 * Check: tests/finance/loan-quote.test.ts
 */
export function chargedOnFinancing(cashPriceUsd: MoneyText, parts: LoanParts): ChargedLoan | undefined {
  const [cashPrice, downPayment] = [money(cashPriceUsd), money(parts.downPaymentUsd ?? 0)];
  const needed = cashPrice.minus(downPayment);
  if (needed.lte(0)) return undefined;
  const principal = money(needed.div(exact(1).minus(exact(parts.dealerFeeFrac ?? 0))));
  const fee = money(parts.feeUsd ?? 0);
  return { cashPrice, downPayment, fee, dealerFee: principal.minus(needed), principal };
}

/**
 * Quote of a level loan with everything that must be shown beside a payment.
 *
 * @param cashPriceUsd  what a customer paying cash would pay on the day, after rebates taken off at once
 * @param loan  rate, term, down payment, fee paid at the start, dealer fee passed on, date of the first payment
 * @param visitDate  ISO date the loan starts; needed only for a dated first payment
 * @returns quote, schedule and what is paid on the day; `undefined` when the down payment covers the price. The rate
 *   is `none` when a fee takes all that is lent. A first payment dated before the loan starts is left out with a note.
 * Source: 12 CFR 1026.18 and 1026.4(a), read; Appendix J
 * Check: tests/finance/loan-quote.test.ts
 */
export function quoteLoan(
  cashPriceUsd: MoneyText,
  loan: LevelLoan,
  visitDate?: string,
): QuotedLoan | undefined {
  const charged = chargedOnFinancing(cashPriceUsd, loan);
  if (charged === undefined) return undefined;
  const { rateFracPerYear, termMonths, firstPaymentDate } = loan;
  const early = firstPaymentDate !== undefined && visitDate !== undefined && firstPaymentDate <= visitDate;
  const firstPeriod =
    firstPaymentDate === undefined || visitDate === undefined || early
      ? ONE_MONTH
      : unitPeriodsBetween(visitDate, firstPaymentDate, { kind: 'months', months: 1 });
  const schedule = levelLoan({ principal: charged.principal, rateFracPerYear, termMonths, firstPeriod });
  const quoted = loanQuoteOf(charged, schedule, rateFracPerYear, firstPeriod);
  return early ? { ...quoted, notes: [{ code: 'firstPaymentTooEarly' }] } : quoted;
}

/**
 * Quote from a schedule, however it came about.
 *
 * @param firstPeriod  time to the first payment
 * Check: tests/finance/loan-quote.test.ts
 */
export function loanQuoteOf(
  charged: ChargedLoan,
  schedule: LoanSchedule,
  noteRateFracPerYear: number,
  firstPeriod: PeriodCount = ONE_MONTH,
): QuotedLoan {
  const { cashPrice, downPayment, fee, dealerFee } = charged;
  const lent = amountFinanced({ cashPrice, downPayment, prepaidFinanceCharge: fee });
  const quote: LoanQuote = {
    cashPriceUsd: moneyText(cashPrice),
    downPaymentUsd: moneyText(downPayment),
    amountFinancedUsd: moneyText(lent),
    paymentUsd: moneyText(schedule.payment),
    lastPaymentUsd: moneyText(schedule.lastPayment),
    paymentRuns: paymentRuns(schedule),
    termMonths: schedule.rows.length,
    financeChargeUsd: moneyText(schedule.totalOfPayments.minus(lent)),
    totalOfPaymentsUsd: moneyText(schedule.totalOfPayments),
    totalPaidUsd: moneyText(downPayment.plus(fee).plus(schedule.totalOfPayments)),
    ...(dealerFee.isZero() ? {} : { dealerFeeUsd: moneyText(dealerFee) }),
    noteRateFracPerYear,
    apr: aprOf(lent, schedule, firstPeriod),
  };
  const firstMonths = firstPeriod.whole + (firstPeriod.fraction >= 0.5 ? 1 : 0);
  return { quote, schedule, upFront: downPayment.plus(fee), monthsLater: firstMonths - 1, notes: [] };
}

/** Equal payments in a row put together. */
function paymentRuns(schedule: LoanSchedule): NonNullable<LoanQuote['paymentRuns']> {
  const runs: { count: number; paymentUsd: MoneyText }[] = [];
  for (const row of schedule.rows) {
    const paymentUsd = moneyText(row.payment);
    const last = runs.at(-1);
    if (last?.paymentUsd === paymentUsd) last.count += 1;
    else runs.push({ count: 1, paymentUsd });
  }
  return runs;
}

function aprOf(lent: Money, schedule: LoanSchedule, firstPeriod: PeriodCount): LoanQuote['apr'] {
  if (lent.lte(0)) return { kind: 'none', why: { code: 'aprNothingAdvanced' } };
  const { whole: start, fraction } = firstPeriod;
  const payments: PaymentRun[] = [];
  for (const row of schedule.rows) {
    const amountUsd = usdOf(row.payment);
    const run = payments.at(-1);
    if (run !== undefined && run.amountUsd === amountUsd)
      payments.splice(-1, 1, { ...run, count: run.count + 1 });
    else payments.push({ count: 1, whole: start + row.month - 1, fraction, amountUsd });
  }
  return annualPercentageRate([{ count: 1, whole: 0, fraction: 0, amountUsd: usdOf(lent) }], payments, 12);
}

const ONE_MONTH: PeriodCount = { whole: 1, fraction: 0 };

/** What is still owed after some months, for a stay that ends before the loan. */
export function balanceAfter(schedule: LoanSchedule, months: number): Money {
  return schedule.rows[months - 1]?.balance ?? exact(0);
}
