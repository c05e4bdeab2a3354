import { describe, expect, it } from 'vitest';
import { solveThree, type Triple } from '../../scripts/synthesis/solve-three';

describe('three equations', () => {
  it('identity: a known root is found to tolerance', () => {
    const misses = ([x, y, z]: Triple): Triple => [x * x + y - 3, y * z - 2, x + y + z - 5];
    const found = solveThree(misses, [1.5, 0.8, 2.5]);
    expect(found.kind).toBe('solved');
    expect(misses(found.at).every((m) => Math.abs(m) < 1e-7)).toBe(true);
  });

  it('property: no root says stuck, an exception counts as infinitely far', () => {
    expect(solveThree(([x, y, z]) => [x * x + 1, y, z], [3, 1, 1]).kind).toBe('stuck');
    expect(
      solveThree(() => {
        throw new Error('outside');
      }, [0, 0, 0]).kind,
    ).toBe('stuck');
  });
});
