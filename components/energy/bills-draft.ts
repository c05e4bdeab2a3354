import { type Draft, type DraftValue, listAt, textAt, withValue } from '@/components/draft/draft-tree';
import { billsApart } from '@/lib/energy/bills/check-bills';
import type { Bill } from '@/lib/visit/bills';

/**
 * The draft with bills taken over from a table: a bill of the same days takes the old one's place, others join; in
 * order of time.
 *
 * Check: tests/screens/bills-draft.test.ts
 */
export function withBills(draft: Draft, bills: readonly Bill[]): Draft {
  const all = [...keptBeside(draft, bills), ...bills.map(asRow)];
  return withValue(draft, 'bills', inTime(all));
}

/** The draft with the bills of a table in place of all there were. Check: tests/screens/bills-draft.test.ts */
export function withOnlyBills(draft: Draft, bills: readonly Bill[]): Draft {
  return withValue(draft, 'bills', inTime(bills.map(asRow)));
}

/**
 * How many bills would be left out of the year because days of theirs are in others: of a table, and of those there.
 * Bills of the table with the very days of old ones take their place, so neither is left out.
 *
 * Check: tests/screens/bills-draft.test.ts
 */
export function billsLeftOut(draft: Draft, bills: readonly Bill[]): { fresh: number; there: number } {
  const stay = keptBeside(draft, bills).filter((bill) => counted([bill]).size > 0);
  const fresh = bills.map(asRow);
  const [alone, before] = [counted(fresh), counted(stay)];
  const together = counted([...stay, ...fresh]);
  const lost = (rows: Iterable<DraftValue>) => [...rows].filter((row) => !together.has(row)).length;
  return { fresh: lost(alone), there: lost(before) };
}

/** The bills that share no day with one before them. */
function counted(rows: readonly DraftValue[]): ReadonlySet<DraftValue> {
  const rising = inTime(rows);
  // kilowatt-hours carry the place in the list through the check
  const dated = rising.map((row, kwh) => ({
    fromDate: textAt(row, 'fromDate'),
    toDate: textAt(row, 'toDate'),
    kwh,
  }));
  return new Set(billsApart(dated).flatMap(({ kwh }) => rising[kwh] ?? []));
}

function keptBeside(draft: Draft, bills: readonly Bill[]): DraftValue[] {
  const taken = new Set(bills.map((bill) => period(asRow(bill))));
  return listAt(draft, 'bills').filter((bill) => !taken.has(period(bill)));
}

function asRow(bill: Bill): DraftValue {
  return Object.fromEntries(
    Object.entries(bill).flatMap(([key, v]) => (v === undefined ? [] : [[key, v] as const])),
  );
}

function inTime(bills: readonly DraftValue[]): DraftValue[] {
  return [...bills].sort((a, b) => (period(a) < period(b) ? -1 : Number(period(a) > period(b))));
}

function period(bill: DraftValue): string {
  return `${textAt(bill, 'fromDate')} ${textAt(bill, 'toDate')}`;
}
