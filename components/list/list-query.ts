import { t, tCode } from '@/components/words/words';
import { parseNumber } from '@/lib/visit/parse-number';
import type { ListRow } from './digest';

/** What the list is asked for; every part stands in the address, so that it can be sent to a colleague. */
export type ListQuery = {
  readonly search: string;
  readonly year: string;
  readonly advice: string;
  readonly mode: string;
  readonly cause: string;
  readonly chosen: string;
  readonly sort: string;
  readonly page: number;
};

export const SORTS = ['saved', 'date', 'customer', 'town'] as const;

/** More rows than this are another page, so that a long list stays quick. */
export const PAGE_ROWS = 100;

const TEXTS = ['search', 'year', 'advice', 'mode', 'cause', 'chosen', 'sort'] as const;

/** The query of an address ("?search=elm&sort=date"); what is not understood asks for nothing. */
export function queryOfAddress(address: string): ListQuery {
  const params = new URLSearchParams(address);
  const page = Number(params.get('page') ?? '1');
  const texts = Object.fromEntries(TEXTS.map((key) => [key, params.get(key) ?? '']));
  return {
    ...(texts as Omit<ListQuery, 'page'>),
    page: Number.isInteger(page) && page > 0 ? page : 1,
  };
}

/** Address of a query, without what asks for nothing; the identity of `queryOfAddress`. */
export function addressOfQuery(query: ListQuery): string {
  const params = new URLSearchParams();
  for (const key of TEXTS) if (query[key] !== '') params.set(key, query[key]);
  if (query.page > 1) params.set('page', String(query.page));
  const text = params.toString();
  return text === '' ? '' : `?${text}`;
}

/**
 * The rows asked for, in order. Every word searched for must appear somewhere in a row, in any case.
 *
 * Check: tests/screens/list-query.test.ts
 */
export function rowsFor(rows: readonly ListRow[], query: ListQuery): readonly ListRow[] {
  const words = plain(query.search).split(/\s+/).filter(Boolean);
  const found = rows.filter((row) => {
    if (query.year !== '' && row.visitDate?.slice(0, 4) !== query.year) return false;
    if (query.advice !== '' && row.digest?.advice !== query.advice) return false;
    if (query.mode !== '' && row.modes?.includes(query.mode) !== true) return false;
    if (query.cause !== '' && row.digest?.causes.includes(query.cause) !== true) return false;
    if (query.chosen !== '' && (row.chosen === undefined) === (query.chosen === 'yes')) return false;
    const text = searchText(row);
    return words.every((word) => text.includes(word));
  });
  return sorted(found, query.sort);
}

/** Whether what is asked for hangs on results that may still be missing. */
export function needsDigests(query: ListQuery): boolean {
  return query.advice !== '' || query.cause !== '';
}

export function unitWords(row: ListRow): string {
  return [
    row.unitKind === undefined ? undefined : tCode(`option.unitKind.${row.unitKind}`),
    row.nominalTons === undefined ? undefined : tonsWords(row.nominalTons),
    row.refrigerant,
  ]
    .filter((word) => word !== undefined)
    .join(', ');
}

/** "3 tons" whether or not the unit was typed along; what is no number stays as it was typed. */
function tonsWords(typed: string): string {
  const parsed = parseNumber(typed);
  return parsed.kind === 'number' ? t('list.tons', { n: parsed.value }) : typed;
}

function searchText(row: ListRow): string {
  const { customer, street, town, technician, note, visitDate, chosen } = row;
  const told = [customer, street, town, technician, note, visitDate, chosen?.name, unitWords(row)];
  return plain(told.filter((text) => text !== undefined).join(' '));
}

/** Letters without case and accents: "Núñez" is found by "nunez". */
function plain(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}

/** Rows without the text sorted by come last, whatever the order. */
function sorted(rows: readonly ListRow[], sort: string): readonly ListRow[] {
  const by = (textOf: (row: ListRow) => string | undefined, down: boolean) =>
    [...rows].sort((a, b) => {
      const [left, right] = [textOf(a), textOf(b)];
      if (left === undefined || right === undefined)
        return Number(left === undefined) - Number(right === undefined);
      return down ? right.localeCompare(left) : left.localeCompare(right);
    });
  if (sort === 'date') return by((row) => row.visitDate, true);
  if (sort === 'customer') return by((row) => row.customer, false);
  if (sort === 'town') return by((row) => row.town, false);
  return by((row) => row.savedAt, true);
}
