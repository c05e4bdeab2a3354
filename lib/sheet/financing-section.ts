import type { ComparedChoice, LoanQuote } from '../finance/comparison';
import type { Saying } from '../visit/wording';
import { aprPercent } from './choice-table';
import { type Composing, enteredChoice, told } from './composing';
import { quotedWords } from './money-words';
import { phrase } from './phrase';
import type { FinancingPlan, LabelledText, Sheet } from './sheet';

/** Credit terms, grouped and set apart; whoever quotes a payment quotes all of them. */
export function financingSection(c: Composing): Sheet['pageTwo']['financing'] {
  const plans = c.comparison.choices.flatMap((choice) =>
    choice.loan === undefined ? [] : [plan(c, choice, choice.loan)],
  );
  return {
    title: phrase(c.words, 'financing.title'),
    aprLabel: phrase(c.words, 'financing.apr'),
    plans,
    terms: phrase(c.words, 'financing.terms'),
    ...(plans.length === 0 ? { none: phrase(c.words, 'financing.none') } : {}),
  };
}

function plan(c: Composing, choice: ComparedChoice, loan: LoanQuote): FinancingPlan {
  const { words } = c;
  const row = (
    code: 'amount' | 'totalOfPayments' | 'down' | 'cashPrice' | 'totalPaid',
    money: string,
  ): LabelledText => ({
    label: phrase(words, `financing.${code}`),
    text: quotedWords(money),
  });
  const financing = enteredChoice(c, choice.id)?.financing;
  const lender = financing?.kind === 'levelLoan' ? financing.lender : undefined;
  return {
    name: choice.name,
    apr: loan.apr.kind === 'rate' ? aprPercent(c, loan.apr.fracPerYear) : phrase(words, 'general.notKnown'),
    rows: [
      { label: phrase(words, 'financing.charge'), text: quotedWords(loan.financeChargeUsd) },
      row('amount', loan.amountFinancedUsd),
      row('totalOfPayments', loan.totalOfPaymentsUsd),
      { label: phrase(words, 'financing.schedule'), text: scheduleWords(c, loan) },
      row('down', loan.downPaymentUsd),
      row('cashPrice', loan.cashPriceUsd),
      row('totalPaid', loan.totalPaidUsd),
      { label: phrase(words, 'financing.lender'), text: lender ?? phrase(words, 'general.notGiven') },
    ],
  };
}

function scheduleWords(c: Composing, loan: LoanQuote): string {
  const payment = quotedWords(loan.paymentUsd);
  const last = quotedWords(loan.lastPaymentUsd);
  if (loan.termMonths === 1) return phrase(c.words, 'financing.scheduleOne', { payment: last });
  if (payment === last)
    return phrase(c.words, 'financing.scheduleLevel', { count: loan.termMonths, payment });
  return phrase(c.words, 'financing.scheduleLast', { count: loan.termMonths - 1, payment, last });
}

/** Conditions and dates of the rebates, as the comparison noted them. */
export function rebatesSection(c: Composing): Sheet['pageTwo']['rebates'] {
  const notes = c.comparison.choices.flatMap((choice) => choice.notes).filter(isRebateNote);
  return {
    title: phrase(c.words, 'rebate.title'),
    sentences: [...new Set(notes.map((note) => told(c, note)))],
  };
}

/** Notes on rebates stand apart from the doubts. */
export function isRebateNote(note: Saying): boolean {
  return note.code.startsWith('rebate');
}
