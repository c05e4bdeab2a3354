import { expect, test } from 'vitest';
import { appraiseWith } from '@/lib/appraise/appraise-with';
import { simulateVisit } from '@/lib/appraise/simulate-visit';
import { climateFor } from '@/lib/energy/climate';
import { demoFiles } from './demo-files';

const drawn = demoFiles.map((visit) => {
  const climate = climateFor(visit.site.climate, visit.site.stateCode);
  const appraisal = appraiseWith(visit, climate);
  return { appraisal, climate, simulation: simulateVisit(appraisal, climate, 2000, 20_260_101) };
});

test('property: for every demo visit chances add up to one and the middle of the draws lies near the likely total', () => {
  expect(drawn).toHaveLength(9);
  for (const { appraisal, simulation } of drawn) {
    expect(simulation.choices.reduce((sum, c) => sum + c.cheapestFrac, 0)).toBeCloseTo(1, 9);
    expect(simulation.perfectInformationUsd).toBeGreaterThanOrEqual(0);
    for (const { id, totalTodayUsd } of simulation.choices) {
      const likely =
        appraisal.comparison.choices.find((c) => c.id === id)?.totalTodayUsd.likely ?? Number.NaN;
      expect(totalTodayUsd.low, `${appraisal.visit.id} ${id}`).toBeLessThan(likely);
      expect(totalTodayUsd.high).toBeGreaterThan(likely);
      expect(Math.abs(totalTodayUsd.likely / likely - 1)).toBeLessThan(0.12);
    }
  }
});

test('property: the same seed gives the same simulation, another seed another', () => {
  const [first] = drawn;
  if (first === undefined) throw new Error('no demo visit');
  const { appraisal, climate, simulation } = first;
  expect(simulateVisit(appraisal, climate, 2000, 20_260_101)).toEqual(simulation);
  expect(simulateVisit(appraisal, climate, 2000, 20_260_102)).not.toEqual(simulation);
});
