import { resolveAssumption } from '../visit/assumption';
import type { AssumptionKey } from '../visit/assumption-keys';
import type { ShopAssumption } from '../visit/shop-defaults';
import { type FinanceKey, financeKeys } from './bounded-assumption';
import table from './data/assumption-limits.json';

/**
 * Limits inside which a shop may set an assumption, in the unit of the table of assumptions.
 *
 * Source: data/assumption-limits.json, our own choice
 * Check: tests/finance/shop-limits.test.ts
 */
export function shopLimits(key: AssumptionKey): { readonly min: number; readonly max: number } {
  if (isFinanceKey(key)) return table.limits[key];
  const { unit, high } = resolveAssumption([], key);
  const max = table.others.timesHigh * high;
  return { min: 0, max: unit === 'frac' && high <= 1 ? Math.min(1, max) : max };
}

/** Whether what a shop set lies inside the limits. Check: tests/finance/shop-limits.test.ts */
export function insideShopLimits({ key, values }: ShopAssumption): boolean {
  const { min, max } = shopLimits(key);
  return values === undefined || (values.low >= min && values.high <= max);
}

function isFinanceKey(key: AssumptionKey): key is FinanceKey & AssumptionKey {
  return (financeKeys as readonly string[]).includes(key);
}
