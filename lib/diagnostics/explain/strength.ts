import data from './data/strength.json';

/** How strongly a piece of evidence speaks, either way. */
export type Strength = 'weak' | 'clear' | 'strong' | 'veryStrong';

/**
 * Word for how far a piece of evidence moves the odds of a cause.
 *
 * @param weight  natural logarithm of the factor on the odds; its sign does not matter
 * Source: data/strength.json, status memory
 * Check: tests/diagnostics/explain/strength.test.ts
 */
export function strengthOf(weight: number): Strength {
  const size = Math.abs(weight);
  const { clear, strong, veryStrong } = data.lnOdds;
  if (size < clear) return 'weak';
  if (size < strong) return 'clear';
  return size < veryStrong ? 'strong' : 'veryStrong';
}
