import { expect, test } from 'vitest';
import { asideOf, putAside } from '@/components/draft/put-aside';

test('wiring: what is put aside belongs to one visit and one place, and can be forgotten', () => {
  putAside('a', 'place', { note: 'x' });
  expect(asideOf('a', 'place')).toEqual({ note: 'x' });
  expect([asideOf('b', 'place'), asideOf('a', 'other')]).toEqual([undefined, undefined]);
  putAside('a', 'place', undefined);
  expect(asideOf('a', 'place')).toBeUndefined();
});
