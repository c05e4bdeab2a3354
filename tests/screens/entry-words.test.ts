import { expect, test } from 'vitest';
import { monthName, typedWords } from '@/components/format/entry-words';

test('wiring: what was typed is shown in full where it can be read, and as typed where not', () => {
  expect(typedWords('1204.5', true)).toBe('$1,204.50');
  expect(typedWords('1,204 ', false)).toBe('1,204');
  expect(typedWords('about 12', true)).toBe('about 12');
  expect([monthName(1, 'short'), monthName(12, 'long'), monthName(6, 'narrow')]).toEqual([
    'Jan',
    'December',
    'J',
  ]);
});
