import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addMonths, daysBetween, yearOf } from '@/lib/finance/calendar';

test('outside: days between dates known from an almanac', () => {
  // J2000 day numbers: 1970-01-01 is 10,957 days before 2000-01-01 (Unix day count, computed by every platform)
  expect(daysBetween('1970-01-01', '2000-01-01')).toBe(10_957);
  expect(daysBetween('2024-02-28', '2024-03-01')).toBe(2);
  expect(daysBetween('2100-02-28', '2100-03-01')).toBe(1);
  expect(daysBetween('2000-02-28', '2000-03-01')).toBe(2);
  expect(daysBetween('2026-11-25', '2026-11-24')).toBe(-1);
});

test('outside: agrees with the platform calendar', () => {
  const day = fc.integer({ min: -100_000, max: 100_000 });
  const iso = (n: number) => new Date(n * 86_400_000).toISOString().slice(0, 10);
  fc.assert(
    fc.property(day, day, (a, b) => {
      expect(daysBetween(iso(a), iso(b))).toBe(b - a);
      expect(yearOf(iso(a))).toBe(new Date(a * 86_400_000).getUTCFullYear());
    }),
  );
});

test('property: months step to the same day, or to the last day of a shorter month', () => {
  expect(addMonths('2026-01-31', 1)).toBe('2026-02-28');
  expect(addMonths('2024-03-31', -1)).toBe('2024-02-29');
  expect(addMonths('2026-11-25', 14)).toBe('2028-01-25');
  expect(addMonths('2026-01-15', -13)).toBe('2024-12-15');
});

test('property: what is no date is refused', () => {
  const bad = ['2026-02-30', '2026-13-01', '2026-00-10', '26-01-01', '2026-01-00', ''];
  expect(bad).toHaveLength(6);
  for (const date of bad) expect(() => daysBetween(date, '2026-01-01'), date).toThrow('date');
});
