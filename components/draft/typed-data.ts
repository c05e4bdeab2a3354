import { parseNumber } from '@/lib/visit/parse-number';
import { type Draft, type DraftValue, patternOf } from './draft-tree';
import type { FieldBook } from './field-book';

/** The draft as data, and which rows of the form its lists hold (rows not filled in yet are left out). */
export type DraftData = {
  readonly data: Draft;
  /** By list path: the form's row of each row of the data. */
  readonly rows: Readonly<Record<string, readonly number[]>>;
};

/**
 * The draft as data for `readDraft`: typed text in numeric fields becomes numbers where it is one and stays text
 * where it is not (so that the reader can say so); empty fields, unpriced rows and unfinished loans are left out.
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
  const keys = path.split('.');
  return keys.map((key, i) => String(rows[keys.slice(0, i).join('.')]?.[Number(key)] ?? key)).join('.');
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

function listData(node: readonly DraftValue[], path: string, making: Making): DraftValue[] {
  const kept = node.flatMap((row, i) => (isPriced(row, path) ? [i] : []));
  if (kept.length < node.length) making.rows[path] = kept;
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
  if (/^choices\.\d+\.financing$/.test(path) && node.kind === 'levelLoan') {
    if (!keys.has('rateFracPerYear') || !keys.has('termMonths')) return undefined;
  }
  const record = Object.fromEntries(entries);
  if (path === 'tariff' && !keys.has('kind')) return { ...record, kind: 'flat' };
  if (PRICE_ROW.test(path) && !keys.has('label')) {
    return { ...record, label: making.lineName(typeof node.kind === 'string' ? node.kind : 'rebate') };
  }
  return record;
}

const PRICE_LIST = /^choices\.\d+\.(priceLines|rebates)$/;
const PRICE_ROW = /^choices\.\d+\.(priceLines|rebates)\.\d+$/;

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
  const parsed = parseNumber(text);
  if (parsed.kind === 'number') return Number((parsed.value * entry.perFormUnit).toPrecision(15));
  return parsed.kind === 'empty' ? undefined : text;
}

function isRecord(node: DraftValue | undefined): node is { [key: string]: DraftValue } {
  return typeof node === 'object' && node !== null && !Array.isArray(node);
}
