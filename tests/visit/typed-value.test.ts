import { expect, it } from 'vitest';
import { shortened, valueWords } from '@/lib/visit/typed-value';

it('property: up to 60 characters are repeated whole, more are cut to 60', () => {
  expect(shortened('a'.repeat(60))).toBe('a'.repeat(60));
  expect(shortened('a'.repeat(61))).toBe(`${'a'.repeat(59)}…`);
  // characters, not halves of them
  expect(shortened('😀'.repeat(300))).toBe(`${'😀'.repeat(59)}…`);
});

it('wiring: what is no single value is named by its kind', () => {
  expect([[], {}, null, 3000, 'x', false].map(valueWords)).toEqual([
    'a list',
    'a group of fields',
    'null',
    '3000',
    'x',
    'false',
  ]);
});
