import fc from 'fast-check';
import { expect, test } from 'vitest';
import { wordsOf } from '@/lib/sheet/phrase';
import { spanAxis } from '@/lib/sheet/span-axis';

const words = wordsOf('en');
const usd = fc.integer({ min: -50_000, max: 50_000 });

test('identity: an axis across zero, worked by hand', () => {
  const axis = spanAxis(words, [-300, 1_400]);
  expect(axis.ticks.map(({ label }) => label)).toEqual(['−$500', '$0', '$500', '$1,000', '$1,500']);
  expect(axis.place(-500)).toBe(0);
  expect(axis.place(500)).toBe(0.5);
});

test('property: zero and every value lie on the axis, which has two to eight ticks', () => {
  fc.assert(
    fc.property(fc.array(usd, { minLength: 1, maxLength: 8 }), (values) => {
      const { min, max, ticks, place } = spanAxis(words, values);
      expect(min).toBeLessThanOrEqual(Math.min(0, ...values));
      expect(max).toBeGreaterThanOrEqual(Math.max(0, ...values));
      expect(ticks.some(({ at }) => Math.abs(at) < 1e-9)).toBe(true);
      expect(ticks.length).toBeGreaterThanOrEqual(2);
      expect(ticks.length).toBeLessThanOrEqual(8);
      expect(values.every((v) => place(v) >= 0 && place(v) <= 1)).toBe(true);
    }),
  );
});
