/** Damped Newton steps on three equations with three unknowns; the misses come back with the solution. */
export type Triple = readonly [number, number, number];
export type Solution = { readonly kind: 'solved' | 'stuck'; readonly at: Triple; readonly norm: number };

const STEP: Triple = [0.02, 0.02, 0.02];
const LONGEST: Triple = [6, 6, 4];

/**
 * Root of three functions near a start.
 *
 * @param misses functions; an exception counts as infinitely far
 * @param start first guess
 * @param tolerance largest norm that counts as solved
 * Check: tests/synthesis/solve-three.test.ts
 */
export function solveThree(misses: (at: Triple) => Triple, start: Triple, tolerance = 1e-8): Solution {
  const tryAt = (at: Triple): Triple | undefined => {
    try {
      const m = misses(at);
      return m.every(Number.isFinite) ? m : undefined;
    } catch {
      return undefined;
    }
  };
  let at = start;
  let miss = tryAt(at);
  if (miss === undefined) return { kind: 'stuck', at, norm: Number.POSITIVE_INFINITY };
  for (let round = 0; round < 60; round += 1) {
    const norm = size(miss);
    if (norm < tolerance) return { kind: 'solved', at, norm };
    const step = newtonStep(tryAt, at, miss);
    if (step === undefined) return { kind: 'stuck', at, norm };
    const moved = walk(tryAt, at, step, norm);
    if (moved === undefined) return { kind: 'stuck', at, norm };
    at = moved.at;
    miss = moved.miss;
  }
  return { kind: size(miss) < tolerance ? 'solved' : 'stuck', at, norm: size(miss) };
}

function size(m: Triple): number {
  return Math.hypot(...m);
}

function shifted(at: Triple, by: Triple, times: number): Triple {
  return [at[0] + by[0] * times, at[1] + by[1] * times, at[2] + by[2] * times];
}

function newtonStep(tryAt: (at: Triple) => Triple | undefined, at: Triple, miss: Triple): Triple | undefined {
  const columns: Triple[] = [];
  for (let i = 0; i < 3; i += 1) {
    const bump: Triple = [i === 0 ? STEP[0] : 0, i === 1 ? STEP[1] : 0, i === 2 ? STEP[2] : 0];
    const side = tryAt(shifted(at, bump, 1));
    if (side === undefined) return undefined;
    const h = STEP[i] ?? 1;
    columns.push([(side[0] - miss[0]) / h, (side[1] - miss[1]) / h, (side[2] - miss[2]) / h]);
  }
  const [a, b, c] = columns as [Triple, Triple, Triple];
  const det = determinant(a, b, c);
  if (Math.abs(det) < 1e-14) return undefined;
  const right: Triple = [-miss[0], -miss[1], -miss[2]];
  const step: Triple = [
    determinant(right, b, c) / det,
    determinant(a, right, c) / det,
    determinant(a, b, right) / det,
  ];
  const over = Math.max(...step.map((s, i) => Math.abs(s) / (LONGEST[i] ?? 1)));
  return over > 1 ? [step[0] / over, step[1] / over, step[2] / over] : step;
}

function determinant(a: Triple, b: Triple, c: Triple): number {
  return (
    a[0] * (b[1] * c[2] - b[2] * c[1]) -
    b[0] * (a[1] * c[2] - a[2] * c[1]) +
    c[0] * (a[1] * b[2] - a[2] * b[1])
  );
}

function walk(
  tryAt: (at: Triple) => Triple | undefined,
  at: Triple,
  step: Triple,
  norm: number,
): { at: Triple; miss: Triple } | undefined {
  for (let share = 1; share > 1e-4; share /= 2) {
    const next = shifted(at, step, share);
    const miss = tryAt(next);
    if (miss !== undefined && size(miss) < norm * (1 - 1e-4 * share)) return { at: next, miss };
  }
  return undefined;
}
