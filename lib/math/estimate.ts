import { invariant } from './invariant';

/** A value with its range: low is the 10 % point, high the 90 % point, likely the best single value. */
export type Estimate = { readonly low: number; readonly likely: number; readonly high: number };

/** Standard normal deviate of the 90 % point (and, negated, of the 10 % point). Status: computed. */
export const Z_10_90 = 1.2815515655446004;

/**
 * Estimate with its ordering checked.
 *
 * @param low     10 % point
 * @param likely  best single value, low <= likely <= high
 * @param high    90 % point
 * @throws invariant if not finite or out of order
 * Check: tests/math/estimate.test.ts
 */
export function estimate(low: number, likely: number, high: number): Estimate {
  invariant(
    Number.isFinite(low) && Number.isFinite(likely) && Number.isFinite(high),
    `estimate ${low}, ${likely}, ${high} is not finite`,
  );
  invariant(low <= likely && likely <= high, `estimate ${low}, ${likely}, ${high} is out of order`);
  return { low, likely, high };
}

/**
 * Estimate of a value known exactly.
 *
 * @param value  the value; low, likely and high are all equal to it
 * Check: tests/math/estimate.test.ts
 */
export function exactEstimate(value: number): Estimate {
  return estimate(value, value, value);
}

/**
 * Estimate from a mean and a standard uncertainty, taken as normal.
 *
 * @param mean  becomes `likely`
 * @param sd    standard uncertainty, >= 0
 * @param z     deviate of the high point; default: 10 % and 90 % points
 * @throws invariant if sd or z is negative or a value is not finite
 * Check: tests/math/estimate.test.ts
 */
export function estimateFromMeanSd(mean: number, sd: number, z = Z_10_90): Estimate {
  invariant(sd >= 0 && z >= 0, `sd ${sd}, z ${z}`);
  return estimate(mean - z * sd, mean, mean + z * sd);
}

/**
 * Standard deviation of the normal distribution whose 10 % and 90 % points are the estimate's low and high.
 *
 * @param value  the estimate; its skewness is not kept
 * @returns sd in the estimate's unit, >= 0
 * Check: tests/math/estimate.test.ts
 */
export function sdOfEstimate(value: Estimate): number {
  return (value.high - value.low) / (2 * Z_10_90);
}

/**
 * Sum of two estimates that move together: lows add to lows, highs to highs. Wider than independence would give.
 *
 * Check: tests/math/estimate.test.ts
 */
export function addEstimates(a: Estimate, b: Estimate): Estimate {
  return estimate(a.low + b.low, a.likely + b.likely, a.high + b.high);
}

/**
 * Sum of independent estimates: half-ranges below and above add by root sum of squares.
 *
 * @param values  any number of estimates in one unit; none gives an exact 0
 * Check: tests/math/estimate.test.ts
 */
export function addIndependentEstimates(values: readonly Estimate[]): Estimate {
  let likely = 0;
  let below = 0;
  let above = 0;
  for (const value of values) {
    likely += value.likely;
    below += (value.likely - value.low) ** 2;
    above += (value.high - value.likely) ** 2;
  }
  return estimate(likely - Math.sqrt(below), likely, likely + Math.sqrt(above));
}

/**
 * Estimate times a known factor. A negative factor swaps low and high.
 *
 * Check: tests/math/estimate.test.ts
 */
export function scaleEstimate(value: Estimate, factor: number): Estimate {
  const a = value.low * factor;
  const b = value.high * factor;
  return estimate(Math.min(a, b), value.likely * factor, Math.max(a, b));
}

/**
 * Value at a standard normal deviate of a distribution with given 10, 50 and 90 % points: half a normal curve below
 * the middle, another above, so that all three points are met exactly.
 *
 * @param value  low / likely / high as 10 / 50 / 90 % points
 * @param z      standard normal deviate
 * Source: two-piece normal distribution; computed
 * Check: tests/math/estimate.test.ts
 */
export function twoPiece(value: Estimate, z: number): number {
  const side = z < 0 ? value.likely - value.low : value.high - value.likely;
  return value.likely + (z / Z_10_90) * side;
}
