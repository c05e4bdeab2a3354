import { expect, test } from 'vitest';
import { contrastOnWhite, leastContrast, nearestReadable } from '@/lib/visit/contrast';

test('outside: contrast on white of well-known colours [WCAG 2.2 formula; #767676 is the lightest passing grey, memory]', () => {
  expect(contrastOnWhite('#000000')).toBeCloseTo(21, 6);
  expect(contrastOnWhite('#ffffff')).toBeCloseTo(1, 6);
  expect(contrastOnWhite('#767676')).toBeCloseTo(4.54, 2);
  expect(contrastOnWhite('#777777')).toBeCloseTo(4.48, 2);
  expect(contrastOnWhite('#ff0000')).toBeCloseTo(4.0, 2);
});

test('property: the nearest shade passes, one step lighter does not, and a passing colour stays', () => {
  for (const colour of ['#ffff00', '#ff0000', '#00ff00', '#88ccff', '#f7c948', '#ffffff']) {
    const shade = nearestReadable(colour);
    expect(contrastOnWhite(shade)).toBeGreaterThanOrEqual(leastContrast);
    // One percent of the mixture changes a contrast of 4.5 by at most 0.2.
    expect(contrastOnWhite(shade)).toBeLessThan(leastContrast + 0.2);
  }
  expect(nearestReadable('#14506e')).toBe('#14506e');
});
