import { expect, test } from 'vitest';
import { insideShopLimits, shopLimits } from '@/lib/finance/shop-limits';
import { resolveAssumption } from '@/lib/visit/assumption';
import { assumptionKeys } from '@/lib/visit/assumption-keys';

const set = (low: number, likely: number, high: number) => ({
  fromDate: '2026-12-01',
  setBy: 'Ada',
  why: 'counted',
  key: 'powerFactorFrac' as const,
  values: { low, likely, high, source: 'records' },
});

test('property: every default lies inside the limits a shop has, and no share of a whole may pass 1', () => {
  const outside = assumptionKeys.filter((key) => {
    const { low, high } = resolveAssumption([], key);
    const { min, max } = shopLimits(key);
    return low < min || high > max;
  });
  expect(outside).toEqual([]);
  expect(shopLimits('powerFactorFrac')).toEqual({ min: 0, max: 1 });
  expect(shopLimits('medianLifeYears')).toEqual({ min: 3, max: 60 });
});

test('property: what lies outside is told from what lies inside; taking it back is always inside', () => {
  expect(insideShopLimits(set(0.8, 0.9, 1))).toBe(true);
  expect(insideShopLimits(set(0.8, 0.9, 1.01))).toBe(false);
  expect(insideShopLimits(set(-0.1, 0.9, 1))).toBe(false);
  const { values: _gone, ...back } = set(0, 0, 0);
  expect(insideShopLimits(back)).toBe(true);
});
