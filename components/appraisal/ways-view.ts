import { td } from '@/components/words/decide-words';
import { tCode } from '@/components/words/words';
import type { ComparedChoice, Comparison, LoanQuote, WayToPay } from '@/lib/finance/comparison';
import { quotedWords } from '@/lib/sheet/money-words';
import type { Saying } from '@/lib/visit/wording';
import { aboutUsd } from './about-usd';

/** One way to pay, or one ending of it. */
export type WayView = {
  readonly key: string;
  readonly title: string;
  readonly counted?: string;
  /** "Annual percentage rate (APR): 9.99 %" */
  readonly apr?: string;
  readonly rows: readonly { readonly label: string; readonly text: string }[];
  readonly disclosures: readonly string[];
  readonly notes: readonly string[];
};

/** All ways to pay for one choice, with what it saves on energy a month. */
export type ChoiceWays = {
  readonly id: string;
  readonly name: string;
  readonly saving: string;
  readonly ways: readonly WayView[];
};

/** A saving below this a month is told as hardly any. Our own choice. */
const LEAST_MONTHLY_USD = 5;

/**
 * Ways to pay side by side, of every choice where something is lent or more than one way was asked for.
 *
 * Check: tests/screens/decide-view.test.ts
 */
export function waysView(comparison: Comparison, told: (saying: Saying) => string): ChoiceWays[] {
  return comparison.choices.flatMap((choice) => {
    const ways = choice.waysToPay ?? [];
    if (ways.length < 2 && ways.every((way) => way.loan === undefined)) return [];
    return [
      {
        id: choice.id,
        name: choice.name,
        saving: savingWords(choice),
        ways: ways.flatMap((way, i) => wayViews(way, i, choice, told)),
      },
    ];
  });
}

function savingWords(choice: ComparedChoice): string {
  const usd = choice.energySavedPerMonthUsd ?? 0;
  if (Math.abs(usd) < LEAST_MONTHLY_USD) return td('ways.savesNothing');
  return td(usd > 0 ? 'ways.saves' : 'ways.costsMore', { usd: aboutUsd(Math.abs(usd)) });
}

function wayViews(
  way: WayToPay,
  at: number,
  choice: ComparedChoice,
  told: (saying: Saying) => string,
): WayView[] {
  const own = {
    ...(way.counted ? { counted: td('ways.counted') } : {}),
    disclosures: way.disclosures.map(told),
    notes: way.notes.map(told),
  };
  const lender = way.lender === undefined ? '' : td('ways.by', { lender: way.lender });
  const name = `${tCode(`option.financing.${way.kind}`)}${lender}`;
  if (way.promotion !== undefined) {
    const { paidInTime, notPaidInTime } = way.promotion;
    return [
      {
        key: `${at} in time`,
        title: td('ways.inTime', { name }),
        ...own,
        ...loanView(paidInTime),
      },
      {
        key: `${at} not in time`,
        title: td('ways.notInTime', { name }),
        ...loanView(notPaidInTime),
        disclosures: [],
        notes: [],
      },
    ];
  }
  if (way.loan !== undefined) return [{ key: String(at), title: name, ...own, ...loanView(way.loan) }];
  const cash = { label: td('ways.payNow'), text: quotedWords(choice.priceUsd) };
  return [{ key: String(at), title: name, ...own, rows: way.kind === 'cash' ? [cash] : [] }];
}

function loanView(loan: LoanQuote): Pick<WayView, 'apr' | 'rows'> {
  const changes = (loan.paymentRuns ?? []).length > 2;
  return {
    apr:
      loan.apr.kind === 'rate'
        ? td('ways.apr', { apr: (100 * loan.apr.fracPerYear).toFixed(2) })
        : td('ways.aprNone'),
    rows: [
      {
        label: td(changes ? 'ways.firstPayment' : 'ways.payment'),
        text: quotedWords(loan.paymentUsd),
      },
      { label: td('ways.term'), text: td('ways.months', { months: loan.termMonths }) },
      { label: td('ways.down'), text: quotedWords(loan.downPaymentUsd) },
      { label: td('ways.charge'), text: quotedWords(loan.financeChargeUsd) },
      { label: td('ways.totalOfPayments'), text: quotedWords(loan.totalOfPaymentsUsd) },
      { label: td('ways.totalPaid'), text: quotedWords(loan.totalPaidUsd) },
    ],
  };
}
