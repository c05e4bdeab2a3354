import { hasPressures, TABLE_PORTS, tableEntry, tableGrid } from '@/lib/visit/charging-table-entry';
import { parseNumber } from '@/lib/visit/parse-number';
import { type Draft, type DraftValue, patternOf } from './draft-tree';
import { type FieldBook, typedUnit } from './field-book';
import { isFinishedFurnace, isFinishedPlan, planData } from './financing-data';

/** The draft as data, and which rows of the form its lists hold (rows not filled in yet are left out). */
export type DraftData = {
  readonly data: Draft;
  /** By list path in the form: the form's row of each row of the data. */
  readonly rows: Readonly<Record<string, readonly number[]>>;
};

/**
 * The draft as data for `readDraft`: typed text in numeric fields becomes numbers where it is one and stays text
 * where it is not (so that the reader can say so); empty fields, unpriced rows, unfinished ways to pay and furnaces,
 * blank points of a traverse, and rows and columns of a charging table with nothing in them are left out.
 *
 * @param draft the form's draft; it is not changed
 * @param book  fields by pattern
 * @param lineName name of a price line that was given none, by its kind
 * Check: tests/screens/typed-data.test.ts
 */
export function dataFromDraft(draft: Draft, book: FieldBook, lineName: (kind: string) => string): DraftData {
  const rows: Record<string, readonly number[]> = {};
  const data = asData(draft, '', { book, rows, lineName });
  return { data: isRecord(data) ? data : {}, rows };
}

/** Path in the form of a path in the data. */
export function formPath(path: string, rows: DraftData['rows']): string {
  const form: string[] = [];
  for (const key of path.split('.')) form.push(String(rows[form.join('.')]?.[Number(key)] ?? key));
  return form.join('.');
}

type Making = {
  readonly book: FieldBook;
  readonly rows: Record<string, readonly number[]>;
  readonly lineName: (kind: string) => string;
};

function asData(node: DraftValue, path: string, making: Making): DraftValue | undefined {
  if (Array.isArray(node)) return listData(node, path, making);
  if (isRecord(node)) return recordData(node, path, making);
  if (typeof node === 'string') return typed(node, path, making.book);
  return node ?? undefined;
}

function listData(node: readonly DraftValue[], path: string, making: Making): DraftValue[] | undefined {
  const kept = node.flatMap((row, i) => (isFilled(row, path) ? [i] : []));
  if (kept.length < node.length) making.rows[path] = kept;
  if (kept.length === 0 && DROPPED_WHEN_EMPTY.test(path)) return undefined;
  return kept.map((i) => asData(node[i] ?? null, `${path}.${i}`, making) ?? null);
}

function recordData(
  node: { [key: string]: DraftValue },
  path: string,
  making: Making,
): DraftValue | undefined {
  const entries = Object.entries(node).flatMap(([key, v]) => {
    const next = asData(v, path === '' ? key : `${path}.${key}`, making);
    return next === undefined ? [] : [[key, next] as const];
  });
  const keys = new Set(entries.map(([key]) => key));
  const flat = node.kind === undefined || node.kind === 'flat';
  if (path === 'tariff' && flat && !keys.has('energyUsdPerKwh')) return undefined;
  const record = Object.fromEntries(entries);
  if (PLAN.test(path)) return planData(record);
  if (FURNACE.test(path) && !isFinishedFurnace(record)) return undefined;
  if (TABLE.test(path)) return tableData(record, path, making);
  if (path === 'tariff' && !keys.has('kind')) return { ...record, kind: 'flat' };
  if (PRICE_ROW.test(path) && !keys.has('label')) {
    return { ...record, label: making.lineName(typeof node.kind === 'string' ? node.kind : 'rebate') };
  }
  return record;
}

const PRICE_LIST = /^choices\.\d+\.(priceLines|rebates)$/;
const PRICE_ROW = /^choices\.\d+\.(priceLines|rebates)\.\d+$/;

const PLAN = /^choices\.\d+\.(financing|financingOffers\.\d+)$/;
const PLAN_LIST = /^choices\.\d+\.financingOffers$/;
const FURNACE = /^choices\.\d+\.furnace$/;

const POINT_LIST = /^runs\.\d+\.grilleFacePointsFpm$/;
const TABLE_LIST = /^unit\.chargingTables$/;
const TABLE = /^unit\.chargingTables\.\d+$/;
const DROPPED_WHEN_EMPTY = /^(runs\.\d+\.grilleFacePointsFpm|unit\.chargingTables)$/;

/** Whether a row of a list holds what it is kept for. */
function isFilled(row: DraftValue, listPath: string): boolean {
  if (POINT_LIST.test(listPath)) return !(typeof row === 'string' && row.trim() === '') && row !== null;
  if (TABLE_LIST.test(listPath)) {
    const { rows, columns } = tableGrid(tableEntry(row));
    return rows.length + columns.length > 0;
  }
  if (PLAN_LIST.test(listPath)) return isFinishedPlan(row);
  return isPriced(row, listPath);
}

/** A charging table in rising order, without the rows, columns and pressures that nobody typed anything in. */
function tableData(record: Draft, path: string, making: Making): Draft {
  const entry = tableEntry(record);
  const { rows, columns } = tableGrid(entry);
  const cell = (typed: unknown): DraftValue => (typed as DraftValue | undefined) ?? null;
  making.rows[`${path}.outdoorF`] = rows;
  making.rows[`${path}.indoorF`] = columns;
  const pressures = TABLE_PORTS.filter((port) => hasPressures(entry, port)).map((port) => {
    making.rows[`${path}.${port}`] = rows;
    for (const i of rows) making.rows[`${path}.${port}.${i}`] = columns;
    return [port, rows.map((i) => columns.map((j) => cell(entry[port][i]?.[j])))] as const;
  });
  return {
    ...(record.mode === undefined ? {} : { mode: record.mode }),
    outdoorF: rows.map((i) => cell(entry.outdoorF[i])),
    indoorF: columns.map((j) => cell(entry.indoorF[j])),
    ...Object.fromEntries(pressures),
  };
}

/** A row without its money is not filled in yet; a row with something unreadable in it is, and gets its error. */
function isPriced(row: DraftValue, listPath: string): boolean {
  if (!PRICE_LIST.test(listPath) || !isRecord(row)) return true;
  return ['unitPriceUsd', 'taxFrac', 'amountUsd'].some((key) => {
    const value = row[key];
    return typeof value === 'number' || (typeof value === 'string' && value.trim() !== '');
  });
}

function typed(text: string, path: string, book: FieldBook): DraftValue | undefined {
  if (text.trim() === '') return undefined;
  const entry = book[patternOf(path)];
  if (entry?.min === undefined) return text;
  const parsed = parseNumber(text, typedUnit(entry));
  if (parsed.kind === 'number') return Number((parsed.value * entry.perFormUnit).toPrecision(15));
  return parsed.kind === 'empty' ? undefined : text;
}

function isRecord(node: DraftValue | undefined): node is { [key: string]: DraftValue } {
  return typeof node === 'object' && node !== null && !Array.isArray(node);
}
