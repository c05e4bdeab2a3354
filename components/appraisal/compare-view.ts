import { td } from '@/components/words/decide-words';
import { t } from '@/components/words/words';
import type { ComparedChoice, Comparison } from '@/lib/finance/comparison';
import { chanceBase, countOf } from '@/lib/sheet/chance-words';
import { quotedWords, savingWords } from '@/lib/sheet/money-words';
import { plainNumber, wordsOf } from '@/lib/sheet/phrase';
import type { ChoiceColumn, Sheet } from '@/lib/sheet/sheet';

const words = wordsOf('en');

/** One cell; `signs` draws a chance as so many of equal signs. */
export type CompareCell = {
  readonly main: string;
  readonly details: readonly string[];
  readonly signs?: { readonly count: number; readonly of: number };
};

export type CompareRow = {
  readonly id: string;
  readonly label: string;
  /** Quoted to the cent, not estimated. */
  readonly quoted: boolean;
  readonly cells: readonly CompareCell[];
};

/** All choices with the same rows, in the comparison's own order. */
export type CompareTable = {
  readonly columns: readonly ChoiceColumn[];
  readonly rows: readonly CompareRow[];
};

/** The sheet's table for the screen: every choice in one table, and what each saves against leaving it. */
export function compareTable(sheet: Sheet, comparison: Comparison): CompareTable {
  const tables = [
    sheet.pageOne.choices,
    ...(sheet.pageTwo.moreChoices === undefined ? [] : [sheet.pageTwo.moreChoices]),
  ];
  const placed = comparison.choices.flatMap((choice) =>
    tables.flatMap((table) => {
      const at = table.columns.findIndex((column) => column.id === choice.id);
      const column = table.columns[at];
      return column === undefined ? [] : [{ choice, column, cells: table.rows.map((row) => row.cells[at]) }];
    }),
  );
  const base = chanceBase(comparison.choices.map((choice) => choice.failsWithinStayFrac.likely));
  const rows = sheet.pageOne.choices.rows.map((row, i) => ({
    id: row.id,
    label: row.label,
    quoted: row.quoted,
    cells: placed.map(({ choice, cells }): CompareCell => {
      const cell = cells[i] ?? { main: '', details: [] };
      if (row.id === 'payMonthly')
        return { main: cell.main, details: [...cell.details, ...loanLines(choice)] };
      if (row.id !== 'breakdown') return cell;
      const told = { ...cell, details: [...cell.details, ...daysWithout(choice)] };
      if (base !== 10) return told;
      return { ...told, signs: { count: countOf(choice.failsWithinStayFrac.likely, base), of: base } };
    }),
  }));
  const saving: CompareRow = {
    id: 'saving',
    label: t('compare.saving'),
    quoted: false,
    cells: placed.map(({ choice }) => ({
      main: savingAgainst(choice),
      details: [],
    })),
  };
  const last = rows.findIndex((row) => row.id === 'total') + 1;
  return {
    columns: placed.map(({ column }) => column),
    rows: [...rows.slice(0, last), saving, ...rows.slice(last)],
  };
}

function savingAgainst(choice: ComparedChoice): string {
  if (choice.kind === 'leave') return t('compare.savingBase');
  return choice.priced ? savingWords(words, choice.netSavingUsd) : t('compare.savingUnpriced');
}

/** What a breakdown means for the people in the house: days, never dollars. */
function daysWithout({ daysWithout: days }: ComparedChoice): string[] {
  if (days === undefined) return [];
  const places = days.likely < FINE_DAYS ? 1 : 0;
  const [low, likely, high] = [days.low, days.likely, days.high].map((n) => plainNumber(words, n, places));
  return [td('compare.daysWithout', { days: likely ?? '', low: low ?? '', high: high ?? '' })];
}

/** Below so many days a tenth of a day says something. */
const FINE_DAYS = 3;

/** What must stand wherever a payment is shown, beyond rate and term. */
function loanLines(choice: ComparedChoice): string[] {
  if (choice.loan === undefined) return [];
  return [
    t('compare.down', { down: quotedWords(choice.loan.downPaymentUsd) }),
    t('compare.totalOfPayments', { total: quotedWords(choice.loan.totalOfPaymentsUsd) }),
    t('compare.notAnOffer'),
  ];
}
