import { invariant } from './invariant';

/**
 * Shares of a whole as counts out of so many, adding up exactly: whole parts first, then one more to the largest
 * remainders, ties to the earlier share.
 *
 * @param fracs  shares, each >= 0, adding up to 1
 * @param of     how many, whole, >= 1
 * @returns one count for each share, in order; each within one of its exact value
 * @throws invariant if the shares do not add up to 1
 * Source: largest-remainder method; computed
 * Check: tests/math/apportion.test.ts
 */
export function apportion(fracs: readonly number[], of: number): number[] {
  const sum = fracs.reduce((a, b) => a + b, 0);
  invariant(Math.abs(sum - 1) < 1e-9 && fracs.every((f) => f >= 0), `shares add up to ${sum}`);
  const whole = fracs.map((f) => Math.floor(f * of + 1e-9));
  let left = of - whole.reduce((a, b) => a + b, 0);
  const byRemainder = fracs
    .map((f, i) => ({ i, rest: f * of - (whole[i] ?? 0) }))
    .sort((a, b) => b.rest - a.rest || a.i - b.i);
  for (const { i } of byRemainder) {
    if (left <= 0) break;
    whole[i] = (whole[i] ?? 0) + 1;
    left -= 1;
  }
  return whole;
}
