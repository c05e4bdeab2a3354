import { type Estimate, estimate } from '../math/estimate';
import { type Assumption, resolveAssumption } from '../visit/assumption';
import type { Saying } from '../visit/wording';
import table from './data/assumption-limits.json';

/** Assumptions that the comparison uses. */
export type FinanceKey = keyof typeof table.limits;
export const financeKeys = Object.keys(table.limits) as FinanceKey[];

export type BoundedAssumption = {
  readonly value: Estimate;
  readonly setBy: 'keepworth' | 'visit';
  readonly note?: Saying;
};

/**
 * Assumption in the range where money can be computed with it.
 *
 * @param overrides assumptions stored in the visit
 * @param key  name of the assumption
 * @returns low / likely / high, each brought inside the limits; a note when one was outside
 * Source: data/assumption-limits.json
 * Check: tests/finance/bounded-assumption.test.ts
 */
export function boundedAssumption(overrides: readonly Assumption[], key: FinanceKey): BoundedAssumption {
  const { low, likely, high, label, setBy } = resolveAssumption(overrides, key);
  const { min, max } = table.limits[key];
  const inside = (x: number) => Math.min(max, Math.max(min, x));
  const value = estimate(inside(low), inside(likely), inside(high));
  if (value.low === low && value.high === high) return { value, setBy };
  return {
    value,
    setBy,
    note: { code: 'assumptionOutOfLimits', values: { key, assumption: label, min, max } },
  };
}
