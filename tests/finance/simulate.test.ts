import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareChoices } from '@/lib/finance/compare-choices';
import { comparisonModel } from '@/lib/finance/comparison-model';
import { simulate, simulateTotals, summarise } from '@/lib/finance/simulate';
import { assumptionKeys } from '@/lib/visit/assumption-keys';
import type { RepairChoice } from '@/lib/visit/choice';
import table from '@/lib/visit/data/assumptions.json';
import { anyInput } from './arbitraries';
import { near } from './checks';
import { allChoices, drier, energyOf, exampleCosts, exampleInput, leave, orifice } from './fixtures';

type Input = ReturnType<typeof exampleInput>;
const run = (input: Input, draws: number, seed: number) => {
  const model = comparisonModel(input);
  return summarise(model, simulateTotals(model, input.energy, draws, seed), seed);
};

test('identity: with nothing uncertain every draw is the likely total', () => {
  const fixed = assumptionKeys.map((key) => {
    const likely = key === 'repairSuccessFrac' ? 1 : table.values[key].likely;
    return { key, low: likely, likely, high: likely, source: 'test' };
  });
  const energy = energyOf(
    Object.fromEntries(Object.entries(exampleCosts).map(([id, c]) => [id, { likely: c.likely }])),
  );
  const compressor = { ...drier, actions: [...drier.actions, 'compressor' as const] };
  const choices = allChoices.map((c) => (c.id === drier.id ? compressor : c));
  const input = {
    ...exampleInput({ assumptions: fixed, convention: { residual: 'none' }, choices }),
    energy,
  };
  const simulated = run(input, 50, 3);
  const compared = compareChoices(input).choices;
  expect(compared).toHaveLength(5);
  for (const [i, c] of compared.entries()) {
    near(simulated.choices[i]?.meanTodayUsd ?? 0, c.totalTodayUsd.likely, 1e-6, c.id);
    near(simulated.choices[i]?.standardErrorUsd ?? 1, 0, 1e-6, c.id);
  }
  near(simulated.perfectInformationUsd, 0, 1e-6, 'nothing to find out');
});

test('identity: a repair that a run shows to have worked cures in every draw', () => {
  const shown = { ...orifice, shownByRun: 'after' };
  const certain = [
    { key: 'repairSuccessFrac' as const, low: 1, likely: 1, high: 1, source: 'every repair cures' },
  ];
  const byShown = run(exampleInput({ choices: [leave, shown] }), 200, 4).choices[1];
  const byCertain = run(exampleInput({ choices: [leave, orifice], assumptions: certain }), 200, 4).choices[1];
  expect(byShown?.meanTodayUsd).toBeGreaterThan(1000);
  expect(byShown?.meanTodayUsd).toBe(byCertain?.meanTodayUsd);
});

test('outside: the range by root sum of squares lies near the 10 and 90 % points of 20,000 draws', () => {
  // two ways to a range: first order from the ends of each input, and draws with interactions and cured-or-not. They
  // may part where an input acts far from straight; a third of the width is what one may trust the first order with
  const input = exampleInput();
  const { choices } = compareChoices(input);
  const simulated = run(input, 20_000, 5);
  expect(choices).toHaveLength(5);
  for (const [i, c] of choices.entries()) {
    const { low, high } = c.totalTodayUsd;
    const drawn = simulated.choices[i]?.totalTodayUsd ?? { low: 0, likely: 0, high: 0 };
    near(drawn.low, low, (high - low) / 3, `${c.id} low`);
    near(drawn.high, high, (high - low) / 3, `${c.id} high`);
    near(drawn.likely, c.totalTodayUsd.likely, (high - low) / 4, `${c.id} middle`);
  }
});

test('property: more draws narrow the error as the square root says', () => {
  const error = (draws: number) => run(exampleInput(), draws, 9).choices[1]?.standardErrorUsd ?? 0;
  near(error(1000) / error(16_000), 4, 0.5, 'sixteen times the draws, a quarter of the error');
  const [small, large] = [run(exampleInput(), 4000, 1), run(exampleInput(), 4000, 2)];
  expect(small.choices).toHaveLength(5);
  for (const [i, c] of small.choices.entries()) {
    const other = large.choices[i];
    const limit = 4 * Math.hypot(c.standardErrorUsd, other?.standardErrorUsd ?? 0);
    near(c.meanTodayUsd, other?.meanTodayUsd ?? 0, limit, c.id);
  }
});

test('property: chances of costing least add up to one; the value of knowing is never negative', () => {
  fc.assert(
    fc.property(anyInput, fc.integer({ min: 0, max: 1e6 }), (input, seed) => {
      const s = run(input as Input, 60, seed);
      expect(s.choices.reduce((sum, c) => sum + c.cheapestFrac, 0)).toBeCloseTo(1, 9);
      expect(s.perfectInformationUsd).toBeGreaterThanOrEqual(0);
      expect(s.choices.every((c) => Object.values(c.totalTodayUsd).every(Number.isFinite))).toBe(true);
      expect(
        s.choices.every(
          (c) =>
            c.totalTodayUsd.low <= c.totalTodayUsd.likely && c.totalTodayUsd.likely <= c.totalTodayUsd.high,
        ),
      ).toBe(true);
    }),
    { numRuns: 60 },
  );
});

test('property: one choice that wins in every draw leaves nothing to find out', () => {
  // no fault in the circuit is suspected, so that no choice changes the risk of failing
  const gift: RepairChoice = {
    ...orifice,
    actions: ['openRegisters'],
    priceLines: [{ kind: 'other', label: 'price', amount: 1, unitPriceUsd: 0 }],
  };
  const simulated = run(exampleInput({ choices: [leave, gift] }, 'lowIndoorAirflow'), 500, 4);
  expect(simulated.choices[0]?.expectedRegretUsd).toBeGreaterThan(0);
  near(simulated.perfectInformationUsd, 0, 1e-6, 'a free repair never costs more');
});

test('property: the same seed gives the same bytes', () => {
  expect(run(exampleInput(), 200, 42)).toEqual(run(exampleInput(), 200, 42));
});

test('regression: our own figures for seed 20261103, to the dollar', () => {
  const dollars = run(exampleInput(), 10_000, 20_261_103).choices.map((c) => Math.round(c.meanTodayUsd));
  expect(dollars).toEqual([20_170, 18_948, 21_043, 20_474, 19_345]);
});

test('wiring: the one call for a worker is the model, its draws and their summary', () => {
  const input = exampleInput();
  expect(simulate({ ...input, draws: 200, seed: 42 })).toEqual(run(input, 200, 42));
});
