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
  const keys = Object.keys(inputs) as K[];
  const best = Object.fromEntries(keys.map((key) => [key, inputs[key].value])) as Record<K, number>;
  const value = f(best);
  invariant(isFiniteNumber(value), `result ${value} at ${JSON.stringify(best)}`);
  const variances = keys.map((key) => contribution(f, best, key, inputs[key].sd, value) ** 2);
  const variance = variances.reduce((sum, part) => sum + part, 0);
  const shares = keys.map((key, i) => [key, variance > 0 ? (variances[i] ?? 0) / variance : 0]);
  return { value, sd: Math.sqrt(variance), shareFrac: Object.fromEntries(shares) as Record<K, number> };
}

function contribution<K extends string>(
  f: (values: Readonly<Record<K, number>>) => number | undefined,
  best: Readonly<Record<K, number>>,
  key: K,
  sd: number,
  value: number,
): number {
  invariant(sd >= 0 && Number.isFinite(sd), `sd ${sd} of ${key}`);
  if (sd === 0) return 0;
  const up = f({ ...best, [key]: best[key] + sd });
  const down = f({ ...best, [key]: best[key] - sd });
  if (isFiniteNumber(up) && isFiniteNumber(down)) return (up - down) / 2;
  if (isFiniteNumber(up)) return up - value;
  invariant(isFiniteNumber(down), `no finite result on either side of ${key}`);
  return value - down;
}

function isFiniteNumber(value: number | undefined): value is number {
  return Number.isFinite(value);
}
