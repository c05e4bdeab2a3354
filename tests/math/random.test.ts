import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { randomStream } from '@/lib/math/random';

const take = (seed: number, key: string, n: number): number[] => {
  const stream = randomStream(seed, key);
  return Array.from({ length: n }, () => stream.uint32());
};

describe('randomStream', () => {
  test('regression: first words of three streams (our own earlier output)', () => {
    expect(take(1, 'price', 3)).toMatchInlineSnapshot(`
      [
        3522867446,
        3591863849,
        3222754020,
      ]
    `);
    expect(take(1, 'loss', 3)).toMatchInlineSnapshot(`
      [
        628489914,
        847097103,
        2139412211,
      ]
    `);
    expect(take(-7, 'price', 3)).toMatchInlineSnapshot(`
      [
        1105855680,
        2983148439,
        356292498,
      ]
    `);
  });

  test('property: same seed and key give the same numbers; another seed or key gives others', () => {
    fc.assert(
      fc.property(fc.maxSafeInteger(), fc.string(), (seed, key) => {
        expect(take(seed, key, 4)).toEqual(take(seed, key, 4));
        expect(take(seed, `${key}x`, 4)).not.toEqual(take(seed, key, 4));
        expect(take(seed > 0 ? seed - 1 : seed + 1, key, 4)).not.toEqual(take(seed, key, 4));
      }),
    );
  });

  test('property: seeds 2^32 apart differ', () => {
    expect(take(5, 'a', 4)).not.toEqual(take(5 + 2 ** 32, 'a', 4));
  });

  test('property: one stream does not disturb another', () => {
    const a = randomStream(3, 'a');
    const b = randomStream(3, 'b');
    const mixed = Array.from({ length: 5 }, () => {
      b.normal();
      return a.uint32();
    });
    expect(mixed).toEqual(take(3, 'a', 5));
  });

  test('property: uniforms fill (0, 1) evenly (chi-square over 100 cells; fixed seed)', () => {
    const stream = randomStream(2024, 'uniform');
    const cells = new Array<number>(100).fill(0);
    const draws = 100_000;
    let inside = 0;
    for (let i = 0; i < draws; i += 1) {
      const u = stream.uniform();
      inside += u > 0 && u < 1 ? 1 : 0;
      const cell = Math.floor(u * 100);
      cells[cell] = (cells[cell] ?? 0) + 1;
    }
    const chiSquare = cells.reduce((sum, n) => sum + (n - 1000) ** 2 / 1000, 0);
    expect(inside).toBe(draws);
    // 99 degrees of freedom: 0.01 % and 99.99 % points are about 54 and 159
    expect(chiSquare).toBeGreaterThan(54);
    expect(chiSquare).toBeLessThan(159);
  });

  test('property: streams of neighbouring seeds and keys are uncorrelated', () => {
    const draws = 20_000;
    const pairs = [
      [randomStream(1, 'a'), randomStream(2, 'a')],
      [randomStream(1, 'a'), randomStream(1, 'b')],
      [randomStream(1, 'a1'), randomStream(1, 'a2')],
    ] as const;
    for (const [left, right] of pairs) {
      let sum = 0;
      for (let i = 0; i < draws; i += 1) sum += (left.uniform() - 0.5) * (right.uniform() - 0.5) * 12;
      // standard error of the correlation is 1 / sqrt(20,000) = 0.0071; four of them
      expect(Math.abs(sum / draws)).toBeLessThan(0.028);
    }
    expect.assertions(3);
  });

  test('property: normals have mean 0, variance 1, and 2.5 % beyond 1.96', () => {
    const stream = randomStream(11, 'normal');
    const draws = 100_000;
    let sum = 0;
    let squares = 0;
    let beyond = 0;
    for (let i = 0; i < draws; i += 1) {
      const z = stream.normal();
      sum += z;
      squares += z * z;
      beyond += z > 1.959964 ? 1 : 0;
    }
    expect(Math.abs(sum / draws)).toBeLessThan(4 / Math.sqrt(draws));
    expect(Math.abs(squares / draws - 1)).toBeLessThan(4 * Math.sqrt(2 / draws));
    expect(Math.abs(beyond / draws - 0.025)).toBeLessThan(4 * Math.sqrt((0.025 * 0.975) / draws));
  });

  test('property: below(n) reaches every whole number and no other', () => {
    const stream = randomStream(9, 'dice');
    const seen = new Set(Array.from({ length: 500 }, () => stream.below(6)));
    expect([...seen].sort()).toEqual([0, 1, 2, 3, 4, 5]);
    expect(() => stream.below(0)).toThrow('below');
  });

  test('wiring: a seed that is no whole number is our bug', () => {
    expect(() => randomStream(0.5, 'a')).toThrow('seed');
    expect(() => randomStream(Number.NaN, 'a')).toThrow('seed');
  });
});
