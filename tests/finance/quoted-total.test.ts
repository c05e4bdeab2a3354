import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareChoices } from '@/lib/finance/compare-choices';
import { anyInput } from './arbitraries';
import { exampleInput } from './fixtures';

test('identity: decimal and float totals of every choice agree to the cent', () => {
  const { choices } = compareChoices(exampleInput());
  expect(choices).toHaveLength(5);
  for (const c of choices) {
    expect(c.totalTodayQuoted).toMatch(/^-?\d+\.\d\d$/);
    expect(Math.abs(Number(c.totalTodayQuoted) - c.totalTodayUsd.likely), c.id).toBeLessThan(0.00501);
  }
});

test('identity: they agree for any visit', () => {
  fc.assert(
    fc.property(anyInput, (input) => {
      const off = compareChoices(input).choices.map((c) =>
        Math.abs(Number(c.totalTodayQuoted) - c.totalTodayUsd.likely),
      );
      expect(off.length).toBeGreaterThan(0);
      expect(Math.max(...off)).toBeLessThan(0.00501);
    }),
    { numRuns: 60 },
  );
});
