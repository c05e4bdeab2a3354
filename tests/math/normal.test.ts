import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normalCdf, normalQuantile } from '@/lib/math/normal';

// Printed table values of the standard normal distribution; status memory, 7 to 10 digits as printed.
const table: readonly (readonly [number, number])[] = [
  [0, 0.5],
  [0.5, 0.6914624613],
  [1, 0.8413447461],
  [1.2815515655, 0.9],
  [1.644853627, 0.95],
  [1.9599639845, 0.975],
  [2.5758293035, 0.995],
  [3, 0.998650102],
  [3.0902323062, 0.999],
];

describe('normal distribution', () => {
  test('outside: distribution function [Abramowitz and Stegun 1964, table 26.1]', () => {
    for (const [z, p] of table) expect(Math.abs(normalCdf(z) - p), `z ${z}`).toBeLessThan(1e-10);
    expect.assertions(9);
  });

  test('outside: inverse [Abramowitz and Stegun 1964, table 26.1]', () => {
    for (const [z, p] of table) expect(Math.abs(normalQuantile(p) - z), `p ${p}`).toBeLessThan(2e-8);
    expect.assertions(9);
  });

  test('outside: far tails [Wichura 1988, check values of AS 241: p = 1e-20 gives -9.262340089798408]', () => {
    expect(normalQuantile(1e-20)).toBeCloseTo(-9.26234008979841, 12);
    expect(normalQuantile(0.25)).toBeCloseTo(-0.6744897501960817, 15);
    expect(normalQuantile(0.001)).toBeCloseTo(-3.090232306167814, 13);
  });

  test('identity: distribution function equals the integral of the density', () => {
    const steps = 4000;
    for (const z of [-3, -1.7, -0.4, 0.9, 2.2]) {
      let sum = 0;
      for (let i = 0; i < steps; i += 1) {
        const x = (z * (i + 0.5)) / steps;
        sum += (Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)) * (z / steps);
      }
      expect(normalCdf(z) - 0.5, `z ${z}`).toBeCloseTo(sum, 7);
    }
    expect.assertions(5);
  });

  test('property: function and inverse undo each other, over all three branches', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-12, max: 1 - 1e-12, noNaN: true }), (p) => {
        expect(Math.abs(normalCdf(normalQuantile(p)) - p)).toBeLessThan(1e-14);
      }),
    );
    fc.assert(
      fc.property(fc.double({ min: -20, max: -4, noNaN: true }), (exponent) => {
        const p = 10 ** exponent;
        expect(normalCdf(normalQuantile(p)) / p).toBeCloseTo(1, 6);
      }),
    );
  });

  test('property: symmetric and bounded', () => {
    fc.assert(
      fc.property(fc.double({ min: -45, max: 45, noNaN: true }), (z) => {
        expect(normalCdf(z) + normalCdf(-z)).toBeCloseTo(1, 15);
        expect(normalCdf(z)).toBeGreaterThanOrEqual(0);
        expect(normalCdf(z)).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('wiring: certain or impossible probabilities are our bug', () => {
    for (const p of [0, 1, -0.1, 1.1, Number.NaN]) expect(() => normalQuantile(p)).toThrow('probability');
    expect(() => normalCdf(Number.NaN)).toThrow('NaN');
    expect.assertions(6);
  });
});
