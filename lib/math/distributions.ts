import { invariant } from './invariant';
import { regularisedBeta } from './regularised-beta';

/**
 * Inverse of the triangular distribution function.
 *
 * @param p     probability, 0..1
 * @param min   smallest value (0 % point, not the 10 % point of an Estimate)
 * @param mode  most likely value, min <= mode <= max
 * @param max   largest value; min === max gives that value
 * @returns value in the unit of min
 * @throws invariant if p is outside 0..1 or the order is wrong
 * Source: integral of the triangular density, status computed
 * Check: tests/math/distributions.test.ts
 */
export function triangularQuantile(p: number, min: number, mode: number, max: number): number {
  checkArguments(p, min, mode, max);
  const width = max - min;
  if (width === 0) return min;
  const split = (mode - min) / width;
  return p <= split
    ? min + Math.sqrt(p * width * (mode - min))
    : max - Math.sqrt((1 - p) * width * (max - mode));
}

/**
 * Inverse of the PERT distribution function: a beta distribution on min..max with mean (min + 4 mode + max) / 6.
 * Solved by safeguarded Newton steps; for many draws of one distribution use `pertQuantileTable`.
 *
 * @param p     probability, 0..1
 * @param min   smallest value (0 % point)
 * @param mode  most likely value, min <= mode <= max
 * @param max   largest value; min === max gives that value
 * @returns value in the unit of min, to about 1e-12 of the width
 * @throws invariant if p is outside 0..1 or the order is wrong
 * Source: Malcolm D. G. and others, Operations Research 7(5) 1959, 646-669 (shape 4), status memory
 * Check: tests/math/distributions.test.ts
 */
export function pertQuantile(p: number, min: number, mode: number, max: number): number {
  checkArguments(p, min, mode, max);
  const width = max - min;
  if (width === 0) return min;
  const alpha = 1 + (4 * (mode - min)) / width;
  return min + width * betaQuantile(p, alpha, 6 - alpha);
}

/**
 * Sampler for many draws of one PERT distribution: the inverse tabulated once, then linear between points that
 * are dense in the tails; the outermost 0.012 % on each side is solved exactly.
 *
 * @param min   smallest value
 * @param mode  most likely value, min <= mode <= max
 * @param max   largest value
 * @returns function from probability 0..1 to value; within 0.02 % of the width of `pertQuantile`
 * @throws invariant if the order is wrong
 * Check: tests/math/distributions.test.ts
 */
export function pertQuantileTable(min: number, mode: number, max: number): (p: number) => number {
  const cells = 256;
  const edge = 8;
  const values = new Float64Array(cells + 1);
  for (let i = 0; i <= cells; i += 1) values[i] = pertQuantile(tailDense(i / cells), min, mode, max);
  return (p) => {
    invariant(p >= 0 && p <= 1, `probability ${p}`);
    const place = tailDenseInverse(p) * cells;
    if (place < edge || place > cells - edge) return pertQuantile(p, min, mode, max);
    const i = Math.floor(place);
    const left = values[i] ?? min;
    return left + ((values[i + 1] ?? max) - left) * (place - i);
  };
}

function tailDense(u: number): number {
  return u < 0.5 ? 4 * u * u * u : 1 - 4 * (1 - u) ** 3;
}

function tailDenseInverse(p: number): number {
  return p < 0.5 ? Math.cbrt(p / 4) : 1 - Math.cbrt((1 - p) / 4);
}

/**
 * Inverse of the beta distribution function, by safeguarded Newton steps.
 *
 * @param p  probability; at or below 0 gives 0, at or above 1 gives 1
 * @param a  first shape, > 0
 * @param b  second shape, > 0
 * @returns value 0..1, to about 1e-14
 * @throws invariant if a shape is not above 0
 * Check: tests/math/distributions.test.ts
 */
export function betaQuantile(p: number, a: number, b: number): number {
  if (p <= 0) return 0;
  if (p >= 1) return 1;
  let low = 0;
  let high = 1;
  let x = a / (a + b);
  for (let i = 0; i < 100; i += 1) {
    const { value, density } = regularisedBeta(x, a, b);
    if (value < p) low = x;
    else high = x;
    const newton = x - (value - p) / density;
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - x) <= 1e-14 || high - low <= 1e-14) return next;
    x = next;
  }
  return x;
}

function checkArguments(p: number, min: number, mode: number, max: number): void {
  invariant(p >= 0 && p <= 1, `probability ${p}`);
  invariant(min <= mode && mode <= max && Number.isFinite(max - min), `order ${min}, ${mode}, ${max}`);
}
