import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parseNumber } from '@/lib/visit/parse-number';

it.each([
  ['118', 118],
  [' 118 ', 118],
  ['118 psig', 118],
  ['-12', -12],
  ['−12', -12],
  ['45,5', 45.5],
  ['1,250', 1250],
  ['1 250', 1250],
  ['$1,250.50', 1250.5],
  ['.35', 0.35],
  ['72°F', 72],
  ['72 F', 72],
  ['4.5 uF', 4.5],
  ['0.42 in. w.c.', 0.42],
  ['+3', 3],
  ['7 %', 7],
])('wiring: "%s" is %d', (typed, value) => {
  expect(parseNumber(typed)).toEqual({ kind: 'number', value });
});

it.each(['', ' ', '\t'])('wiring: "%s" is empty, not 0', (typed) => {
  expect(parseNumber(typed)).toEqual({ kind: 'empty' });
});

it.each(['abc', '1.2.3', '12x', '1,2,3', '--4', '4-', 'NaN', 'Infinity', '1e5', '12 34'])(
  'wiring: "%s" is no number and is kept',
  (typed) => {
    expect(parseNumber(typed)).toEqual({ kind: 'notNumber', text: typed });
  },
);

it('property: every plain decimal comes back as itself', () => {
  fc.assert(
    fc.property(fc.integer({ min: -999_999, max: 999_999 }), fc.integer({ min: 0, max: 2 }), (n, places) => {
      const text = (n / 10 ** places).toFixed(places);
      expect(parseNumber(text)).toEqual({ kind: 'number', value: Number(text) });
    }),
  );
});
