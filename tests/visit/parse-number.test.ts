import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fieldBook } from '@/components/draft/build-field-book';
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

it.each([
  ['118 psi', 'psig', 118],
  ['20 in', 'in', 20],
  ['20"', 'in', 20],
  ['5 ft', 'in', 60],
  ['0.4 in. w.c.', 'in. w.c.', 0.4],
  ['0.4 in', 'in. w.c.', 0.4],
  ['1 h', 'min', 60],
  ['3 kW', 'W', 3000],
  ['75%', '', 0.75],
  ['45 %', '%', 45],
  ['14 ¢', 'per kWh', 0.14],
  ['$1,250', '$', 1250],
  ["1'250 W", 'W', 1250],
  ['3 tons', 'tons', 3],
  ['2.5 hours', '', 2.5],
])('wiring: "%s" in a field of %s is %d', (typed, unit, value) => {
  expect(parseNumber(typed, unit)).toEqual({ kind: 'number', value });
});

it.each([
  ['0.2 psi', 'in. w.c.'],
  ['118 A', 'psig'],
  ['3 kW', 'A'],
  ['45 psig', '°F'],
  ['5 years', 'tons'],
])('wiring: "%s" in a field of %s is another unit, and is kept', (typed, unit) => {
  expect(parseNumber(typed, unit)).toEqual({ kind: 'otherUnit', text: typed });
});

it('identity: every unit of the form knows its own spelling', () => {
  const units = [...new Set(Object.values(fieldBook()).map((entry) => entry.unit))].filter((u) => u !== '');
  expect(units.length).toBeGreaterThan(20);
  expect(units.filter((unit) => parseNumber(`5 ${unit}`, unit).kind !== 'number')).toEqual([]);
});
