import { expect, test } from 'vitest';
import type { CausesFound } from '@/lib/diagnostics/findings';
import { compareChoices } from '@/lib/finance/compare-choices';
import { comparisonModel } from '@/lib/finance/comparison-model';
import { assumptionKeys } from '@/lib/visit/assumption-keys';
import table from '@/lib/visit/data/assumptions.json';
import { demoFiles } from '../appraise/demo-files';
import { surfaceCase } from '../energy/surface-cases';
import { near } from './checks';
import { drier, energyOf, exampleCosts, exampleInput, findingsOf, leave, orifice } from './fixtures';
import { knowingFromDraws } from './information-from-draws';

const DRAWS = 40_000;

/** Every assumption at its likely value, so that only the cause and the luck of repairs are left to chance. */
const settled = assumptionKeys.map((key) => {
  const { likely } = table.values[key];
  return { key, low: likely, likely, high: likely, source: 'test' };
});

const causesOf = (lowCharge: number): CausesFound =>
  ({
    verdict: 'found',
    noFaultProbability: 0,
    causes: [
      { cause: 'lowCharge', probability: lowCharge },
      { cause: 'meteringRestriction', probability: 1 - lowCharge },
    ],
    nextReadings: [],
  }) as unknown as CausesFound;

test('outside: the value of knowing the cause is that of draws grouped by cause, within four standard errors', () => {
  for (const lowCharge of [0.2, 0.5, 0.8]) {
    const input = {
      ...exampleInput({ choices: [leave, drier, orifice], assumptions: settled }),
      energy: energyOf(
        Object.fromEntries(Object.entries(exampleCosts).map(([id, { likely }]) => [id, { likely }])),
      ),
      findings: { ...findingsOf(), causes: causesOf(lowCharge) },
    };
    const { investigate } = compareChoices(input);
    const most = investigate?.kind === 'value' ? investigate.mostUsd : Number.NaN;
    const drawn = knowingFromDraws(comparisonModel(input), input.energy, DRAWS, 17);
    expect(drawn.standardErrorUsd).toBeLessThan(15);
    near(drawn.valueUsd, most, 4 * drawn.standardErrorUsd, `chance ${lowCharge}`);
    expect(most).toBeGreaterThan(8 * drawn.standardErrorUsd);
  }
});

test('outside: on the demo visits both agree within sampling and ten dollars', () => {
  // the first holds everything else at its likely value, draws let it vary: where two choices lie close under a cause,
  // the mean over draws may order them otherwise than the likely values do. Ten dollars is what is not worth telling
  const worth = demoFiles.flatMap((visit) => {
    const c = surfaceCase(visit);
    const { investigate } = compareChoices(c);
    if (investigate?.kind !== 'value') return [];
    const drawn = knowingFromDraws(comparisonModel(c), c.energy, 10_000, 17, c.surfaces);
    return [{ id: visit.id, likelyUsd: investigate.mostUsd, ...drawn }];
  });
  expect(worth.length).toBeGreaterThan(6);
  for (const { id, likelyUsd, valueUsd, standardErrorUsd } of worth) {
    expect(valueUsd, id).toBeGreaterThanOrEqual(-1e-6);
    near(valueUsd, likelyUsd, 4 * standardErrorUsd + 10, id);
  }
});
