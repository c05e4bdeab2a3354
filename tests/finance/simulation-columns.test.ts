import fc from 'fast-check';
import { expect, test } from 'vitest';
import { comparisonModel } from '@/lib/finance/comparison-model';
import { drawColumns } from '@/lib/finance/simulation-columns';
import { anyInput } from './arbitraries';
import { near } from './checks';
import { energyOf, exampleCosts, exampleInput } from './fixtures';

test('outside: shares of the draws below and above the stated points', () => {
  const input = exampleInput();
  const columns = drawColumns(comparisonModel(input), input.energy, 20_000, 11);
  const below = (column: Float64Array, x: number) => column.filter((v) => v < x).length / 20_000;
  // 4 standard errors: 0.0085 at a share of 0.1, 0.0141 at 0.5
  near(below(columns.values.medianLifeYears, 15), 0.1, 0.0085, 'life 10 %');
  near(below(columns.values.medianLifeYears, 20.5), 0.9, 0.0085, 'life 90 %');
  near(below(columns.energyUsd.asFound ?? new Float64Array(), 1640), 0.1, 0.0085, 'energy 10 %');
  near(below(columns.energyUsd.asFound ?? new Float64Array(), 2180), 0.9, 0.0085, 'energy 90 %');
  near(below(columns.values.ailingHazardRatio, 1.2), 0.5, 0.0141, 'hazard');
  near(below(columns.luck, 0.85), 0.85, 0.0101, 'luck of repairs');
  expect(new Set(columns.energyUsd.single)).toEqual(new Set([1180]));
  expect(new Set(columns.replacementUsd)).toEqual(new Set([9002.05]));
  expect(new Set(columns.values.discountFracPerYear)).toEqual(new Set([0.05]));
});

test('outside: the need of the house moves all scenarios in one draw, the power of new units only those', () => {
  const costs = {
    ...exampleCosts,
    asFound: { likely: 1890, loadLow: 1500, loadHigh: 2500 },
    healthy: { likely: 1450, loadLow: 1150, loadHigh: 1900 },
    single: { likely: 1180, ratedLow: 1100, ratedHigh: 1290 },
  };
  const energy = energyOf(costs);
  const columns = drawColumns(comparisonModel({ ...exampleInput(), energy }), energy, 20_000, 13).energyUsd;
  const { asFound = new Float64Array(), healthy = new Float64Array(), single = new Float64Array() } = columns;
  const below = (column: Float64Array, x: number) => column.filter((v) => v < x).length / 20_000;
  near(below(asFound, 1500), 0.1, 0.0085, 'need 10 %');
  near(below(asFound, 2500), 0.9, 0.0085, 'need 90 %');
  near(below(single, 1100), 0.1, 0.0085, 'rating 10 %');
  near(below(single, 1290), 0.9, 0.0085, 'rating 90 %');
  const apart = (other: Float64Array, middle: number) =>
    asFound.filter((usd, n) => usd > 1890 !== (other[n] ?? 0) > middle).length / 20_000;
  near(apart(healthy, 1450), 0, 0, 'above or below together');
  near(apart(single, 1180), 0.5, 0.0141, 'independent');
});

test('property: another seed gives other draws, another choice does not reshuffle them', () => {
  const input = exampleInput();
  const few = exampleInput({ choices: [] });
  const columns = (i: typeof input, seed: number) =>
    drawColumns(comparisonModel(i), i.energy, 50, seed).values.medianLifeYears;
  expect(columns(input, 1)).toEqual(columns(few, 1));
  expect(columns(input, 1)).not.toEqual(columns(input, 2));
});

test('property: whatever is assumed, draws stay inside the limits and a repair never costs energy', () => {
  fc.assert(
    fc.property(anyInput, fc.integer({ min: 0, max: 1e6 }), (input, seed) => {
      const model = comparisonModel(input);
      const c = drawColumns(model, input.energy, 40, seed);
      const all = [...Object.values(c.values), ...Object.values(c.energyUsd), c.ageYears, c.hotRatio];
      expect(all.every((column) => column.every((x) => Number.isFinite(x) && x >= -0.1))).toBe(true);
      expect(c.values.medianLifeYears.every((x) => x >= 3 && x <= 60)).toBe(true);
      expect(c.valueLeftFrac.every((x) => x >= 0 && x <= 1)).toBe(true);
      const repairs = model.choices
        .filter((p) => p.choice.kind === 'repair')
        .map((p) => c.energyUsd[p.choice.id]);
      expect(repairs.every((e) => e?.every((usd, n) => usd <= (c.energyUsd.asFound?.[n] ?? -1)))).toBe(true);
    }),
    { numRuns: 60 },
  );
});
