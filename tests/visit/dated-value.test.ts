import { expect, test } from 'vitest';
import { byFromDate, inForce } from '@/lib/visit/dated-value';

const history = [
  { fromDate: '2026-03-01', usd: 2 },
  { fromDate: '2025-01-01', usd: 1 },
  { fromDate: '2026-03-01', usd: 3 },
];

test('property: the price of a date is the last one begun by then, whatever the order of the list', () => {
  expect(inForce(history, '2026-02-28')?.usd).toBe(1);
  expect(inForce(history, '2026-03-01')?.usd).toBe(3);
  expect(inForce([...history].reverse(), '2026-12-31')?.usd).toBe(2);
  expect(inForce(history, '2024-12-31')).toBeUndefined();
});

test('identity: order of time keeps what began on one day in the order of the list', () => {
  expect([...history].sort(byFromDate).map(({ usd }) => usd)).toEqual([1, 2, 3]);
  expect(
    [...history]
      .reverse()
      .sort(byFromDate)
      .map(({ usd }) => usd),
  ).toEqual([1, 3, 2]);
});
