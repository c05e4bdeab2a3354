import {
  type Draft,
  type DraftValue,
  listAt,
  textAt,
  valueAt,
  withValue,
} from '@/components/draft/draft-tree';

export const TABLES = 'unit.chargingTables';

/** Most rows and columns a table may have, as the schema says. */
export const MOST_LINES = 12;

export type Port = 'suctionPsig' | 'dischargePsig';
const PORTS: readonly Port[] = ['suctionPsig', 'dischargePsig'];

/** A table of the form as a full rectangle of texts. */
export type FormTable = {
  readonly outdoorF: readonly string[];
  readonly indoorF: readonly string[];
  readonly suctionPsig: readonly (readonly string[])[];
  readonly dischargePsig: readonly (readonly string[])[];
};

/** Place of a mode's table in the list; -1 when there is none. */
export function tablePlace(draft: DraftValue, mode: string): number {
  return listAt(draft, TABLES).findIndex((table) => textAt(table, 'mode') === mode);
}

/** A table as a full rectangle, whatever a file left out. */
export function formTable(table: DraftValue | undefined): FormTable {
  const outdoor = listAt(table, 'outdoorF').map(words);
  const indoor = listAt(table, 'indoorF').map(words);
  const cells = (port: Port) =>
    outdoor.map((_, i) => indoor.map((__, j) => words(valueAt(table, `${port}.${i}.${j}`) ?? '')));
  return {
    outdoorF: outdoor,
    indoorF: indoor,
    suctionPsig: cells('suctionPsig'),
    dischargePsig: cells('dischargePsig'),
  };
}

/** A blank table of so many rows and columns. */
export function blankTable(rows: number, columns: number): FormTable {
  const line = (n: number) => Array.from({ length: n }, () => '');
  const grid = line(rows).map(() => line(columns));
  return { outdoorF: line(rows), indoorF: line(columns), suctionPsig: grid, dischargePsig: grid };
}

/** The draft with a table put at its place, the mode kept; at the end of the list a new one. */
export function withTable(draft: Draft, at: number, mode: string, table: FormTable): Draft {
  const tables = listAt(draft, TABLES);
  const next = { mode, ...(table as unknown as Draft) };
  return withValue(draft, TABLES, at < 0 ? [...tables, next] : tables.map((t, i) => (i === at ? next : t)));
}

export function withoutTable(draft: Draft, at: number): Draft {
  const rest = listAt(draft, TABLES).filter((_, i) => i !== at);
  return withValue(draft, TABLES, rest.length === 0 ? undefined : rest);
}

export function withRow(table: FormTable): FormTable {
  const blank = table.indoorF.map(() => '');
  return {
    ...table,
    outdoorF: [...table.outdoorF, ''],
    suctionPsig: [...table.suctionPsig, blank],
    dischargePsig: [...table.dischargePsig, blank],
  };
}

export function withColumn(table: FormTable): FormTable {
  const wider = (rows: FormTable[Port]) => rows.map((row) => [...row, '']);
  return {
    ...table,
    indoorF: [...table.indoorF, ''],
    suctionPsig: wider(table.suctionPsig),
    dischargePsig: wider(table.dischargePsig),
  };
}

export function withoutRow(table: FormTable, at: number): FormTable {
  const others = <T>(list: readonly T[]) => list.filter((_, i) => i !== at);
  return {
    ...table,
    outdoorF: others(table.outdoorF),
    suctionPsig: others(table.suctionPsig),
    dischargePsig: others(table.dischargePsig),
  };
}

export function withoutColumn(table: FormTable, at: number): FormTable {
  const narrower = (rows: FormTable[Port]) => rows.map((row) => row.filter((_, j) => j !== at));
  return {
    ...table,
    indoorF: table.indoorF.filter((_, j) => j !== at),
    suctionPsig: narrower(table.suctionPsig),
    dischargePsig: narrower(table.dischargePsig),
  };
}

/** A table with one field retyped; `keys` as in the visit ("outdoorF", 2 or "suctionPsig", 1, 0). */
export function withCell(table: FormTable, keys: readonly (string | number)[], typed: string): FormTable {
  return withValue(table as unknown as Draft, keys.join('.'), typed) as unknown as FormTable;
}

/** Whether every list of a draft's table is there in full, so that a field may be set by its path. */
export function isFull(table: DraftValue | undefined): boolean {
  const rows = listAt(table, 'outdoorF').length;
  const columns = listAt(table, 'indoorF').length;
  return PORTS.every((port) => {
    const cells = listAt(table, port);
    return cells.length === rows && cells.every((row) => Array.isArray(row) && row.length === columns);
  });
}

function words(value: DraftValue): string {
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
}
