import { invariant } from '../../math/invariant';

/** A published table with dashes: rows x columns, `null` where the rule has no answer. */
export type GapTable = {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
  readonly cells: readonly (readonly (number | null)[])[];
};

export type GapTableValue =
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'none'; readonly why: 'dash' | 'rowBelow' | 'rowAbove' | 'columnBelow' | 'columnAbove' };

/**
 * Bilinear value of a table with dashes.
 *
 * @param table  rows and columns in rising order
 * @param row    place along the rows, in their unit
 * @param column place along the columns, in their unit
 * @returns the value; `none` outside the table or where a cell that would count is a dash
 * @throws invariant if the table does not fit its grids
 * Check: tests/diagnostics/targets/target-superheat.test.ts
 */
export function gapTableValue(table: GapTable, row: number, column: number): GapTableValue {
  const r = place(table.rows, row);
  const c = place(table.columns, column);
  if (typeof r === 'string') return { kind: 'none', why: r === 'below' ? 'rowBelow' : 'rowAbove' };
  if (typeof c === 'string') return { kind: 'none', why: c === 'below' ? 'columnBelow' : 'columnAbove' };
  let value = 0;
  for (const [i, rowWeight] of r) {
    for (const [j, columnWeight] of c) {
      const weight = rowWeight * columnWeight;
      if (weight === 0) continue;
      const cell = table.cells[i]?.[j];
      invariant(cell !== undefined, `cell ${i}, ${j} of the table`);
      if (cell === null) return { kind: 'none', why: 'dash' };
      value += weight * cell;
    }
  }
  return { kind: 'value', value };
}

type Weights = readonly (readonly [number, number])[];

function place(grid: readonly number[], x: number): Weights | 'below' | 'above' {
  const first = grid[0];
  const last = grid.at(-1);
  invariant(first !== undefined && last !== undefined && Number.isFinite(x), `place ${x} on the grid`);
  if (x < first) return 'below';
  if (x > last) return 'above';
  let j = grid.findIndex((point) => point >= x);
  if (j === 0) j = 1;
  const left = grid[j - 1];
  const right = grid[j];
  invariant(left !== undefined && right !== undefined && right > left, 'grid of two points or more, rising');
  const t = (x - left) / (right - left);
  return [
    [j - 1, 1 - t],
    [j, t],
  ];
}
