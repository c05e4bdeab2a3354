import { expect, test } from 'vitest';
import { stripShading, widestGap } from '@/lib/energy/strip-shading';

const point = (outdoorF: number, loadBtuh: number, capacityBtuh: number) => ({
  outdoorF,
  loadBtuh,
  capacityBtuh,
  stripBtuh: 0,
  hours: 10,
});

test('identity: by hand: lines that cross halfway shade to the crossing and no further', () => {
  // load falls 40 to 20, capacity rises 20 to 40: they meet at 30, halfway
  const shading = stripShading([point(10, 40, 20), point(20, 20, 40)]);
  expect(shading).toEqual([
    { outdoorF: 10, fromBtuh: 20, toBtuh: 40 },
    { outdoorF: 15, fromBtuh: 30, toBtuh: 30 },
    { outdoorF: 20, fromBtuh: 20, toBtuh: 20 },
  ]);
  expect(widestGap(shading)).toEqual({ outdoorF: 10, atBtuh: 30 });
});

test('property: nothing is shaded where the unit gives enough', () => {
  const shading = stripShading([point(10, 20, 30), point(20, 10, 40)]);
  expect(shading.every((gap) => gap.fromBtuh === gap.toBtuh)).toBe(true);
  expect(widestGap(shading)).toBeUndefined();
  expect(widestGap([])).toBeUndefined();
});
