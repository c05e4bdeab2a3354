import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareChoices } from '@/lib/finance/compare-choices';
import { comparisonModel } from '@/lib/finance/comparison-model';
import { foundHazardRatio } from '@/lib/finance/hazard-ratio';
import { worldsByCause, worldsOf } from '@/lib/finance/worlds';
import { CauseId } from '@/lib/visit/cause';
import { anyInput } from './arbitraries';
import { near } from './checks';
import { chancesOf, exampleInput, leave, orifice, single } from './fixtures';

const model = comparisonModel(exampleInput());
const chances = chancesOf(['meteringRestriction', 0.6], ['lowCharge', 0.3], ['none', 0.1]);

test('outside: a repair over three causes by hand', () => {
  const by = worldsByCause(orifice, model.likely, chances);
  const success = 0.85 ** 0.8;
  expect(by.map((c) => c.curedFrac)).toEqual([success, 0, 0]);
  expect(by.map((c) => c.uncured.hazardRatio)).toEqual([1.2, 1.2, 1]);
  expect(by[0]?.cured).toMatchObject({ hazardRatio: 1, energyUsd: 1510 });
  const worlds = worldsOf(orifice, model.likely, chances);
  const mean = worlds.reduce((sum, w) => sum + w.weightFrac * w.energyUsd, 0);
  near(mean, 0.6 * success * 1510 + (1 - 0.6 * success) * 1890, 1e-9, 'energy of the first year');
});

test('property: weights add up to one for every choice, and a shown repair has worked whatever the cause', () => {
  fc.assert(
    fc.property(anyInput, (input) => {
      const m = comparisonModel(input);
      for (const { choice } of m.choices) {
        const worlds = worldsOf(choice, m.likely, m.chances);
        near(
          worlds.reduce((sum, w) => sum + w.weightFrac, 0),
          1,
          1e-9,
          choice.id,
        );
      }
    }),
    { numRuns: 50 },
  );
  const shown = worldsByCause({ ...orifice, shownByRun: 'after' }, model.likely, chances);
  expect(shown.map((c) => c.curedFrac)).toEqual([1, 1, 1]);
});

test('property: the larger of the two risks counts, and each cause has a strength of its own', () => {
  expect(foundHazardRatio(1.5, 1.2, 'lowCharge')).toBe(1.5);
  expect(foundHazardRatio(1, 1.2, 'lowCharge')).toBeCloseTo(1.2, 12);
  expect(foundHazardRatio(1, 1.2, 'compressorValvesLeaking')).toBeGreaterThan(1.5);
  expect(foundHazardRatio(1, 1.2, 'lowIndoorAirflow')).toBe(1);
  expect(CauseId.options.every((cause) => foundHazardRatio(1, 1.2, cause) >= 1)).toBe(true);
  expect(foundHazardRatio(1, 1.2, undefined)).toBe(1);
});

test('identity: leaving it and replacing it do not depend on whether a repair would cure', () => {
  const totals = (frac: number) => {
    const certain = {
      key: 'repairSuccessFrac' as const,
      low: frac,
      likely: frac,
      high: frac,
      source: 'test',
    };
    const input = exampleInput({ choices: [leave, orifice, single], assumptions: [certain] });
    return compareChoices(input).choices.map((c) => c.totalTodayUsd.likely);
  };
  const [never, always] = [totals(0), totals(1)];
  expect([never[0], never[2]]).toEqual([always[0], always[2]]);
  expect(never[1]).toBeGreaterThan(always[1] ?? 0);
});
