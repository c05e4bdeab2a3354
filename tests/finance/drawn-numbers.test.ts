import { expect, test } from 'vitest';
import { drawnNumbers } from '@/lib/finance/drawn-numbers';
import { randomStream } from '@/lib/math/random';

test('identity: the numbers are those of the stream, asked for once or again, between other seeds and lengths', () => {
  const stream = randomStream(5, 'life');
  const own = Array.from({ length: 40 }, () => stream.normal());
  expect(Array.from(drawnNumbers('normal', 'life', 40, 5))).toEqual(own);
  expect(Array.from(drawnNumbers('uniform', 'life', 40, 5))).not.toEqual(own);
  expect(Array.from(drawnNumbers('normal', 'life', 40, 6))).not.toEqual(own);
  expect(Array.from(drawnNumbers('normal', 'life', 20, 5))).toEqual(own.slice(0, 20));
  const again = drawnNumbers('normal', 'life', 40, 5);
  expect(Array.from(again)).toEqual(own);
  expect(drawnNumbers('normal', 'life', 40, 5)).toBe(again);
});
