import type { CostEnds, EnergyResult, EnergyScenario, EnergyTotals } from '../energy/energy-result';
import type { CauseId } from '../visit/cause';

/** Key of a repair's cost under a cause it treats; the scenario's own id where no cause is named. */
export function costKey(id: string, cause: CauseId | undefined): string {
  return cause === undefined ? id : `${id}|${cause}`;
}

/** Cost of one way a unit can run, at the ends of what is uncertain. */
export type KeyedCosts = {
  readonly key: string;
  readonly id: string;
  readonly costs: CostEnds;
};

/**
 * Cost of every scenario, and of every repair under each cause it treats.
 *
 * @returns keyed by scenario id, and by `costKey` for repairs under a cause
 * Check: tests/finance/scenario-costs.test.ts
 */
export function scenarioCosts(energy: EnergyResult): readonly KeyedCosts[] {
  return energy.scenarios.flatMap((s) => [
    { key: s.id, id: s.id, costs: endsOf(s) },
    ...(s.byCause ?? []).map(({ cause, costUsd }) => ({
      key: costKey(s.id, cause),
      id: s.id,
      costs: costUsd,
    })),
  ]);
}

function endsOf(s: EnergyScenario): CostEnds {
  const optional = (key: keyof CostEnds, year: EnergyTotals | undefined) =>
    year === undefined ? {} : { [key]: year.costUsd };
  return {
    likely: s.likely.costUsd,
    mild: s.mild.costUsd,
    severe: s.severe.costUsd,
    ...optional('recoveryLow', s.recoveryLow),
    ...optional('recoveryHigh', s.recoveryHigh),
    ...optional('loadLow', s.loadLow),
    ...optional('loadHigh', s.loadHigh),
    ...optional('ratedLow', s.ratedLow),
    ...optional('ratedHigh', s.ratedHigh),
  };
}
