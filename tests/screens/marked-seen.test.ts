import { expect, test } from 'vitest';
import { markedSeen } from '@/components/visit/marked-seen';

const oil = { id: 'oilStain', note: 'at the flare, about a hand wide', photoIds: ['p1'] };

test('regression: an observation unmarked by a slip and marked again has its note and photos', () => {
  const dirty = { id: 'dirtyFilter' };
  const off = markedSeen('seen', { observations: [oil, dirty] }, 'oilStain', false);
  expect(off).toEqual({ observations: [dirty] });
  expect(markedSeen('seen', off, 'oilStain', true)).toEqual({ observations: [dirty, oil] });
});

test('wiring: an observation never unmarked begins without a note, in every visit', () => {
  markedSeen('one', { observations: [oil] }, 'oilStain', false);
  expect(markedSeen('other', {}, 'oilStain', true)).toEqual({ observations: [{ id: 'oilStain' }] });
  expect(markedSeen('other', { observations: [oil] }, 'oilStain', true)).toEqual({ observations: [oil] });
});
