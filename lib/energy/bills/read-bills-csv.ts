import type { Bill } from '../../visit/bills';
import { parseNumber } from '../../visit/parse-number';
import type { Saying } from '../../visit/wording';
import { dateOfDay, dayNumber } from './bill-model';

export type BillsRead = { readonly bills: readonly Bill[]; readonly notes: readonly Saying[] };

type Column = 'from' | 'to' | 'kwh' | 'cost' | 'estimated' | 'temperature';

const HEADERS: readonly (readonly [Column, RegExp])[] = [
  ['temperature', /temp|°|degrees/i],
  ['kwh', /kwh|usage|consumption|energy used|^use$|units used/i],
  ['cost', /cost|amount|charge|total|usd|\$|price/i],
  ['estimated', /estimat|read type|reading type|^type$/i],
  ['from', /from|start|begin|previous read/i],
  ['to', /to$|^to\b|end|until|read date|bill date|statement|^date$|month|period/i],
];

/**
 * Bills from a pasted table: any column order, comma, semicolon or tab between columns, dates as 2026-03-14,
 * 3/14/2026 or a month (2026-03, Mar 2026).
 *
 * @param text  table with a heading line
 * @returns every row whose days and kilowatt-hours can be read, and a note for each cell that cannot; a row whose cost or
 *   mean temperature cannot be read stands without it; with only one date per row it ends the period, and the period
 *   before the first is taken as one month
 * Check: tests/energy/bills/read-bills-csv.test.ts
 */
export function readBillsCsv(text: string): BillsRead {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  const [head, ...rows] = lines;
  if (head === undefined) return { bills: [], notes: [{ code: 'billsEmpty' }] };
  const separator = ['\t', ';', ','].find((s) => head.includes(s)) ?? ',';
  const columns = columnsOf(cellsOf(head, separator));
  if (columns.kwh === undefined) return { bills: [], notes: [{ code: 'billsNoKwhColumn' }] };
  if (columns.to === undefined && columns.from === undefined) {
    return { bills: [], notes: [{ code: 'billsNoDateColumn' }] };
  }
  const notes: Saying[] = [];
  const bills: Bill[] = [];
  rows.forEach((line, i) => {
    const read = rowOf(cellsOf(line, separator), columns);
    notes.push(...read.doubts.map(({ code, cell }) => ({ code, values: { row: i + 2, cell } })));
    if (read.bill !== undefined) bills.push(read.bill);
  });
  return { bills: filledFrom(bills), notes };
}

function columnsOf(headers: readonly string[]): Partial<Record<Column, number>> {
  const found: Partial<Record<Column, number>> = {};
  const taken = new Set<number>();
  for (const [column, pattern] of HEADERS) {
    const i = headers.findIndex((h, at) => !taken.has(at) && pattern.test(h.trim()));
    if (i >= 0) {
      found[column] = i;
      taken.add(i);
    }
  }
  return found;
}

/** A bill, or none where days or kilowatt-hours cannot be read; and each cell that cannot, cut to what a line holds. */
type RowRead = { readonly bill?: Bill; readonly doubts: readonly { code: string; cell: string }[] };

