import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { appraise } from '@/lib/appraise/appraise';
import type { EnergyYear } from '@/lib/energy/energy-result';
import { dearestDifference, dearestMonth, monthUsd, YEAR_USES, yearByUse } from '@/lib/energy/year-by-use';
import { readVisit } from '@/lib/visit/read-visit';

function demo() {
  const reading = readVisit(JSON.parse(readFileSync('data-demo/restricted-orifice.json', 'utf8')));
  if (!reading.ok) throw new Error('demo');
  return appraise(reading.value).energy;
}

test('identity: the uses of every scenario add up to its cost and its kWh, month by month', () => {
  const { scenarios } = demo();
  expect(scenarios.length).toBeGreaterThan(3);
  for (const { likely } of scenarios) {
    const { months, year } = yearByUse(likely);
    const usd = YEAR_USES.reduce((sum, use) => sum + year[use].usd, 0);
    const kwh = YEAR_USES.reduce((sum, use) => sum + year[use].kwh, 0);
    expect(usd).toBeCloseTo(likely.costUsd, 6);
    expect(kwh).toBeCloseTo(likely.totalKwh, 6);
    expect(year.strip.kwh).toBeCloseTo(likely.stripHeatKwh, 6);
    expect(year.blower.kwh).toBeCloseTo(likely.blowerKwh + likely.standbyKwh, 6);
    expect(months.map(monthUsd)).toHaveLength(12);
    expect(
      Math.max(...months.map((m, i) => Math.abs(monthUsd(m) - (likely.byMonth[i]?.costUsd ?? 0)))),
    ).toBeLessThan(1e-9);
  }
});

const none = { heatingKwh: 0, stripKwh: 0, coolingKwh: 0, blowerKwh: 0, standbyKwh: 0, costUsd: 0 };
const year = (byMonth: EnergyYear['byMonth'], more: Partial<EnergyYear> = {}) =>
  ({ byMonth, ...more }) as EnergyYear;

test('identity: by hand: 100 kWh at 20 cents and 1 MMBtu at 12 dollars', () => {
  const month = {
    heatingKwh: 60,
    stripKwh: 20,
    coolingKwh: 0,
    blowerKwh: 15,
    standbyKwh: 5,
    fuelBtu: 1e6,
    costUsd: 32,
  };
  const split = yearByUse(year([month], { fuelBtu: 1e6, fuelCostUsd: 12 }));
  expect(split.year).toEqual({
    heating: { kwh: 60, usd: 12 },
    strip: { kwh: 20, usd: 4 },
    cooling: { kwh: 0, usd: 0 },
    blower: { kwh: 20, usd: 4 },
    fuel: { kwh: 0, usd: 12 },
  });
});

test('property: a month without use costs no use anything', () => {
  const { months } = yearByUse(year([none]));
  expect(months.map(monthUsd)).toEqual([0]);
});

test('identity: the dearest difference and the dearest month are found', () => {
  const one = yearByUse(year([none, { ...none, stripKwh: 10, heatingKwh: 30, costUsd: 8 }]));
  const other = yearByUse(year([none, { ...none, stripKwh: 2, heatingKwh: 26, costUsd: 5.6 }]));
  expect(dearestDifference(one.year, other.year)).toEqual({ use: 'strip', usd: expect.closeTo(1.6, 9) });
  expect(dearestDifference(other.year, one.year)).toBeUndefined();
  expect(dearestMonth(one.months)).toEqual({ month: 2, usd: 8 });
});
