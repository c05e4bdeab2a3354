import type { Choice } from '../visit/choice';
import type { Saying } from '../visit/wording';
import type { LoanQuote, MoneyText, WayToPay } from './comparison';
import { type LoanSchedule, loanWithLumps } from './level-loan';
import { balanceAfter, type QuotedLoan, quoteLoan } from './loan-quote';
import { type Money, money, moneyText, usdOf } from './money';
import { priceTotal } from './price-total';
import { quotePromotional } from './promotional-quote';
import { type CountedRebate, readRebates } from './rebates';
import { waysToPay } from './ways-to-pay';

/** Money that changes hands for a choice itself; positive when the customer pays. */
export type CapitalFlow = {
  readonly kind: 'price' | 'rebate' | 'loan';
  /** After the day of the visit; 0 = on the day. */
  readonly months: number;
  readonly amount: Money;
  /** The same as a float, for present values. */
  readonly usd: number;
};

/** A choice with its price, rebates and financing worked out; nothing in it depends on the length of the stay. */
export type PricedChoice = {
  readonly choice: Choice;
  /** Has a price list, even one that adds up to nothing; leaving needs none. */
  readonly priced: boolean;
  readonly price: Money;
  readonly rebate: Money;
  /** Price less every rebate that counts, not discounted. */
  readonly netPrice: Money;
  readonly upFront: Money;
  readonly loan?: {
    readonly quote: LoanQuote;
    /** As it runs; rebates put against it end it earlier than the quote says. */
    readonly schedule: LoanSchedule;
    readonly monthsLater: number;
  };
  /** All payments of the loan, and rebates that come later. */
  readonly loanFlows: readonly CapitalFlow[];
  readonly rebateFlows: readonly CapitalFlow[];
  readonly waysToPay: readonly WayToPay[];
  readonly notes: readonly Saying[];
};

/**
 * Price, rebates and financing of a choice.
 *
 * @param choice     as entered
 * @param visitDate  ISO date on which rebates are judged
 * @returns the priced choice; a rebate paid on the day lowers the price and what is lent, a later one does not
 * Check: tests/finance/priced-choice.test.ts
 */
export function priceChoice(choice: Choice, visitDate: string): PricedChoice {
  const price: MoneyText = priceTotal(choice.priceLines).totalUsd;
  const rebates = readRebates(choice.rebates ?? [], visitDate, price);
  const cashPrice = money(price).minus(rebates.atOnceUsd);
  const notes: Saying[] = [...rebates.notes];
  const priced = choice.kind === 'leave' || choice.priceLines.length > 0;
  if (!priced) notes.push({ code: 'priceMissing', values: { choice: choice.name } });
  const plan = planOf(choice, moneyText(cashPrice), visitDate);
  if (plan === undefined && (choice.financing?.kind ?? 'cash') !== 'cash' && cashPrice.gt(0)) {
    notes.push({ code: 'downPaymentCoversPrice', values: { choice: choice.name } });
  }
  notes.push(...(plan?.notes ?? []));
  const later = rebates.counted.filter((r) => r.paidAfterMonths > 0);
  const lumps = plan === undefined ? [] : later.filter((r) => r.toPrincipal);
  const schedule = plan === undefined ? undefined : withLumps(plan, choice, lumps);
  return {
    choice,
    priced,
    price: money(price),
    rebate: money(rebates.totalUsd),
    netPrice: money(price).minus(rebates.totalUsd),
    upFront: plan === undefined ? cashPrice : plan.upFront,
    ...(plan === undefined || schedule === undefined
      ? {}
      : { loan: { quote: plan.quote, schedule, monthsLater: plan.monthsLater } }),
    loanFlows: (schedule?.rows ?? [])
      .filter((row) => row.payment.gt(0))
      .map((row) => flow('loan', row.month + (plan?.monthsLater ?? 0), row.payment)),
    rebateFlows: later
      .filter((r) => !lumps.includes(r))
      .map((r) => flow('rebate', r.paidAfterMonths, money(r.amountUsd).neg())),
    waysToPay: waysToPay(choice, moneyText(cashPrice), visitDate),
    notes,
  };
}

/** The plan the totals count. */
function planOf(choice: Choice, cashPriceUsd: MoneyText, visitDate: string): QuotedLoan | undefined {
  const { financing } = choice;
  if (financing?.kind === 'levelLoan') return quoteLoan(cashPriceUsd, financing, visitDate);
  if (financing?.kind !== 'promotional') return undefined;
  const quoted = quotePromotional(cashPriceUsd, financing);
  if (quoted === undefined) return undefined;
  const ending = financing.expectedEnding === 'notPaidInTime' ? quoted.notPaidInTime : quoted.paidInTime;
  return { ...ending, notes: quoted.notes };
}

/** The schedule as it runs when rebates go against the debt; the payment stays and the loan ends earlier. */
function withLumps(plan: QuotedLoan, choice: Choice, lumps: readonly CountedRebate[]): LoanSchedule {
  const { financing } = choice;
  if (lumps.length === 0 || financing?.kind !== 'levelLoan') return plan.schedule;
  const byMonth = new Map<number, Money>();
  for (const { paidAfterMonths, amountUsd } of lumps) {
    const month = Math.max(1, paidAfterMonths - plan.monthsLater);
    byMonth.set(month, (byMonth.get(month) ?? money(0)).plus(money(amountUsd)));
  }
  return loanWithLumps(plan.schedule, byMonth, financing.rateFracPerYear);
}

/**
 * Flows of a choice over a stay: what is paid on the day, loan payments each in its own month, rebates when they
 * come. A loan that outlasts the stay is paid off at its end, since the customer then sells or moves.
 *
 * @param priced  the choice
 * @param years   whole years of the stay, >= 1
 * Check: tests/finance/priced-choice.test.ts
 */
export function capitalFlows(priced: PricedChoice, years: number): CapitalFlow[] {
  const end = years * 12;
  const owed = balanceAtEnd(priced, years);
  return [
    flow('price', 0, priced.upFront),
    ...priced.loanFlows.filter((f) => f.months <= end),
    ...(owed.gt(0) ? [flow('loan', end, owed)] : []),
    ...priced.rebateFlows,
  ];
}

function flow(kind: CapitalFlow['kind'], months: number, amount: Money): CapitalFlow {
  return { kind, months, amount, usd: usdOf(amount) };
}

/** What is still owed on the loan when the stay ends. */
export function balanceAtEnd(priced: PricedChoice, years: number): Money {
  return priced.loan === undefined
    ? money(0)
    : balanceAfter(priced.loan.schedule, years * 12 - priced.loan.monthsLater);
}
