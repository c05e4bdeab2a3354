import { invariant } from './invariant';

export type Uncertain = { readonly value: number; readonly sd: number };

export type Propagated<K extends string> = {
  readonly value: number;
  readonly sd: number;
  /** share of the variance due to each input, adding up to 1; all 0 when the variance is 0 */
  readonly shareFrac: Readonly<Record<K, number>>;
};

/**
 * Standard uncertainty of a result computed from independent inputs, to first order: each input is moved by its
 * own standard uncertainty both ways, half the difference is its contribution, and contributions add as squares.
 *
 * @param f  the computation; must give a number at `inputs`, and may give undefined where it has no answer
 * @param inputs  best value and standard uncertainty [input's own unit], sd >= 0, taken as independent
 * @returns value, sd in the unit of the result, and each input's share of the variance
 * @throws invariant if an sd is negative, or f has no finite answer at the best values or on both sides of them
 * One side without answer (a limit of the computation's range): the whole difference of the other side is used.
 * Source: JCGM 100:2008 (GUM), 5.1.2 equation (10) and 5.1.3 note 2, status memory
 * Check: tests/math/propagate.test.ts
 */
export function propagate<K extends string>(
  f: (values: Readonly<Record<K, number>>) => number | undefined,
  inputs: Readonly<Record<K, Uncertain>>,
): Propagated<K> {
  const found = propagateOrNone(f, inputs);
  if ('why' in found) {
    const { at, why } = found;
    invariant(false, at === undefined ? `result ${why}` : `no finite result on either side of ${at}`);
  }
  return found;
}

/** Why there is no result: none at the best values, or (`at`) none on either side of one of them. */
export type NotPropagated<K extends string> = { readonly why: string; readonly at?: K };

/**
 * As `propagate`, for a computation that may have no answer at the best values or on both sides of them.
 *
 * @param f  called with one object whose fields change between calls: it must not keep it
 * @returns as `propagate`, or why there is none
 * @throws invariant if an sd is negative
 * Check: tests/math/propagate.test.ts
 */
export function propagateOrNone<K extends string>(
  f: (values: Readonly<Record<K, number>>) => number | undefined,
  inputs: Readonly<Record<K, Uncertain>>,
): Propagated<K> | NotPropagated<K> {
  const keys = Object.keys(inputs) as K[];
  const values = {} as Record<K, number>;
  for (const key of keys) values[key] = inputs[key].value;
  const value = f(values);
  if (!isFiniteNumber(value)) return { why: `${value} at ${JSON.stringify(values)}` };
  const variances = new Float64Array(keys.length);
  let variance = 0;
  for (const [i, key] of keys.entries()) {
    const moved = contribution(f, values, key, inputs[key], value);
    if (moved === undefined) return { why: 'one side at least must answer', at: key };
    variances[i] = moved ** 2;
    variance += moved ** 2;
  }
  const shareFrac = {} as Record<K, number>;
  for (const [i, key] of keys.entries()) shareFrac[key] = variance > 0 ? (variances[i] ?? 0) / variance : 0;
  return { value, sd: Math.sqrt(variance), shareFrac };
}

function contribution<K extends string>(
  f: (values: Readonly<Record<K, number>>) => number | undefined,
  values: Record<K, number>,
  key: K,
  { value: best, sd }: Uncertain,
  value: number,
): number | undefined {
  invariant(sd >= 0 && Number.isFinite(sd), `sd ${sd} of ${key}`);
  if (sd === 0) return 0;
  values[key] = best + sd;
  const up = f(values);
  values[key] = best - sd;
  const down = f(values);
  values[key] = best;
  if (isFiniteNumber(up) && isFiniteNumber(down)) return (up - down) / 2;
  if (isFiniteNumber(up)) return up - value;
  return isFiniteNumber(down) ? value - down : undefined;
}

function isFiniteNumber(value: number | undefined): value is number {
  return Number.isFinite(value);
}
