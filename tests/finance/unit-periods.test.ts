import { expect, test } from 'vitest';
import { type UnitPeriod, unitPeriodsBetween } from '@/lib/finance/unit-periods';
import { checkOf, near, num, raw } from './checks';

const months = (n: number): UnitPeriod => ({ kind: 'months', months: n });
const days = (n: number): UnitPeriod => ({ kind: 'days', days: n });

// dated examples of Appendix J: unit period, key of the payment date, and where the counts stand in the entry
const dated: [string, UnitPeriod, string][] = [
  ['apr-J-c1i', months(1), 'first_payment'],
  ['apr-J-c1ii', months(1), 'first_payment'],
  ['apr-J-c1iv', months(3), 'first_payment'],
  ['apr-J-c1v', days(7), 'first_payment'],
  ['apr-J-c2i', months(1), 'first_payment'],
  ['apr-J-c2ii', days(28), 'first_payment'],
  ['apr-J-c3i', months(1), 'first_payment'],
  ['apr-J-c3ii', days(14), 'first_payment'],
  ['apr-J-c4i', months(1), 'first_payment'],
  ['apr-J-c4ii', months(2), 'first_payment'],
  ['apr-J-c5i', days(255), 'payment'],
  ['apr-J-c5ii', months(6), 'payment'],
  ['apr-J-c5iii', months(12), 'payment'],
  ['apr-J-c5iv', months(12), 'payment'],
];

function share(text: string): number {
  const [top, bottom] = text.split('/').map(Number);
  return (top ?? 0) / (bottom ?? 1);
}

test.each(dated)('outside: whole periods and fraction of %s, counted from its dates', (id, unit, key) => {
  const c = checkOf(id);
  const count = unitPeriodsBetween(String(raw(c, 'inputs.advance')), String(raw(c, `inputs.${key}`)), unit);
  expect(count.whole).toBe(num(c, 'inputs.first_payment_full_unit_periods'));
  near(count.fraction, share(String(raw(c, 'inputs.first_payment_fraction'))), 1e-12, id);
});

// 12 CFR 1026 Appendix J (c)(7)(i): advances of 10 April, 12 June, 18 September 1979, first payment 10 December
test('outside: later advances of the construction loan, counted back to the first one', () => {
  expect(unitPeriodsBetween('1979-04-10', '1979-06-12', months(1))).toEqual({ whole: 2, fraction: 2 / 30 });
  expect(unitPeriodsBetween('1979-04-10', '1979-09-18', months(1))).toEqual({ whole: 5, fraction: 8 / 30 });
  expect(unitPeriodsBetween('1979-04-10', '1979-12-10', months(1))).toEqual({ whole: 8, fraction: 0 });
});

test('outside: the extra quarterly, weekly and yearly cases of the reference file', () => {
  expect(unitPeriodsBetween('1978-06-23', '1978-10-01', months(3))).toEqual({ whole: 1, fraction: 8 / 90 });
  expect(unitPeriodsBetween('1978-07-23', '1978-10-01', months(3))).toEqual({ whole: 0, fraction: 69 / 90 });
  expect(unitPeriodsBetween('2023-10-28', '2023-11-30', days(7))).toEqual({ whole: 4, fraction: 5 / 7 });
  expect(unitPeriodsBetween('2023-10-26', '2023-11-30', days(1))).toEqual({ whole: 35, fraction: 0 });
});

test('property: a payment before the start is refused, one on the day counts nothing', () => {
  expect(() => unitPeriodsBetween('2026-01-02', '2026-01-01', months(1))).toThrow('before');
  expect(unitPeriodsBetween('2026-01-01', '2026-01-01', months(1))).toEqual({ whole: 0, fraction: 0 });
  expect(() => unitPeriodsBetween('2026-01-01', '2027-01-01', months(13))).toThrow('unit');
  expect(() => unitPeriodsBetween('2026-01-01', '2027-01-01', days(0))).toThrow('unit');
});
