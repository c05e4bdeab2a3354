import fc from 'fast-check';
import { expect, test } from 'vitest';
import { apportion } from '@/lib/math/apportion';

test('outside: the largest-remainder example with seats 4, 2, 2, 1, 1 [votes 47000, 16000, 15900, 12000, 6000, 3100 for 10; textbook Hamilton case, memory]', () => {
  const votes = [47_000, 16_000, 15_900, 12_000, 6_000, 3_100];
  expect(
    apportion(
      votes.map((v) => v / 100_000),
      10,
    ),
  ).toEqual([5, 2, 1, 1, 1, 0]);
});

test('property: counts add up to the whole, and none is a full count away from its share', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 1_000 }), { minLength: 1, maxLength: 12 }), (weights) => {
      const sum = weights.reduce((a, b) => a + b, 0);
      fc.pre(sum > 0);
      const fracs = weights.map((w) => w / sum);
      const counts = apportion(fracs, 10);
      expect(counts.reduce((a, b) => a + b, 0)).toBe(10);
      expect(Math.max(...counts.map((count, i) => Math.abs(count - 10 * (fracs[i] ?? 0))))).toBeLessThan(1);
    }),
  );
});

test('property: shares that do not add up are our own slip', () => {
  expect(() => apportion([0.5, 0.4], 10)).toThrow('add up to 0.9');
});
