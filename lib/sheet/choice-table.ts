import type { ComparedChoice } from '../finance/comparison';
import { chanceBase, chanceRangeWords, chanceWords } from './chance-words';
import { type Composing, stayWords } from './composing';
import { isZeroMoney, moneyRangeWords, quotedWords } from './money-words';
import { counted, phrase, plainNumber } from './phrase';
import type { ChoiceColumn, ChoiceRow, ChoiceTable, SheetCell } from './sheet';

/** Most choices that stand side by side on page one. Source: checklist of the sheet, status assumption. */
const mostOnPageOne = 5;

/**
 * Which choices stand on page one: all when they fit; else leaving it, the recommended and the cheapest for sure,
 * and the others in their order. The order never changes.
 *
 * Check: tests/sheet/compose-sheet.test.ts
 */
export function shownChoices(c: Composing): { pageOne: ComparedChoice[]; pageTwo: ComparedChoice[] } {
  const { choices, recommendation, lowestTotalId } = c.comparison;
  const mustShow = (choice: ComparedChoice) =>
    choice.kind === 'leave' || choice.id === recommendation.choiceId || choice.id === lowestTotalId;
  const ranked = [...choices.filter(mustShow), ...choices.filter((choice) => !mustShow(choice))];
  const ids = new Set(ranked.slice(0, mostOnPageOne).map((choice) => choice.id));
  return {
    pageOne: choices.filter((choice) => ids.has(choice.id)),
    pageTwo: choices.filter((choice) => !ids.has(choice.id)),
  };
}

/**
 * Choices side by side: the same rows for all, nothing blank.
 *
 * @param choices  columns, in the comparison's own order
 * Check: tests/sheet/compose-sheet.test.ts
 */
export function choiceTable(c: Composing, choices: readonly ComparedChoice[], title: string): ChoiceTable {
  const { words } = c;
  const stay = stayWords(c);
  const base = chanceBase(c.comparison.choices.map((choice) => choice.failsWithinStayFrac.likely));
  const row = (
    id: ChoiceRow['id'],
    label: string,
    quoted: boolean,
    cell: (choice: ComparedChoice) => SheetCell,
  ): ChoiceRow => ({ id, label, quoted, cells: choices.map(cell) });
  return {
    title,
    columns: choices.map((choice) => column(c, choice)),
    rows: [
      row('payNow', phrase(words, 'row.payNow'), true, (choice) => payNowCell(c, choice)),
      row('payMonthly', phrase(words, 'row.payMonthly'), true, (choice) => payMonthlyCell(c, choice)),
      row('runningCost', phrase(words, 'row.runningCost'), false, (choice) =>
        moneyCell(c, choice.yearlyEnergyUsd),
      ),
      row('breakdown', phrase(words, 'row.breakdown', { stay }), false, (choice) => ({
        main: chanceWords(words, choice.failsWithinStayFrac.likely, base),
        details: [
          chanceRangeWords(words, choice.failsWithinStayFrac, base) ?? phrase(words, 'general.rangeNotKnown'),
        ],
      })),
      row('total', phrase(words, 'row.total', { stay }), false, (choice) => totalCell(c, choice)),
      row('notFixed', phrase(words, 'row.notFixed'), false, (choice) => notFixedCell(c, choice)),
    ],
  };
}

function column(c: Composing, choice: ComparedChoice): ChoiceColumn {
  const recommended = choice.id === c.comparison.recommendation.choiceId;
  return {
    id: choice.id,
    kind: choice.kind,
    kindWords: phrase(c.words, `choices.${choice.kind}`),
    name: choice.name.trim() === '' ? phrase(c.words, `choices.${choice.kind}`) : choice.name,
    ...(recommended ? { mark: phrase(c.words, 'choices.recommended') } : {}),
  };
}

