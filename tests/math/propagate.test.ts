import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { propagate, propagateOrNone } from '@/lib/math/propagate';

describe('propagate', () => {
  test('outside: voltage over current [GUM 5.1.2: relative uncertainties of a quotient add as squares]', () => {
    const r = propagate(({ v, i }) => v / i, { v: { value: 240, sd: 1.2 }, i: { value: 12, sd: 0.12 } });
    const relative = Math.hypot(1.2 / 240, 0.12 / 12);
    expect(r.value).toBe(20);
    // central differences leave third-order terms of (0.01)^3
    expect(r.sd / 20).toBeCloseTo(relative, 5);
    expect(r.shareFrac.i).toBeCloseTo(0.8, 3);
    expect(r.shareFrac.v).toBeCloseTo(0.2, 3);
  });

  test('property: exact for a linear function, shares add up to 1', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 3, maxLength: 3 }),
        fc.array(fc.double({ min: 0.1, max: 3, noNaN: true }), { minLength: 3, maxLength: 3 }),
        ([a = 0, b = 0, c = 0], [sa = 1, sb = 1, sc = 1]) => {
          const r = propagate(({ x, y, z }) => a * x + b * y + (c + 6) * z, {
            x: { value: 1, sd: sa },
            y: { value: 2, sd: sb },
            z: { value: 3, sd: sc },
          });
          expect(r.sd).toBeCloseTo(Math.hypot(a * sa, b * sb, (c + 6) * sc), 9);
          expect(r.shareFrac.x + r.shareFrac.y + r.shareFrac.z).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  test('identity: nothing uncertain, nothing shared', () => {
    expect(propagate(({ x }) => x * 2, { x: { value: 4, sd: 0 } })).toEqual({
      value: 8,
      sd: 0,
      shareFrac: { x: 0 },
    });
  });

  test('wiring: one side without answer uses the other', () => {
    const root = ({ x }: { readonly x: number }): number | undefined => (x >= 1 ? x - 1 : undefined);
    expect(propagate(root, { x: { value: 1.5, sd: 1 } }).sd).toBe(1);
    const ceiling = ({ x }: { readonly x: number }): number | undefined => (x <= 2 ? 3 * x : undefined);
    expect(propagate(ceiling, { x: { value: 1.5, sd: 1 } }).sd).toBe(3);
  });

  test('wiring: no answer at the best value, or on either side, is our bug', () => {
    expect(() => propagate(() => Number.NaN, { x: { value: 1, sd: 1 } })).toThrow('result');
    expect(() => propagate(() => undefined, { x: { value: 1, sd: 1 } })).toThrow('result');
    const only = ({ x }: { readonly x: number }): number | undefined => (x === 1 ? 1 : undefined);
    expect(() => propagate(only, { x: { value: 1, sd: 1 } })).toThrow('either side');
    expect(() => propagate(({ x }) => x, { x: { value: 1, sd: -1 } })).toThrow('sd');
  });

  test('identity: where there may be no answer it is said, and which input has none on either side', () => {
    const x = { x: { value: 1, sd: 1 } };
    expect(propagateOrNone(() => undefined, x)).toMatchObject({ why: expect.stringContaining('undefined') });
    expect(propagateOrNone((v) => (v.x === 1 ? 1 : Number.NaN), x)).toMatchObject({ at: 'x' });
    expect(propagateOrNone((v) => 3 * v.x, x)).toEqual(propagate((v) => 3 * v.x, x));
  });
});
