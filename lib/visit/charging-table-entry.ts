/** A charging table as it stands in a form or a file: anything may still be blank or no number. */
export type TableEntry = {
  readonly outdoorF: readonly unknown[];
  readonly indoorF: readonly unknown[];
  readonly suctionPsig: readonly (readonly unknown[])[];
  readonly dischargePsig: readonly (readonly unknown[])[];
};

export const TABLE_PORTS = ['suctionPsig', 'dischargePsig'] as const;
export type TablePort = (typeof TABLE_PORTS)[number];

/** Rows and columns that hold something, by their place in the form, in rising order of temperature. */
export type TableGrid = { readonly rows: readonly number[]; readonly columns: readonly number[] };

/** How many fields of a table are still blank; a pressure nobody typed at all counts as not wanted. */
export type TableGaps = {
  readonly outdoorCount: number;
  readonly indoorCount: number;
  readonly suctionCount: number;
  readonly dischargeCount: number;
  /** Of so many cells of one pressure. */
  readonly cellCount: number;
  readonly rowCount: number;
  readonly columnCount: number;
  readonly noPressures: boolean;
  /** The first blank field, as keys within the table. */
  readonly firstBlank?: readonly (string | number)[];
};

/** Fewest outdoor temperatures a table is any use with. */
export const LEAST_TABLE_ROWS = 2;

/**
 * A table of unknown data as an entry; lists that are missing or no lists are empty ones.
 *
 * Check: tests/visit/charging-table-entry.test.ts
 */
export function tableEntry(data: unknown): TableEntry {
  const of = (key: string): readonly unknown[] => {
    const list = typeof data === 'object' && data !== null ? (data as Record<string, unknown>)[key] : [];
    return Array.isArray(list) ? list : [];
  };
  const rows = (key: string) => of(key).map((row) => (Array.isArray(row) ? row : []));
  return {
    outdoorF: of('outdoorF'),
    indoorF: of('indoorF'),
    suctionPsig: rows('suctionPsig'),
    dischargePsig: rows('dischargePsig'),
  };
}

/**
 * The rows and columns of an entry that hold something.
 *
 * @param entry  as typed
 * @returns places in the form; in rising order of temperature when all temperatures are numbers, else as typed
 * Check: tests/visit/charging-table-entry.test.ts
 */
export function tableGrid(entry: TableEntry): TableGrid {
  const ports = TABLE_PORTS.map((port) => entry[port]);
  const height = Math.max(entry.outdoorF.length, ...ports.map((rows) => rows.length));
  const width = Math.max(entry.indoorF.length, ...ports.flatMap((rows) => rows.map((row) => row.length)));
  const rows = places(height).filter(
    (i) =>
      !isBlank(entry.outdoorF[i]) || ports.some((port) => (port[i] ?? []).some((cell) => !isBlank(cell))),
  );
  const columns = places(width).filter(
    (j) => !isBlank(entry.indoorF[j]) || ports.some((port) => port.some((row) => !isBlank(row[j]))),
  );
  return { rows: risingBy(entry.outdoorF, rows), columns: risingBy(entry.indoorF, columns) };
}

/**
 * What is still blank in an entry, rows and columns without anything in them left out.
 *
 * Check: tests/visit/charging-table-entry.test.ts
 */
export function tableGaps(entry: TableEntry): TableGaps {
  const { rows, columns } = tableGrid(entry);
  const blankOutdoor = rows.filter((i) => isBlank(entry.outdoorF[i]));
  const blankIndoor = columns.filter((j) => isBlank(entry.indoorF[j]));
  const blankOf = (port: TablePort) =>
    hasPressures(entry, port)
      ? rows.flatMap((i) => columns.filter((j) => isBlank(entry[port][i]?.[j])).map((j) => [port, i, j]))
      : [];
  const [suction, discharge] = [blankOf('suctionPsig'), blankOf('dischargePsig')];
  const firstBlank = [
    ...blankOutdoor.map((i) => ['outdoorF', i]),
    ...blankIndoor.map((j) => ['indoorF', j]),
    ...suction,
    ...discharge,
  ][0];
  return {
    outdoorCount: blankOutdoor.length,
    indoorCount: blankIndoor.length,
    suctionCount: suction.length,
    dischargeCount: discharge.length,
    cellCount: rows.length * columns.length,
    rowCount: rows.length,
    columnCount: columns.length,
    noPressures: !TABLE_PORTS.some((port) => hasPressures(entry, port)),
    ...(firstBlank === undefined ? {} : { firstBlank }),
  };
}

/** Whether anything of a pressure was typed. */
export function hasPressures(entry: TableEntry, port: TablePort): boolean {
  return entry[port].some((row) => row.some((cell) => !isBlank(cell)));
}

function isBlank(cell: unknown): boolean {
  return cell === undefined || cell === null || (typeof cell === 'string' && cell.trim() === '');
}

function places(count: number): number[] {
  return Array.from({ length: Math.max(0, count) }, (_, i) => i);
}

function risingBy(temperatures: readonly unknown[], kept: readonly number[]): readonly number[] {
  const at = (i: number): number => {
    const typed = temperatures[i];
    return typeof typed === 'number' ? typed : Number.NaN;
  };
  return kept.every((i) => Number.isFinite(at(i))) ? [...kept].sort((a, b) => at(a) - at(b)) : kept;
}
