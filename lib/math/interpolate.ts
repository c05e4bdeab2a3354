import { invariant } from './invariant';

/** Where a point lies against the grid it was looked up in. */
export type Beyond = 'inside' | 'below' | 'above';

/** What to do outside the grid: keep the edge value, or go on with the last cell's slope. */
export type OutsidePolicy = 'clamp' | 'continue';

export type Interpolated = { readonly value: number; readonly beyond: Beyond };

export type Interpolated2 = { readonly value: number; readonly beyondX: Beyond; readonly beyondY: Beyond };

/**
 * Linear interpolation on a strictly rising grid.
 *
 * @param xs  grid, strictly rising, length >= 1
 * @param ys  values, same length as xs
 * @param x   point, same unit as xs
 * @param outside  `clamp` (default) keeps the edge value, `continue` goes on by the outermost cell's slope
 * @returns value in the unit of ys, and a mark saying whether x was beyond the grid
 * @throws invariant if the grid is empty, lengths differ, or x is not finite
 * Outside the grid: by `outside`, always marked.
 * Check: tests/math/interpolate.test.ts
 */
export function interpolateLinear(
  xs: readonly number[],
  ys: readonly number[],
  x: number,
  outside: OutsidePolicy = 'clamp',
): Interpolated {
  invariant(xs.length >= 1 && xs.length === ys.length, `grid of ${xs.length} and ${ys.length}`);
  const beyond = placeOf(xs, x);
  const cell = cellOf(xs, x, outside);
  const value = mix(at(ys, cell.i), at(ys, cell.j), cell.t);
  return { value, beyond };
}

/**
 * Bilinear interpolation on a strictly rising rectangular grid.
 *
 * @param xs  grid of the first axis, strictly rising
 * @param ys  grid of the second axis, strictly rising
 * @param table  table[i][j] is the value at xs[i], ys[j]
 * @param x  point on the first axis
 * @param y  point on the second axis
 * @param outside  `clamp` (default) or `continue`, for each axis on its own
 * @returns value and a mark per axis
 * @throws invariant if the table's shape does not fit the grids, or x or y is not finite
 * Outside the grid: by `outside`, always marked.
 * Check: tests/math/interpolate.test.ts
 */
export function interpolateBilinear(
  xs: readonly number[],
  ys: readonly number[],
  table: readonly (readonly number[])[],
  x: number,
  y: number,
  outside: OutsidePolicy = 'clamp',
): Interpolated2 {
  invariant(xs.length >= 1 && xs.length === table.length, `${table.length} rows for ${xs.length} points`);
  const row = cellOf(xs, x, outside);
  const column = cellOf(ys, y, outside);
  const along = (i: number): number => {
    const values = table[i];
    invariant(values !== undefined && values.length === ys.length, `row ${i} does not fit the grid`);
    return mix(at(values, column.i), at(values, column.j), column.t);
  };
  return { value: mix(along(row.i), along(row.j), row.t), beyondX: placeOf(xs, x), beyondY: placeOf(ys, y) };
}

type Cell = { readonly i: number; readonly j: number; readonly t: number };

function placeOf(xs: readonly number[], x: number): Beyond {
  invariant(Number.isFinite(x), `point ${x} is not finite`);
  if (x < at(xs, 0)) return 'below';
  return x > at(xs, xs.length - 1) ? 'above' : 'inside';
}

function cellOf(xs: readonly number[], x: number, outside: OutsidePolicy): Cell {
  if (xs.length === 1) return { i: 0, j: 0, t: 0 };
  let i = 0;
  let j = xs.length - 1;
  while (j - i > 1) {
    const middle = (i + j) >> 1;
    if (at(xs, middle) <= x) i = middle;
    else j = middle;
  }
  const width = at(xs, j) - at(xs, i);
  invariant(width > 0, `grid does not rise at ${at(xs, j)}`);
  const t = (x - at(xs, i)) / width;
  return { i, j, t: outside === 'clamp' ? Math.min(1, Math.max(0, t)) : t };
}

function mix(a: number, b: number, t: number): number {
  return t === 1 ? b : a + (b - a) * t;
}

function at(values: readonly number[], i: number): number {
  const value = values[i];
  invariant(value !== undefined, `index ${i} of ${values.length}`);
  return value;
}
