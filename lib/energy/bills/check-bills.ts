import type { Bill } from '../../visit/bills';
import { byFromDate } from '../../visit/dated-value';
import type { Saying } from '../../visit/wording';
import rules from '../data/bill-rules.json';
import { billDays, dateOfDay, dayNumber } from './bill-model';

export type CheckedBills = {
  /** In order of time, without overlap; estimated reads joined with the next real one. */
  readonly usable: readonly Bill[];
  readonly notes: readonly Saying[];
};

/**
 * Sorts bills out: what is wrong is named, what can be used is used.
 *
 * @param bills  in any order
 * @returns usable periods and a note for each doubt: no dates, overlaps, gaps, odd lengths, kWh and cost
 *   exchanged, estimated reads, fewer than twelve months
 * Source: data/bill-rules.json
 * Check: tests/energy/bills/check-bills.test.ts
 */
export function checkBills(bills: readonly Bill[]): CheckedBills {
  const notes: Saying[] = [];
  const dated = bills.filter((bill) => {
    const good = dayNumber(bill.fromDate) !== undefined && billDays(bill) > 0;
    if (!good) notes.push({ code: 'billsDatesWrong', values: { from: bill.fromDate, to: bill.toDate } });
    return good;
  });
  const apart = withoutOverlap(endsShared([...dated].sort(byFromDate)), notes).map((bill) =>
    unswapped(bill, notes),
  );
  const joined = joinEstimated(apart, notes);
  const usable = joined.filter((bill) => lengthIsUsable(bill, notes));
  noteGaps(usable, notes);
  const days = usable.reduce((sum, bill) => sum + billDays(bill), 0);
  if (usable.length < rules.periods.whole || days < 350) {
    notes.push({ code: 'billsFewerThanYear', values: { periods: usable.length, days } });
  }
  return { usable, notes };
}

/**
 * Bills with usable dates of which no two share a day, in order of time; of two that do, the one that begins first stays.
 *
 * Check: tests/energy/bills/check-bills.test.ts
 */
export function billsApart(bills: readonly Bill[]): readonly Bill[] {
  const dated = bills.filter((bill) => dayNumber(bill.fromDate) !== undefined && billDays(bill) > 0);
  return withoutOverlap(endsShared([...dated].sort(byFromDate)), []);
}

/**
 * Where more bills begin the day after the one before ends than on that day itself, the last day counts as billed:
 * every period then ends a day later.
 */
function endsShared(rising: readonly Bill[]): readonly Bill[] {
  const steps = rising.slice(1).map((bill, i) => daysBetween(rising[i]?.toDate ?? '', bill.fromDate));
  const inclusive = steps.filter((days) => days === 1).length;
  if (inclusive <= steps.filter((days) => days === 0).length) return rising;
  return rising.map((bill) => ({ ...bill, toDate: dateOfDay((dayNumber(bill.toDate) ?? 0) + 1) }));
}

function daysBetween(from: string, to: string): number {
  return (dayNumber(to) ?? 0) - (dayNumber(from) ?? 0);
}

function withoutOverlap(rising: readonly Bill[], notes: Saying[]): Bill[] {
  const kept: Bill[] = [];
  for (const bill of rising) {
    const last = kept[kept.length - 1];
    if (last !== undefined && bill.fromDate < last.toDate) {
      notes.push({ code: 'billsOverlap', values: { from: bill.fromDate, to: bill.toDate } });
    } else kept.push(bill);
  }
  return kept;
}

/** A mean price outside all tariffs, plausible the other way round: the columns were exchanged. */
function unswapped(bill: Bill, notes: Saying[]): Bill {
  if (bill.costUsd === undefined || bill.costUsd <= 0 || bill.kwh <= 0) return bill;
  const { leastUsdPerKwh, mostUsdPerKwh } = rules.price;
  const price = bill.costUsd / bill.kwh;
  if (price >= leastUsdPerKwh && price <= mostUsdPerKwh) return bill;
  const back = bill.kwh / bill.costUsd;
  if (back >= leastUsdPerKwh && back <= mostUsdPerKwh) {
    notes.push({ code: 'billsSwapped', values: { from: bill.fromDate } });
    return { ...bill, kwh: bill.costUsd, costUsd: bill.kwh };
  }
  notes.push({
    code: 'billsPriceOdd',
    values: { from: bill.fromDate, price: Math.round(price * 1000) / 1000 },
  });
  return bill;
}

/** What an estimate gets wrong the next reading puts right, so the two are one period. */
function joinEstimated(bills: readonly Bill[], notes: Saying[]): Bill[] {
  const joined: Bill[] = [];
  let open: Bill | undefined;
  for (const bill of bills) {
    const follows = open !== undefined && open.toDate === bill.fromDate;
    if (open !== undefined && !follows) joined.push(open);
    const whole = open !== undefined && follows ? merged(open, bill) : bill;
    if (bill.estimated === true) {
      notes.push({ code: 'billsEstimated', values: { from: bill.fromDate } });
      open = whole;
    } else {
      open = undefined;
      joined.push(whole);
    }
  }
  return open === undefined ? joined : [...joined, open];
}

function merged(a: Bill, b: Bill): Bill {
  return {
    fromDate: a.fromDate,
    toDate: b.toDate,
    kwh: a.kwh + b.kwh,
    ...(a.costUsd === undefined || b.costUsd === undefined ? {} : { costUsd: a.costUsd + b.costUsd }),
    ...(a.meanOutdoorF === undefined || b.meanOutdoorF === undefined
      ? {}
      : {
          meanOutdoorF:
            (a.meanOutdoorF * billDays(a) + b.meanOutdoorF * billDays(b)) / (billDays(a) + billDays(b)),
        }),
  };
}

function lengthIsUsable(bill: Bill, notes: Saying[]): boolean {
  const days = billDays(bill);
  if (days < rules.periods.shortestDays) {
    notes.push({ code: 'billsTooShort', values: { from: bill.fromDate, days } });
    return false;
  }
  if (days > 2 * rules.periods.longestDays) {
    notes.push({ code: 'billsTooLong', values: { from: bill.fromDate, days } });
    return false;
  }
  return true;
}

function noteGaps(bills: readonly Bill[], notes: Saying[]): void {
  bills.forEach((bill, i) => {
    const before = bills[i - 1];
    if (before !== undefined && bill.fromDate > before.toDate) {
      notes.push({ code: 'billsGap', values: { from: before.toDate, to: bill.fromDate } });
    }
  });
}
