import { invariant } from '../math/invariant';
import type { Saying } from '../visit/wording';
import { type Exact, exact, type Money, money } from './money';
import type { PeriodCount } from './unit-periods';

export type LoanRow = {
  readonly month: number;
  readonly payment: Money;
  readonly interest: Money;
  readonly principal: Money;
  readonly balance: Money;
};

/** A loan month by month, in whole cents. */
export type LoanSchedule = {
  readonly kind: 'schedule';
  readonly payment: Money;
  /** Clears what rounding has left over. */
  readonly lastPayment: Money;
  readonly totalOfPayments: Money;
  readonly totalInterest: Money;
  readonly rows: readonly LoanRow[];
};

export type LoanTerms = {
  readonly principal: Money;
  /** Nominal, a twelfth of it each month. */
  readonly rateFracPerYear: number;
  readonly termMonths: number;
  /** Time to the first payment; left out = one month. */
  readonly firstPeriod?: PeriodCount;
};

const ONE_MONTH: PeriodCount = { whole: 1, fraction: 0 };

/**
 * Level monthly payment that repays a loan, not rounded: P (1 + f i)(1 + i)^(t-1) i / (1 - (1 + i)^-n), where the
 * first payment falls t whole months and a fraction f after the start.
 *
 * @param terms principal [USD], rate >= 0, term >= 1 month
 * @returns payment [USD]; principal / term when the rate is 0
 * @throws invariant if a term is out of range
 * Source: annuity formula; odd days as in 12 CFR 1026 Appendix J and MathWorks payodd, example read
 * Check: tests/finance/level-loan.test.ts
 */
export function levelPayment(terms: LoanTerms): Exact {
  const { principal, rateFracPerYear, termMonths, firstPeriod = ONE_MONTH } = terms;
  checkTerms(terms);
  if (rateFracPerYear === 0) return principal.div(termMonths);
  const i = exact(rateFracPerYear).div(12);
  const growth = i.plus(1);
  const start = principal
    .times(i.times(exact(firstPeriod.fraction)).plus(1))
    .times(growth.pow(firstPeriod.whole - 1));
  return start.times(i).div(exact(1).minus(growth.pow(-termMonths)));
}

/**
 * Level-payment loan as it is kept: payment rounded to cents, each month's interest rounded to cents, the last
 * payment takes what is left, so that the payments add up exactly to principal plus interest.
 *
 * Source: practice of lenders' schedules; numbers checked against two independent computations
 * Check: tests/finance/level-loan.test.ts
 */
export function levelLoan(terms: LoanTerms): LoanSchedule {
  const schedule = loanWithPayment(terms, money(levelPayment(terms)));
  invariant(schedule.kind === 'schedule', 'a level payment always repays');
  return schedule;
}

/**
 * Loan repaid by a payment somebody named: the last payment takes what is left. A payment smaller than the month's
 * interest is refused, since the debt would grow; in a long first period it may grow once.
 *
 * @param terms    principal [USD], rate >= 0, term >= 1 month
 * @param payment  monthly payment in whole cents
 * @returns the schedule, or `none` when the debt would grow
 * A payment that clears the loan early is cut to what is owed; later rows are 0.00.
 * Check: tests/finance/level-loan.test.ts
 */
export function loanWithPayment(
  terms: LoanTerms,
  payment: Money,
): LoanSchedule | { readonly kind: 'none'; readonly why: Saying } {
  checkTerms(terms);
  const rows: LoanRow[] = [];
  let balance = terms.principal;
  for (let month = 1; month <= terms.termMonths; month += 1) {
    const interest = money(balance.times(interestFactor(terms, month)));
    const owed = balance.plus(interest);
    const last = month === terms.termMonths;
    const longFirst = month === 1 && terms.firstPeriod !== undefined;
    if (!last && !longFirst && payment.lt(interest))
      return { kind: 'none', why: { code: 'loanDebtGrows', values: { month } } };
    const paid = last || payment.gt(owed) ? owed : payment;
    balance = owed.minus(paid);
    rows.push({ month, payment: paid, interest, principal: paid.minus(interest), balance });
  }
  return scheduleOf(rows);
}

/**
 * A schedule from its rows: first and last payment, and the sums.
 *
 * @param rows  month by month; none gives 0.00 throughout
 * Check: tests/finance/promotional-quote.test.ts
 */
export function scheduleOf(rows: readonly LoanRow[]): LoanSchedule {
  const add = (pick: (row: LoanRow) => Money) => rows.reduce((sum, row) => sum.plus(pick(row)), money(0));
  return {
    kind: 'schedule',
    payment: rows[0]?.payment ?? money(0),
    lastPayment: rows.at(-1)?.payment ?? money(0),
    totalOfPayments: add((row) => row.payment),
    totalInterest: add((row) => row.interest),
    rows,
  };
}

/**
 * A schedule with sums put against the debt after the payment of some months: the payment stays, the loan ends
 * earlier, and what a sum exceeds the debt by is lost to it.
 *
 * @param schedule  as agreed
 * @param lumps     sum by month
 * @param rateFracPerYear  of the loan
 * @returns rows with what is paid each month; later rows are 0.00 once nothing is owed
 * Check: tests/finance/level-loan.test.ts
 */
export function loanWithLumps(
  schedule: LoanSchedule,
  lumps: ReadonlyMap<number, Money>,
  rateFracPerYear: number,
): LoanSchedule {
  const i = exact(rateFracPerYear).div(12);
  const rows: LoanRow[] = [];
  let balance: Money | undefined;
  for (const row of schedule.rows) {
    const interest = balance === undefined ? row.interest : money(balance.times(i));
    const owed = balance === undefined ? row.balance.plus(row.payment) : balance.plus(interest);
    const last = row === schedule.rows.at(-1);
    const paid = last || row.payment.gt(owed) ? owed : row.payment;
    const left = owed.minus(paid);
    const lump = lumps.get(row.month) ?? money(0);
    balance = lump.gt(left) ? money(0) : left.minus(lump);
    rows.push({ month: row.month, payment: paid, interest, principal: paid.minus(interest), balance });
  }
  return {
    ...scheduleOf(rows),
    payment: schedule.payment,
    lastPayment: rows.findLast((row) => row.payment.gt(0))?.payment ?? money(0),
  };
}

function interestFactor({ rateFracPerYear, firstPeriod = ONE_MONTH }: LoanTerms, month: number): Exact {
  const i = exact(rateFracPerYear).div(12);
  if (month > 1) return i;
  return i.times(exact(firstPeriod.fraction)).plus(1).times(i.plus(1).pow(firstPeriod.whole)).minus(1);
}

function checkTerms({ principal, rateFracPerYear, termMonths }: LoanTerms): void {
  invariant(principal.gte(0) && principal.isFinite(), `principal ${principal}`);
  invariant(rateFracPerYear >= 0 && Number.isFinite(rateFracPerYear), `loan rate ${rateFracPerYear}`);
  invariant(Number.isSafeInteger(termMonths) && termMonths >= 1, `loan term ${termMonths}`);
}
