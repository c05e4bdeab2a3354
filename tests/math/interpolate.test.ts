import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { interpolateBilinear, interpolateLinear } from '@/lib/math/interpolate';

const xs = [0, 1, 3, 10];
const ys = [5, 7, -1, 4];

describe('interpolateLinear', () => {
  test('identity: gives the grid values back', () => {
    xs.forEach((x, i) => {
      expect(interpolateLinear(xs, ys, x)).toEqual({ value: ys[i], beyond: 'inside' });
    });
    expect.assertions(4);
  });

  test('identity: halfway is the mean of the neighbours', () => {
    expect(interpolateLinear(xs, ys, 2).value).toBe(3);
    expect(interpolateLinear(xs, ys, 6.5).value).toBe(1.5);
  });

  test('wiring: just inside, on and just outside each end', () => {
    expect(interpolateLinear(xs, ys, 1e-9).beyond).toBe('inside');
    expect(interpolateLinear(xs, ys, -1e-9)).toEqual({ value: 5, beyond: 'below' });
    expect(interpolateLinear(xs, ys, 10 + 1e-9)).toEqual({ value: 4, beyond: 'above' });
    expect(interpolateLinear(xs, ys, -1, 'continue')).toEqual({ value: 3, beyond: 'below' });
    const above = interpolateLinear(xs, ys, 17, 'continue');
    expect(above.value).toBeCloseTo(9, 12);
    expect(above.beyond).toBe('above');
  });

  test('wiring: one point is a constant, always marked elsewhere', () => {
    expect(interpolateLinear([2], [8], 2)).toEqual({ value: 8, beyond: 'inside' });
    expect(interpolateLinear([2], [8], 3, 'continue')).toEqual({ value: 8, beyond: 'above' });
  });

  test('wiring: a broken grid or point is our bug', () => {
    expect(() => interpolateLinear([], [], 1)).toThrow('grid');
    expect(() => interpolateLinear([1, 2], [1], 1)).toThrow('grid');
    expect(() => interpolateLinear([1, 1], [1, 2], 1)).toThrow('rise');
    expect(() => interpolateLinear(xs, ys, Number.NaN)).toThrow('finite');
  });

  test('property: exact on straight lines, inside and continued', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), (x) => {
        const line = xs.map((v) => 2 * v - 7);
        expect(interpolateLinear(xs, line, x, 'continue').value).toBeCloseTo(2 * x - 7, 9);
      }),
    );
  });

  test('property: clamped value stays between the extremes', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), (x) => {
        const { value } = interpolateLinear(xs, ys, x);
        expect(value).toBeGreaterThanOrEqual(-1);
        expect(value).toBeLessThanOrEqual(7);
      }),
    );
  });
});

describe('interpolateBilinear', () => {
  const rows = [0, 10];
  const columns = [0, 2, 4];
  const table = [
    [1, 3, 5],
    [2, 8, 6],
  ];

  test('identity: corners and the middle of a cell', () => {
    expect(interpolateBilinear(rows, columns, table, 10, 2).value).toBe(8);
    expect(interpolateBilinear(rows, columns, table, 5, 1).value).toBe((1 + 3 + 2 + 8) / 4);
  });

  test('property: exact on x y products within one cell, and continued', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 15, noNaN: true }),
        fc.double({ min: -1, max: 4, noNaN: true }),
        (x, y) => {
          const plane = [0, 10].map((r) => [0, 3].map((c) => 1 + 2 * r - c + 0.5 * r * c));
          const { value } = interpolateBilinear([0, 10], [0, 3], plane, x, y, 'continue');
          expect(value).toBeCloseTo(1 + 2 * x - y + 0.5 * x * y, 8);
        },
      ),
    );
  });

  test('wiring: marks each axis on its own', () => {
    expect(interpolateBilinear(rows, columns, table, -1, 5)).toEqual({
      value: 5,
      beyondX: 'below',
      beyondY: 'above',
    });
    expect(interpolateBilinear(rows, columns, table, 10, 5).beyondX).toBe('inside');
  });

  test('wiring: a table of the wrong shape is our bug', () => {
    expect(() => interpolateBilinear(rows, columns, [[1, 2, 3]], 0, 0)).toThrow('rows');
    expect(() =>
      interpolateBilinear(
        rows,
        columns,
        [
          [1, 2],
          [3, 4],
        ],
        0,
        0,
      ),
    ).toThrow('fit');
  });
});
