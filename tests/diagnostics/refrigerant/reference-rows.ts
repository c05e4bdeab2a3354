import type { RefrigerantName } from '@/lib/visit/refrigerant-names';
import file from '../../reference/refrigerants-check-values.json';

export const refrigerantNames: readonly RefrigerantName[] = [
  'R-22',
  'R-410A',
  'R-407C',
  'R-32',
  'R-454B',
  'R-134a',
];

export type TableName = 'saturation' | 'saturationFromGauge' | 'superheated' | 'isentropic' | 'subcooled';

export type Row = (column: string) => number;

/** Rows of one table of tests/reference/refrigerants-check-values.json, read by column name. */
export function referenceRows(name: RefrigerantName, table: TableName): Row[] {
  const { columns, rows } = file.refrigerants[name][table];
  return rows.map((row) => (column) => {
    const value = row[columns.indexOf(column)];
    if (typeof value !== 'number') throw new Error(`${name} ${table}: no number in column ${column}`);
    return value;
  });
}

export type PublishedCheck = {
  readonly refrigerant: string;
  readonly kind: string;
  readonly input: Readonly<Record<string, number>>;
  readonly expected: Readonly<Record<string, number>>;
  readonly source: string;
  readonly largestRelativeDeviationOfLibrary: number;
};

export const publishedChecks = file.publishedChecks as readonly PublishedCheck[];