function rowOf(cells: readonly string[], columns: Partial<Record<Column, number>>): RowRead {
  const doubts: { code: string; cell: string }[] = [];
  const doubt = (code: string, cell: string): void => {
    doubts.push({ code, cell: cell.slice(0, CELL_SHOWN) });
  };
  const cell = (column: Column): string => {
    const i = columns[column];
    return i === undefined ? '' : (cells[i] ?? '').trim();
  };
  const number = (column: Column, code: string): number | undefined => {
    const parsed = parseNumber(cell(column));
    if (parsed.kind === 'notNumber') doubt(code, cell(column));
    return parsed.kind === 'number' ? parsed.value : undefined;
  };
  const day = (column: Column): DateRange | undefined => {
    const range = dateRange(cell(column));
    if (range === undefined && cell(column) !== '') doubt('billsDateUnread', cell(column));
    return range;
  };
  const kwh = number('kwh', 'billsKwhUnread');
  if (kwh === undefined && cell('kwh') === '') doubt('billsKwhEmpty', '');
  const [to, from] = [day('to'), day('from')];
  if (cell('to') === '' && cell('from') === '') doubt('billsDateEmpty', '');
  const end = to?.end ?? from?.monthEnd;
  // a last day nobody wrote down cannot be told from the first one
  if (end === undefined && from !== undefined && cell('to') === '') doubt('billsDateEmpty', '');
  const unreadDay = doubts.some(({ code }) => code === 'billsDateUnread');
  if (kwh === undefined || end === undefined || unreadDay) return { doubts };
  const start = from?.start ?? (to?.month === true ? to.start : undefined);
  const costUsd = number('cost', 'billsCostUnread');
  const meanOutdoorF = number('temperature', 'billsMeanUnread');
  const bill: Bill = {
    // an empty start is filled from the row before
    fromDate: start === undefined ? '' : dateOfDay(start),
    toDate: dateOfDay(end),
    kwh,
    ...(costUsd === undefined ? {} : { costUsd }),
    ...(meanOutdoorF === undefined ? {} : { meanOutdoorF }),
    ...(/^(e|est|estimated?|yes|true|y)\b/i.test(cell('estimated')) ? { estimated: true } : {}),
  };
  return { bill, doubts };
}

/** Letters of a cell that are shown. */
const CELL_SHOWN = 40;

type DateRange = {
  readonly start: number;
  readonly end: number;
  readonly month: boolean;
  readonly monthEnd?: number;
};

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** A day (start = end) or a whole month (end = first day of the next). */
function dateRange(text: string): DateRange | undefined {
  const iso = dayNumber(text);
  if (iso !== undefined) return { start: iso, end: iso, month: false };
  const american = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4}|\d{2})$/.exec(text);
  if (american !== null) {
    const year = american[3]?.length === 2 ? `20${american[3]}` : (american[3] ?? '');
    const day = dayNumber(`${year}-${pad(american[1])}-${pad(american[2])}`);
    return day === undefined ? undefined : { start: day, end: day, month: false };
  }
  const numeric = /^(\d{4})[-/](\d{1,2})$/.exec(text);
  if (numeric !== null) return monthRange(Number(numeric[1]), Number(numeric[2]));
  const named = /^([a-z]{3})[a-z]*\.?[\s-]+(\d{4})$/i.exec(text);
  if (named === null) return undefined;
  return monthRange(Number(named[2]), MONTHS.indexOf((named[1] ?? '').toLowerCase()) + 1);
}

function monthRange(year: number, month: number): DateRange | undefined {
  const start = dayNumber(`${year}-${pad(String(month))}-01`);
  const next = month === 12 ? `${year + 1}-01-01` : `${year}-${pad(String(month + 1))}-01`;
  const end = dayNumber(next);
  if (start === undefined || end === undefined) return undefined;
  return { start, end, month: true, monthEnd: end };
}

function pad(text: string | undefined): string {
  return (text ?? '').padStart(2, '0');
}

/** Rows that name only the end of their period begin where the row before ends. */
function filledFrom(bills: readonly Bill[]): Bill[] {
  const rising = [...bills].sort((a, b) => (a.toDate < b.toDate ? -1 : Number(a.toDate > b.toDate)));
  return rising.map((bill, i) => {
    if (bill.fromDate !== '') return bill;
    const end = dayNumber(bill.toDate) ?? 0;
    return { ...bill, fromDate: rising[i - 1]?.toDate ?? dateOfDay(end - 30) };
  });
}

/** Cells of a line; quoted cells may hold the separator. */
function cellsOf(line: string, separator: string): string[] {
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (const c of line) {
    if (c === '"') quoted = !quoted;
    else if (c === separator && !quoted) {
      cells.push(cell);
      cell = '';
    } else cell += c;
  }
  return [...cells, cell];
}
