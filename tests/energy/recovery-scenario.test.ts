import { expect, it } from 'vitest';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import { climateFor } from '@/lib/energy/climate';
import type { CauseChances } from '@/lib/energy/recovery';
import { yearlyEnergy } from '@/lib/energy/yearly-energy';
import type { Choice } from '@/lib/visit/choice';
import { exampleLoss, exampleVisit, leave, scenarioNamed } from './example-visit';

const clean: Choice = {
  kind: 'repair',
  id: 'clean',
  name: 'Clean the orifice',
  priceLines: [],
  actions: ['meteringOrificeCleaning'],
};
const bundle: Choice = {
  ...clean,
  id: 'bundle',
  actions: ['meteringOrificeCleaning', 'leakRepairAndRecharge'],
};
const wrong: Choice = { ...clean, id: 'wrong', actions: ['compressor'] };
const visit = exampleVisit({ choices: [leave, clean, bundle, wrong] });
const chances: CauseChances = {
  basis: 'readings',
  causes: [
    { cause: 'meteringRestriction', frac: 0.7 },
    { cause: 'lowCharge', frac: 0.3 },
  ],
  explainedFrac: { low: 1, likely: 1, high: 1 },
};
const result = yearlyEnergy({
  visit,
  healthy: healthyUnit({ unit: visit.unit, visitDate: visit.visitDate, assumptions: [] }),
  loss: exampleLoss,
  chances,
  climate: climateFor(visit.site.climate, visit.site.stateCode),
});

it('wiring: a repair has the cost of a year under each cause it treats, and none under others', () => {
  const { byCause = [], meetsCauseFrac } = scenarioNamed(result, 'clean');
  expect(byCause.map((c) => [c.cause, c.frac])).toEqual([['meteringRestriction', 0.7]]);
  expect(meetsCauseFrac).toBe(0.7);
  expect(byCause[0]?.costUsd.likely).toBeCloseTo(scenarioNamed(result, 'clean').likely.costUsd, 9);
  expect(byCause[0]?.costUsd.likely).toBeLessThan(scenarioNamed(result, 'asFound').likely.costUsd);
  expect(scenarioNamed(result, 'bundle').byCause).toHaveLength(2);
  expect(scenarioNamed(result, 'bundle').meetsCauseFrac).toBeCloseTo(1, 12);
});

it('property: a repair that meets no cause is the unit as found, and says so', () => {
  const missed = scenarioNamed(result, 'wrong');
  expect(missed.likely).toEqual(scenarioNamed(result, 'asFound').likely);
  expect([missed.byCause, missed.meetsCauseFrac]).toEqual([[], 0]);
  expect(result.notes.filter((n) => n.code === 'repairMissesCause')).toHaveLength(1);
});

it('property: giving back less costs more, at every end', () => {
  const costs = scenarioNamed(result, 'clean').byCause?.[0]?.costUsd;
  expect(costs?.recoveryLow).toBeGreaterThan(costs?.likely ?? Number.NaN);
  expect(costs?.recoveryHigh).toBeLessThan(costs?.likely ?? Number.NaN);
});
