import { describe, expect, it } from 'vitest';
import { dateOfDay, dayNumber } from '@/lib/energy/bills/bill-model';
import { billsApart, checkBills } from '@/lib/energy/bills/check-bills';
import words from '@/lib/energy/wording/en.json';
import type { Bill } from '@/lib/visit/bills';

const months = [
  '2025-01-01',
  '2025-02-01',
  '2025-03-01',
  '2025-04-01',
  '2025-05-01',
  '2025-06-01',
  '2025-07-01',
  '2025-08-01',
  '2025-09-01',
  '2025-10-01',
  '2025-11-01',
  '2025-12-01',
  '2026-01-01',
];
const year: Bill[] = months.slice(1).map((toDate, i) => ({
  fromDate: months[i] ?? '',
  toDate,
  kwh: 1_000 + i,
  costUsd: 150,
}));
const changed = (i: number, change: Partial<Bill>) =>
  year.map((bill, at) => (at === i ? { ...bill, ...change } : bill));
const codes = (bills: readonly Bill[]) => checkBills(bills).notes.map((n) => n.code);

describe('wiring: sorting bills out', () => {
  it('a clean year passes without a note, in any order', () => {
    expect(checkBills([...year].reverse())).toEqual({ usable: year, notes: [] });
  });

  it('an overlapping bill is named and left out', () => {
    const doubled = [...year, { fromDate: '2025-03-15', toDate: '2025-04-15', kwh: 900 }];
    expect(checkBills(doubled).usable).toEqual(year);
    expect(codes(doubled)).toEqual(['billsOverlap']);
  });

  it('bills apart are those without a day in an earlier one, whatever their use; no usable dates, no bill', () => {
    const inside = { fromDate: '2025-03-15', toDate: '2025-04-15', kwh: 900 };
    expect(billsApart([inside, ...year, { fromDate: '', toDate: 'soon', kwh: 1 }])).toEqual(year);
  });

  it('bills that end the day before the next begins are a day longer; none of their days is a gap', () => {
    const dayBefore = (date: string) => dateOfDay((dayNumber(date) ?? 0) - 1);
    const inclusive = year.map((bill) => ({ ...bill, toDate: dayBefore(bill.toDate) }));
    expect(checkBills(inclusive)).toEqual({ usable: year, notes: [] });
  });

  it('a missing month is named; the rest is used', () => {
    const gap = year.filter((_, i) => i !== 4);
    const { usable, notes } = checkBills(gap);
    expect(usable).toHaveLength(11);
    expect(notes[0]).toEqual({ code: 'billsGap', values: { from: '2025-05-01', to: '2025-06-01' } });
    expect(notes[1]?.code).toBe('billsFewerThanYear');
  });

  it('kWh and cost exchanged are turned round; an odd price is only named', () => {
    const swapped = checkBills(changed(2, { kwh: 150, costUsd: 1_002 }));
    expect(swapped.usable).toEqual(year);
    expect(swapped.notes).toEqual([{ code: 'billsSwapped', values: { from: '2025-03-01' } }]);
    expect(codes(changed(2, { costUsd: 5 }))).toEqual(['billsPriceOdd']);
    expect(codes(changed(2, { costUsd: 1_002 * 0.031 }))).toEqual([]);
  });

  it('an estimated bill is joined with the next reading', () => {
    const { usable, notes } = checkBills(changed(3, { estimated: true }));
    expect(usable).toHaveLength(11);
    expect(usable[3]).toEqual({ fromDate: '2025-04-01', toDate: '2025-06-01', kwh: 2_007, costUsd: 300 });
    expect(notes.map((n) => n.code)).toEqual(['billsEstimated', 'billsFewerThanYear']);
  });

  it('an estimate with no reading after it stands alone', () => {
    expect(checkBills(changed(11, { estimated: true })).usable).toHaveLength(12);
  });

  it('impossible dates and odd lengths are left out and named', () => {
    expect(codes(changed(0, { fromDate: '2025-02-30' }))).toContain('billsDatesWrong');
    expect(codes(changed(0, { fromDate: '2025-02-01', toDate: '2025-01-01' }))).toContain('billsDatesWrong');
    expect(codes(changed(0, { fromDate: '2025-01-20' }))).toContain('billsTooShort');
    expect(codes(changed(0, { fromDate: '2024-10-01' }))).toContain('billsTooLong');
  });

  it('has words for every note it can make', () => {
    const phrases: Readonly<Record<string, string>> = words;
    const named = ['billsDatesWrong', 'billsOverlap', 'billsSwapped', 'billsPriceOdd'];
    const more = ['billsEstimated', 'billsTooShort', 'billsTooLong', 'billsGap', 'billsFewerThanYear'];
    expect([...named, ...more].filter((code) => phrases[code] === undefined)).toEqual([]);
  });
});

describe('identity: dates and day counts', () => {
  it('count from 1970, know leap years, refuse what is no date', () => {
    expect(dayNumber('1970-01-02')).toBe(1);
    expect((dayNumber('2024-03-01') ?? 0) - (dayNumber('2024-02-28') ?? 0)).toBe(2);
    expect(dayNumber('2025-02-29')).toBeUndefined();
    expect(dayNumber('3/1/2025')).toBeUndefined();
    expect(dateOfDay(dayNumber('2026-07-31') ?? 0)).toBe('2026-07-31');
  });
});
