import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluatePolynomial, fitPolynomial, fitPolynomial2 } from '@/lib/math/polynomial-fit';

const point = fc.double({ min: -1, max: 1, noNaN: true });

describe('polynomial fits', () => {
  test('identity: a polynomial is found again', () => {
    const found = fitPolynomial((u) => 2 - 3 * u + 0.5 * u ** 3, 4);
    const expected = [2, -3, 0, 0.5, 0];
    for (const [i, coefficient] of expected.entries()) expect(found[i]).toBeCloseTo(coefficient, 13);
    expect.assertions(5);
  });

  test('identity: a polynomial of two variables is found again, blocks by power of v', () => {
    const found = fitPolynomial2((u, v) => 1 + 2 * u + 3 * v - 4 * u * u * v, 2, 1);
    const expected = [1, 2, 0, 3, 0, -4];
    for (const [i, coefficient] of expected.entries()) expect(found[i]).toBeCloseTo(coefficient, 13);
    expect(found.length).toBe(6);
  });

  test('identity: degree 0 is a constant', () => {
    expect([...fitPolynomial(() => 7, 0)]).toEqual([7]);
  });

  test('property: the exponential to 1e-11 at degree 12 (next Chebyshev term is 2.5e-14)', () => {
    const fit = fitPolynomial(Math.exp, 12);
    fc.assert(
      fc.property(point, (u) => {
        expect(Math.abs(evaluatePolynomial(fit, u) - Math.exp(u))).toBeLessThan(1e-11);
      }),
    );
  });

  test('wiring: degree out of range or a function that is not finite is our bug', () => {
    expect(() => fitPolynomial((u) => u, 17)).toThrow('degree');
    expect(() => fitPolynomial((u) => u, -1)).toThrow('degree');
    expect(() => fitPolynomial(() => Number.NaN, 3)).toThrow('finite');
  });
});
