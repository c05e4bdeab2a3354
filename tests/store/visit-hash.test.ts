import { expect, test } from 'vitest';
import { visitHash } from '@/lib/store/visit-hash';

test('outside: the hash of an empty object is SHA-256 of "{}" [computed with sha256sum]', () => {
  expect(visitHash({})).toBe('44136fa355b3');
});

test('identity: the order of fields does not matter, their values and the order of lists do', () => {
  const a = visitHash({ unit: { kind: 'heatPump', nominalTons: 3 }, runs: [1, 2] });
  expect(visitHash({ runs: [1, 2], unit: { nominalTons: 3, kind: 'heatPump' } })).toBe(a);
  expect(visitHash({ runs: [2, 1], unit: { nominalTons: 3, kind: 'heatPump' } })).not.toBe(a);
  expect(visitHash({ runs: [1, 2], unit: { nominalTons: 3.5, kind: 'heatPump' } })).not.toBe(a);
  expect(a).toMatch(/^[0-9a-f]{12}$/);
});
