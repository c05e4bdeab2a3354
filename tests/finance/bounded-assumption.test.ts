import { expect, test } from 'vitest';
import { boundedAssumption, financeKeys } from '@/lib/finance/bounded-assumption';
import limits from '@/lib/finance/data/assumption-limits.json';
import table from '@/lib/visit/data/assumptions.json';

test('property: every default lies inside its limits and needs no note', () => {
  expect(financeKeys).toHaveLength(19);
  for (const key of financeKeys) {
    const { value, setBy, note } = boundedAssumption([], key);
    const { low, likely, high } = table.values[key];
    expect(value, key).toEqual({ low, likely, high });
    expect([setBy, note]).toEqual(['keepworth', undefined]);
    expect(limits.limits[key].min).toBeLessThanOrEqual(low);
    expect(limits.limits[key].max).toBeGreaterThanOrEqual(high);
  }
});

test('property: just inside a limit passes, just outside is brought to it with a note', () => {
  const of = (low: number, likely: number, high: number) =>
    boundedAssumption([{ key: 'repairSuccessFrac', low, likely, high, source: 'test' }], 'repairSuccessFrac');
  expect(of(0, 0.5, 1)).toEqual({ value: { low: 0, likely: 0.5, high: 1 }, setBy: 'visit' });
  expect(of(-0.001, 0.5, 1.001)).toEqual({
    value: { low: 0, likely: 0.5, high: 1 },
    setBy: 'visit',
    note: {
      code: 'assumptionOutOfLimits',
      values: { key: 'repairSuccessFrac', assumption: table.values.repairSuccessFrac.label, min: 0, max: 1 },
    },
  });
  expect(of(0, 0.5, 1.001).note?.code).toBe('assumptionOutOfLimits');
  expect(of(-0.001, 0.5, 1).note?.code).toBe('assumptionOutOfLimits');
  expect(of(2, 3, 4).value).toEqual({ low: 1, likely: 1, high: 1 });
});
