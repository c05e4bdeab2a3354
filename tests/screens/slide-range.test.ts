import { expect, test } from 'vitest';
import { slideRange } from '@/components/form/slide-range';

test('identity: a slider reaches to about twice the value, on whole steps, within the limits of the field', () => {
  expect(slideRange(6_180, { min: 0, max: 100_000 }, 50)).toEqual({ min: 0, max: 12_400, step: 50 });
  expect(slideRange(9, { min: 1, max: 25 }, 1)).toEqual({ min: 1, max: 21, step: 1 });
  expect(slideRange(20, { min: 1, max: 25 }, 1)).toEqual({ min: 1, max: 25, step: 1 });
  expect(slideRange(undefined, { min: 0, max: 100_000 }, 100)).toEqual({ min: 0, max: 2_000, step: 100 });
  expect(slideRange(0.16, { min: 0.02, max: 2 }, 0.01)).toEqual({ min: 0.02, max: 0.32, step: 0.01 });
});