function payNowCell(c: Composing, choice: ComparedChoice): SheetCell {
  if (!choice.priced) return { main: phrase(c.words, 'general.notKnown'), details: [] };
  const main = isZeroMoney(choice.upFrontUsd)
    ? phrase(c.words, 'general.none')
    : quotedWords(choice.upFrontUsd);
  const details: string[] = [];
  if (choice.priceUsd !== choice.upFrontUsd) {
    details.push(phrase(c.words, 'cell.price', { price: quotedWords(choice.priceUsd) }));
  }
  if (!isZeroMoney(choice.rebateUsd)) {
    details.push(phrase(c.words, 'cell.rebate', { rebate: quotedWords(choice.rebateUsd) }));
  }
  return { main, details };
}

function payMonthlyCell(c: Composing, choice: ComparedChoice): SheetCell {
  const { loan } = choice;
  if (loan === undefined) return { main: phrase(c.words, 'general.none'), details: [] };
  return {
    main: quotedWords(loan.paymentUsd),
    details: [
      phrase(c.words, 'cell.forMonths', { months: counted(c.words, 'months', loan.termMonths) }),
      phrase(c.words, 'cell.totalPaid', { total: quotedWords(loan.totalPaidUsd) }),
      aprWords(c, choice),
    ],
  };
}

/** "APR 9.99 %", to two decimals as the law tells rates. */
export function aprWords(c: Composing, choice: ComparedChoice): string {
  const apr = choice.loan?.apr;
  if (apr?.kind !== 'rate') return phrase(c.words, 'cell.aprUnknown');
  return phrase(c.words, 'cell.apr', { apr: aprPercent(c, apr.fracPerYear) });
}

/** A yearly rate in percent with two decimals. */
export function aprPercent(c: Composing, fracPerYear: number): string {
  const value = new Intl.NumberFormat(c.words.tag, {
    minimumFractionDigits: 2,
    maximumFractionDigits: 2,
  }).format(fracPerYear * 100);
  return phrase(c.words, 'percent.value', { value });
}

function moneyCell(c: Composing, value: ComparedChoice['totalTodayUsd']): SheetCell {
  const money = moneyRangeWords(c.words, value);
  return { main: money.likely, details: [money.range ?? phrase(c.words, 'general.rangeNotKnown')] };
}

function totalCell(c: Composing, choice: ComparedChoice): SheetCell {
  if (choice.priced) return moneyCell(c, choice.totalTodayUsd);
  const money = moneyRangeWords(c.words, choice.totalTodayUsd);
  return {
    main: phrase(c.words, 'general.notKnown'),
    details: [phrase(c.words, 'cell.unpriced', { total: money.likely })],
  };
}

function notFixedCell(c: Composing, choice: ComparedChoice): SheetCell {
  const { suspectedCause } = c.findings;
  const faulty = suspectedCause !== undefined && suspectedCause.cause !== 'none';
  if (choice.kind === 'leave') {
    return { main: phrase(c.words, faulty ? 'notFixed.leave.fault' : 'notFixed.leave.age'), details: [] };
  }
  if (choice.kind === 'replace') return { main: phrase(c.words, 'notFixed.replace.house'), details: [] };
  const main = phrase(c.words, 'notFixed.repair.age');
  if (missesCause(c, choice)) return { main: phrase(c.words, 'notFixed.repair.missed'), details: [main] };
  return { main, details: faulty ? [failureWords(c, choice)] : [] };
}

/** True when the energy stage found that this repair does not treat the suspected cause. */
function missesCause(c: Composing, choice: ComparedChoice): boolean {
  return c.energy.notes.some(
    (note) => note.code === 'repairMissesCause' && note.values?.choice === choice.name,
  );
}

/** How often the repair does not work, where the comparison says so. */
function failureWords(c: Composing, choice: ComparedChoice): string {
  const percent = choice.notes.find((note) => note.code === 'repairMayNotCure')?.values?.percent;
  if (typeof percent !== 'number') return phrase(c.words, 'notFixed.repair.cause');
  const chance = chanceWords(c.words, (100 - percent) / 100, 100);
  return phrase(c.words, 'notFixed.repair.mayFail', { chance });
}

/** Percent of a yearly rate without trailing zeros: "5 %". */
export function ratePercent(c: Composing, fracPerYear: number): string {
  return phrase(c.words, 'percent.value', { value: plainNumber(c.words, fracPerYear * 100, 2) });
}
