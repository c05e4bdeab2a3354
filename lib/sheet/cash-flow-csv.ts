import type { Comparison, YearRow } from '../finance/comparison';
import { type CsvCell, csvText } from './csv';
import { withLeaveName } from './leave-name';
import { type Locale, type PhraseCode, phrase, wordsOf } from './phrase';

const columns: readonly (readonly [PhraseCode, (row: YearRow) => number])[] = [
  ['csv.year', (row) => row.year],
  ['csv.upFront', (row) => cents(row.upFrontUsd)],
  ['csv.loan', (row) => cents(row.loanUsd)],
  ['csv.energy', (row) => cents(row.energyUsd)],
  ['csv.upkeep', (row) => cents(row.upkeepUsd)],
  ['csv.expectedRepair', (row) => cents(row.expectedRepairUsd)],
  ['csv.expectedReplacement', (row) => cents(row.expectedReplacementUsd)],
  ['csv.residual', (row) => cents(row.residualUsd)],
  ['csv.total', (row) => cents(row.totalUsd)],
  ['csv.presentValue', (row) => cents(row.presentValueUsd)],
  ['csv.cumulative', (row) => cents(row.cumulativePresentValueUsd)],
  ['csv.failedBy', (row) => Number(row.failedByFrac.toFixed(4))],
];

/**
 * Yearly cash flow of every choice as rows for a spreadsheet, the comparison's own numbers to the cent.
 *
 * @returns a heading row and one row per choice and year
 * Check: tests/sheet/csv.test.ts
 */
export function cashFlowRows(comparison: Comparison, locale: Locale): CsvCell[][] {
  const words = wordsOf(locale);
  const heading = [
    phrase(words, 'csv.choice'),
    phrase(words, 'csv.kind'),
    ...columns.map(([code]) => phrase(words, code)),
  ];
  const rows = withLeaveName(words, comparison).choices.flatMap((choice) =>
    choice.rows.map((row) => [
      choice.name,
      phrase(words, `choices.${choice.kind}`),
      ...columns.map(([, value]) => value(row)),
    ]),
  );
  return [heading, ...rows];
}

/** The same as CSV text. */
export function cashFlowCsv(comparison: Comparison, locale: Locale): string {
  return csvText(cashFlowRows(comparison, locale));
}

/** Half a cent goes away from zero; never minus zero. */
function cents(usd: number): number {
  return (Math.sign(usd) * Math.round(Math.abs(usd) * 100)) / 100 + 0;
}
