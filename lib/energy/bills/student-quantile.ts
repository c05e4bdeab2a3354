import { findRoot } from '../../math/brent';
import { invariant } from '../../math/invariant';
import { regularisedBeta } from '../../math/regularised-beta';

/**
 * Two-sided quantile of Student's t: the value that |t| exceeds with the given probability.
 *
 * @param tailFrac  probability of both tails together, 0.0001..0.9999
 * @param degrees   degrees of freedom, >= 1
 * @throws invariant if out of range
 * Source: P(|t| > x) = I(nu / (nu + x^2); nu/2, 1/2), NIST Digital Library of Mathematical Functions 8.17, memory
 * Check: tests/energy/bills/student-quantile.test.ts
 */
export function studentQuantile(tailFrac: number, degrees: number): number {
  invariant(tailFrac >= 0.0001 && tailFrac <= 0.9999 && degrees >= 1, `t quantile ${tailFrac}, ${degrees}`);
  const miss = (x: number): number =>
    regularisedBeta(degrees / (degrees + x * x), degrees / 2, 0.5).value - tailFrac;
  const root = findRoot(miss, 0, 10_000, 1e-9);
  invariant(root.kind === 'root', `no t quantile for ${tailFrac}, ${degrees}`);
  return root.x;
}
