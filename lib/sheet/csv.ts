/** One cell of a table for spreadsheets; `undefined` is an empty cell. */
export type CsvCell = string | number | undefined;

/**
 * A table as CSV that a spreadsheet opens without running anything in it.
 * Text that begins like a formula (= + - @, tab, return) is led by an apostrophe; numbers stay numbers.
 *
 * @param rows  cells; numbers must be finite
 * @returns lines ended by CR LF, cells quoted where needed
 * Source: RFC 4180 (status memory) for quoting; the guard is common practice, no source
 * Check: tests/sheet/csv.test.ts
 */
export function csvText(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}

function csvCell(cell: CsvCell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return String(cell);
  const guarded = /^[\s]*[=+\-@]|^[\t\r\n]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(guarded) || guarded !== guarded.trim()
    ? `"${guarded.replaceAll('"', '""')}"`
    : guarded;
}
