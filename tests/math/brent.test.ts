import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findRoot } from '@/lib/math/brent';

const rootOf = (f: (x: number) => number, low: number, high: number, tolerance?: number): number => {
  const result = findRoot(f, low, high, tolerance);
  if (result.kind !== 'root') throw new Error(`no root: ${result.why}`);
  return result.x;
};

describe('findRoot', () => {
  test('outside: fixed point of the cosine [OEIS A003957, 0.7390851332151606; status memory]', () => {
    expect(rootOf((x) => Math.cos(x) - x, 0, 1, 1e-15)).toBeCloseTo(0.7390851332151606, 14);
  });

  test('outside: root of x^3 - 2x - 5 [Wallis 1685, 2.0945514815423266; status memory]', () => {
    expect(rootOf((x) => x ** 3 - 2 * x - 5, 2, 3, 1e-15)).toBeCloseTo(2.0945514815423265, 13);
  });

  test('identity: an end that is the root is returned at once', () => {
    expect(findRoot((x) => x, 0, 1)).toEqual({ kind: 'root', x: 0, iterations: 0 });
    expect(findRoot((x) => x - 1, 0, 1)).toEqual({ kind: 'root', x: 1, iterations: 0 });
  });

  test('property: finds the root of any monotone cubic inside its bracket', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.boolean(),
        (root, slope, falling) => {
          const sign = falling ? -1 : 1;
          const f = (x: number): number => sign * (slope * (x - root) + (x - root) ** 3);
          expect(Math.abs(rootOf(f, -60, 70, 1e-10) - root)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  test('property: takes few evaluations on a smooth function', () => {
    let calls = 0;
    rootOf(
      (x) => {
        calls += 1;
        return Math.exp(x) - 5;
      },
      -4,
      6,
      1e-12,
    );
    expect(calls).toBeLessThan(20);
  });

  test('wiring: says why there is no root', () => {
    expect(findRoot((x) => x * x + 1, -1, 1)).toEqual({ kind: 'none', why: 'no sign change' });
    expect(findRoot(() => Number.NaN, -1, 1)).toEqual({ kind: 'none', why: 'not a number' });
    expect(findRoot((x) => (Math.abs(x) === 1 ? x : Number.NaN), -1, 1).kind).toBe('none');
    expect(findRoot((x) => Math.exp(9 * x) - 2, -1, 1, 0, 3)).toEqual({
      kind: 'none',
      why: 'too many iterations',
    });
  });

  test('wiring: a bracket the wrong way round is our bug', () => {
    expect(() => findRoot((x) => x, 1, -1)).toThrow('bracket');
    expect(() => findRoot((x) => x, 0, Number.POSITIVE_INFINITY)).toThrow('bracket');
  });
});
