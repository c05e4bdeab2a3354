import { climateFor } from '../energy/climate';
import { energySurfaces } from '../energy/energy-surface';
import { compareChoices } from '../finance/compare-choices';
import type { Comparison } from '../finance/comparison';
import { comparisonModel } from '../finance/comparison-model';
import data from '../finance/data/past-visits.json';
import type { MeasuredRepair } from '../finance/outcomes/success-rate';
import type { RuleFacts } from '../finance/shop-rules/apply-rules';
import { simulateTotals, summarise } from '../finance/simulate';
import type { Visit } from '../visit/visit';
import { appraiseRepair } from './appraise-repair';
import { energyInput, lineOfVisit } from './line-of-visit';

/** A stored visit as the owner looks back on it. */
export type PastFacts = {
  readonly rules: RuleFacts;
  /** Where the unit was read again after a repair. */
  readonly repair?: Omit<MeasuredRepair, 'visitId'>;
};

/**
 * What shop rules and outcomes need of a past visit: its comparison without the yearly rows, the chances of being
 * cheapest, the age and price that the rules judge by, and what its repair brought if it was read again.
 *
 * @param visit  a checked visit
 * Check: tests/appraise/past-visit.test.ts
 */
export function pastFacts(visit: Visit): PastFacts {
  const climate = climateFor(visit.site.climate, visit.site.stateCode);
  const line = lineOfVisit(visit, climate);
  const surfaces = energySurfaces(energyInput(visit, line.findings, climate));
  const input = { visit, ...line };
  const model = comparisonModel(input);
  const { draws, seed } = data.values;
  const chances = summarise(
    model,
    simulateTotals(model, line.energy, draws.value, seed.value, surfaces),
    seed.value,
  ).choices;
  const hottest = visit.runs.flatMap((run) => run.dischargeLineF ?? []);
  const repair = measuredRepair(visit);
  return {
    rules: {
      comparison: withoutRows(compareChoices(input)),
      ageYears: model.likely.ageYears,
      newPriceUsd: model.likely.replacementUsd,
      ...(hottest.length === 0 ? {} : { dischargeF: Math.max(...hottest) }),
      cheapestFrac: Object.fromEntries(chances.map(({ id, cheapestFrac }) => [id, cheapestFrac])),
    },
    ...(repair === undefined ? {} : { repair }),
  };
}

/** Many past visits are held at once; what no rule reads is left out. */
function withoutRows(comparison: Comparison): Comparison {
  const { investigate: _i, flipMap: _f, replaceLater: _r, ...kept } = comparison;
  return { ...kept, choices: kept.choices.map((choice) => ({ ...choice, rows: [], drivers: [] })) };
}

function measuredRepair(visit: Visit): PastFacts['repair'] {
  const found = appraiseRepair(visit);
  if (found.kind === 'none') return undefined;
  const healthy = found.energy.scenarios.find((s) => s.id === 'healthy');
  if (healthy === undefined) return undefined;
  const done = visit.choices.find((c) => 'actions' in c && c.shownByRun === found.afterRunId);
  const aim = done !== undefined && 'actions' in done ? done.addresses : undefined;
  const cause = aim ?? visit.suspectedCause?.cause;
  return {
    ...(cause === undefined ? {} : { cause }),
    ...(found.repairName === undefined ? {} : { repairName: found.repairName }),
    lossUsd: found.costBeforeUsd.likely - healthy.likely.costUsd,
    healthyUsd: healthy.likely.costUsd,
    measuredUsd: found.measuredSavingUsd,
    ...(found.predictedSavingUsd === undefined ? {} : { promisedUsd: found.predictedSavingUsd }),
  };
}
