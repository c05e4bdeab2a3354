import { invariant } from './invariant';

export type RootResult =
  | { readonly kind: 'root'; readonly x: number; readonly iterations: number }
  | { readonly kind: 'none'; readonly why: 'no sign change' | 'too many iterations' | 'not a number' };

const EPSILON = 2.220446049250313e-16;

/**
 * Root of a continuous function between two points where it has opposite signs (Brent's method: inverse
 * quadratic interpolation and secant steps, with bisection as the safeguard).
 *
 * @param f  continuous function, same units for its argument as `low` and `high`
 * @param low   one end of the bracket
 * @param high  other end of the bracket, > low
 * @param tolerance  absolute tolerance on the root, >= 0 (machine precision is added)
 * @param maxIterations  whole number >= 1
 * @returns the root, or `none` when the ends have equal sign, f gives NaN, or the iterations run out
 * @throws invariant if low >= high or an end is not finite
 * Outside the bracket: never evaluated.
 * Source: Brent R. P., Algorithms for Minimization Without Derivatives, Prentice-Hall 1973, ch. 4; status memory
 * Check: tests/math/brent.test.ts
 */
export function findRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance = 1e-10,
  maxIterations = 200,
): RootResult {
  invariant(Number.isFinite(low) && Number.isFinite(high) && low < high, `bracket ${low}..${high}`);
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (Number.isNaN(fa) || Number.isNaN(fb)) return { kind: 'none', why: 'not a number' };
  if (fa === 0) return { kind: 'root', x: a, iterations: 0 };
  if (fb === 0) return { kind: 'root', x: b, iterations: 0 };
  if (fa > 0 === fb > 0) return { kind: 'none', why: 'no sign change' };
  let c = a;
  let fc = fa;
  let step = b - a;
  let previousStep = step;
  for (let iteration = 1; iteration <= maxIterations; iteration += 1) {
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      previousStep = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const limit = 2 * EPSILON * Math.abs(b) + 0.5 * tolerance;
    const half = 0.5 * (c - b);
    if (Math.abs(half) <= limit || fb === 0) return { kind: 'root', x: b, iterations: iteration };
    if (Math.abs(previousStep) >= limit && Math.abs(fa) > Math.abs(fb)) {
      const proposed = interpolatedStep(a, b, c, fa, fb, fc);
      const bound = Math.min(3 * Math.abs(half) - limit, Math.abs(previousStep));
      const usable = 2 * Math.abs(proposed) < bound && proposed > 0 === half > 0;
      previousStep = usable ? step : half;
      step = usable ? proposed : half;
    } else {
      step = half;
      previousStep = half;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > limit ? step : Math.sign(half) * limit;
    fb = f(b);
    if (Number.isNaN(fb)) return { kind: 'none', why: 'not a number' };
  }
  return { kind: 'none', why: 'too many iterations' };
}

function interpolatedStep(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa;
  if (a === c) return ((c - b) * s) / (s - 1);
  const q = fa / fc;
  const r = fb / fc;
  const p = s * ((c - b) * q * (q - r) - (b - a) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1));
}
