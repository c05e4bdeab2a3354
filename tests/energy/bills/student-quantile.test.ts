import { describe, expect, it } from 'vitest';
import { studentQuantile } from '@/lib/energy/bills/student-quantile';

describe("outside: Student's t [standard statistical tables, memory; printed to three decimals]", () => {
  it.each([
    [0.05, 1, 12.706],
    [0.05, 7, 2.365],
    [0.05, 9, 2.262],
    [0.05, 30, 2.042],
    [0.1, 10, 1.812],
    [0.01, 5, 4.032],
    [0.5, 4, 0.741],
  ])('both tails %f, %d degrees of freedom', (tail, degrees, t) => {
    expect(Math.abs(studentQuantile(tail, degrees) - t)).toBeLessThan(0.0006);
  });

  it('refuses what is no probability', () => {
    expect(() => studentQuantile(0, 5)).toThrow('t quantile');
    expect(() => studentQuantile(0.05, 0)).toThrow('t quantile');
  });
});
