import { expect, test } from 'vitest';
import { houseAt, surfaceCosts } from '@/lib/energy/cost-surface';
import { Z_10_90 } from '@/lib/math/estimate';
import { exampleVisit } from './example-visit';
import { flat, surfaceCase, tiered } from './surface-cases';

const { context, surfaces } = surfaceCase(exampleVisit());

test('identity: the house at the 10 and 90 % points is the house at its ends, and at 0 the likely one', () => {
  const { ends } = context;
  for (const [z, end] of [
    [-Z_10_90, ends?.low],
    [Z_10_90, ends?.high],
    [0, context],
  ] as const) {
    const house = houseAt(context, z);
    expect(house.load.heatingBtuhPerF).toBeCloseTo(end?.load.heatingBtuhPerF ?? Number.NaN, 8);
    expect(house.load.coolingBtuhPerF).toBeCloseTo(end?.load.coolingBtuhPerF ?? Number.NaN, 8);
    expect(house.load.heatingBalanceF).toBeCloseTo(end?.load.heatingBalanceF ?? Number.NaN, 8);
    expect(house.load.coolingBalanceF).toBeCloseTo(end?.load.coolingBalanceF ?? Number.NaN, 8);
    expect(house.cyclicRatio).toBeCloseTo(end?.cyclicRatio ?? Number.NaN, 8);
    expect(house.frostRatio).toBeCloseTo(end?.frostRatio ?? Number.NaN, 8);
  }
  expect(ends?.low.load.heatingBtuhPerF).toBeLessThan(context.load.heatingBtuhPerF);
});

test('property: the need axis rises, ends at four sigma and has its bend in the middle', () => {
  for (const mode of ['heating', 'cooling'] as const) {
    const ends = Array.from(surfaces.existing[mode].need.ends);
    expect(ends[0]).toBe(-4);
    expect(ends.at(-1)).toBe(4);
    expect(ends).toContain(0);
    expect(ends.slice(1).every((end, i) => end > (ends[i] ?? 0) && end - (ends[i] ?? 0) <= 0.4 + 1e-9)).toBe(
      true,
    );
  }
});

test('identity: many places in one call are each place on its own', () => {
  for (const tariff of [flat, tiered]) {
    const surface = surfaceCase(exampleVisit({ tariff })).surfaces.existing;
    const columns = (values: readonly number[]) => ({
      heatingLnCapacity: Float64Array.from(values, (v) => -0.1 * v),
      heatingPower: Float64Array.from(values, (v) => 1 + 0.05 * v),
      coolingLnCapacity: Float64Array.from(values, (v) => -0.05 * v),
      coolingPower: Float64Array.from(values, (v) => 1 - 0.05 * v),
      needZ: Float64Array.from(values),
    });
    const values = [-3.9, -1.3, 0, 0.4, 2.2];
    const together = surfaceCosts(surface, columns(values));
    expect(Array.from(together)).toEqual(values.map((v) => surfaceCosts(surface, columns([v]))[0]));
  }
});
