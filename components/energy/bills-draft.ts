import { type Draft, type DraftValue, listAt, textAt, withValue } from '@/components/draft/draft-tree';
import type { Bill } from '@/lib/visit/bills';

/**
 * The draft with bills taken over from a table: a bill of the same days takes the old one's place, others join; in
 * order of time.
 *
 * Check: tests/screens/bills-draft.test.ts
 */
export function withBills(draft: Draft, bills: readonly Bill[]): Draft {
  const fresh: DraftValue[] = bills.map((bill) =>
    Object.fromEntries(
      Object.entries(bill).flatMap(([key, v]) => (v === undefined ? [] : [[key, v] as const])),
    ),
  );
  const period = (bill: DraftValue) => `${textAt(bill, 'fromDate')} ${textAt(bill, 'toDate')}`;
  const taken = new Set(fresh.map(period));
  const kept = listAt(draft, 'bills').filter((bill) => !taken.has(period(bill)));
  const all = [...kept, ...fresh].sort((a, b) =>
    period(a) < period(b) ? -1 : Number(period(a) > period(b)),
  );
  return withValue(draft, 'bills', all);
}
