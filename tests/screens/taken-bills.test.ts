import { expect, test } from 'vitest';
import { createDraftStore } from '@/components/draft/draft-store';
import { listAt, textAt } from '@/components/draft/draft-tree';
import { takenBills } from '@/components/energy/taken-bills';

const months = Array.from({ length: 12 }, (_, m) => `2025-${String(m + 1).padStart(2, '0')}`);
const byMonth = ['Month,kWh', ...months.map((month) => `${month},700`)].join('\n');
const reads = [...months.slice(1), '2026-01'].map((next, m) => [`${months[m]}-03`, `${next}-03`] as const);
const byReads = ['From,To,kWh,Cost', ...reads.map(([from, to]) => `${from},${to},710,99.40`)].join('\n');

test('regression: bills of other read dates are not told as taken over, and can replace those there', () => {
  const store = createDraftStore({}, 1);
  expect(takenBills(store, byMonth)).toEqual({ done: '12 bills taken over.', notes: [] });
  const before = store.get().draft;
  const read = takenBills(store, byReads);
  expect(read.done).toBe(
    'None of these 12 bills counts: their days are in the bills already there. Nothing was changed.',
  );
  expect(store.get().draft).toBe(before);
  expect(read.offer?.words).toBe('Replace the bills that are there');
  expect(read.offer?.take().done).toBe('12 bills taken over.');
  const costs = listAt(store.get().draft, 'bills').map((bill) => textAt(bill, 'costUsd'));
  expect(costs).toEqual(Array(12).fill('99.4'));
  store.undo();
  expect(store.get().draft).toBe(before);
});

test('regression: bills that push out those there say how many, and can replace them', () => {
  const store = createDraftStore({}, 1);
  takenBills(store, byReads);
  const read = takenBills(store, byMonth);
  expect(read.done).toBe(
    '12 bills taken over. Days of theirs are in 12 of the bills that were there, which no longer count.',
  );
  read.offer?.take();
  expect(listAt(store.get().draft, 'bills')).toHaveLength(12);
});
