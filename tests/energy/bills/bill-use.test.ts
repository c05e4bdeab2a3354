import { describe, expect, it } from 'vitest';
import { billUse } from '@/lib/energy/bills/bill-use';
import words from '@/lib/energy/wording/en.json';
import type { Bill } from '@/lib/visit/bills';
import reference from '../../reference/seasonal-bills.json';

const { checks } = reference;
const typicalMonthMeanF = checks.temperatures_F;
const starts = Array.from({ length: 13 }, (_, i) =>
  i < 12 ? `2025-${String(i + 1).padStart(2, '0')}-01` : '2026-01-01',
);
const billsOf = (kwhPerDay: readonly number[], billed = true): Bill[] =>
  kwhPerDay.map((kwh, i) => ({
    fromDate: starts[i] ?? '',
    toDate: starts[i + 1] ?? '',
    kwh: kwh * (checks.days[i] ?? 0),
    ...(billed ? { meanOutdoorF: typicalMonthMeanF[i] ?? 0 } : {}),
  }));
const use = (kwhPerDay: readonly number[], billed = true) =>
  billUse({ bills: billsOf(kwhPerDay, billed), typicalMonthMeanF });

describe('outside: splitting the constructed bills [constructed]', () => {
  it('base, heating and cooling of the year add up to the bills', () => {
    const split = use(checks.exact_5P.kWh_per_day);
    const total = billsOf(checks.exact_5P.kWh_per_day).reduce((a, b) => a + b.kwh, 0);
    expect(split.verdict).toBe('accept');
    expect(split.baseKwhPerYear).toBeCloseTo(22 * 365, 6);
    expect(split.baseKwhPerYear + split.heatingKwhPerYear + split.coolingKwhPerYear).toBeCloseTo(total, 6);
    // heating by hand: 1.55 x sum over cold months of days x (60 - T)
    const heating = checks.temperatures_F.reduce(
      (a, f, m) => a + 1.55 * (checks.days[m] ?? 0) * Math.max(0, 60 - f),
      0,
    );
    expect(split.heatingKwhPerYear).toBeCloseTo(heating, 6);
    expect(split.expectedKwhPerDay[0]).toBeCloseTo(checks.exact_5P.kWh_per_day[0] ?? 0, 6);
  });

  it('temperatures of a typical year are said to be so, and spoil nothing by themselves', () => {
    const split = use(checks.noisy_5P.kWh_per_day, false);
    expect(split.temperatures).toBe('typicalYear');
    expect(split.verdict).toBe('accept');
    expect(split.notes.map((n) => n.code)).toEqual(['billsTypicalYear']);
  });
});

describe('wiring: verdicts', () => {
  const signs = [1, -1, -1, 1, 1, -1, 1, -1, -1, 1, -1, 1];
  const wobble = (size: number) =>
    checks.exact_5P.kWh_per_day.map((k, i) => k * (1 + size * (signs[i] ?? 0)));

  it('accept, doubtful, unusable as the scatter grows past 20 % and 30 %', () => {
    const at = (size: number) => use(wobble(size));
    const sizes = [0.05, 0.38, 0.6].map((size) => at(size));
    expect(sizes.map((u) => u.verdict)).toEqual(['accept', 'doubtful', 'unusable']);
    expect(sizes[1]?.fit?.cvRmseFrac).toBeGreaterThan(0.2);
    expect(sizes[2]?.fit?.cvRmseFrac).toBeGreaterThan(0.3);
  });

  it('fewer than twelve periods are doubtful, fewer than nine unusable', () => {
    const short = (n: number) =>
      billUse({
        bills: billsOf(checks.exact_5P.kWh_per_day).slice(0, n),
        typicalMonthMeanF,
      }).verdict;
    expect([12, 11, 9, 8, 0].map(short)).toEqual(['accept', 'doubtful', 'doubtful', 'unusable', 'unusable']);
  });

  it('bills that do not follow the weather are unusable', () => {
    const flat = use(checks.temperatures_F.map((_, i) => 30 + (i % 2)));
    expect(flat.verdict).toBe('unusable');
    expect(flat.notes.map((n) => n.code)).toContain('billsNoWeather');
  });

  it('has words for every note', () => {
    const phrases: Readonly<Record<string, string>> = words;
    const codes = [
      'billsNoFit',
      'billsTooFew',
      'billsScatter',
      'billsSomeScatter',
      'billsBias',
      'billsNoWeather',
      'billsTypicalYear',
      'billsManyEstimated',
    ];
    expect(codes.filter((code) => phrases[code] === undefined)).toEqual([]);
  });
});
