import { expect, test } from 'vitest';
import { resolveAssumption } from '@/lib/visit/assumption';
import { assumptionsOn, noShopDefaults, ShopDefaults } from '@/lib/visit/shop-defaults';

const set = (fromDate: string, likely: number | undefined) => ({
  fromDate,
  setBy: 'Ada',
  why: 'counted',
  key: 'medianLifeYears' as const,
  ...(likely === undefined
    ? {}
    : { values: { low: likely - 2, likely, high: likely + 2, source: 'records' } }),
});
const defaults = ShopDefaults.parse({
  ...noShopDefaults,
  history: [set('2026-03-01', 16), set('2026-06-01', 17), set('2026-09-01', undefined)],
});
const words = (_entry: unknown, source: string) => `the shop: ${source}`;

test('property: a new visit starts with what the shop assumes on its date, and with nothing once it was taken back', () => {
  expect(assumptionsOn(defaults, '2026-01-01', words)).toEqual([]);
  const march = assumptionsOn(defaults, '2026-03-01', words);
  expect(march).toEqual([
    { key: 'medianLifeYears', low: 14, likely: 16, high: 18, source: 'the shop: records', setBy: 'Ada' },
  ]);
  expect(resolveAssumption(march, 'medianLifeYears')).toMatchObject({ likely: 16, setBy: 'visit' });
  expect(assumptionsOn(defaults, '2026-08-31', words)[0]?.likely).toBe(17);
  expect(assumptionsOn(defaults, '2026-09-01', words)).toEqual([]);
});

test('property: values out of order or without a source are refused', () => {
  const entry = set('2026-03-01', 16);
  const parses = (values: object) =>
    ShopDefaults.safeParse({ ...noShopDefaults, history: [{ ...entry, values }] }).success;
  expect(parses({ low: 1, likely: 2, high: 3, source: 'records' })).toBe(true);
  expect(parses({ low: 3, likely: 2, high: 3, source: 'records' })).toBe(false);
  expect(parses({ low: 1, likely: 2, high: 3, source: '' })).toBe(false);
});
