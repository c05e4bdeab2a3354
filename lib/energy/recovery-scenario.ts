import { type Estimate, exactEstimate } from '../math/estimate';
import type { Repairing } from '../visit/choice';
import type { Saying } from '../visit/wording';
import beliefs from './data/cause-beliefs.json';
import type { CauseRecovery, EnergyScenario } from './energy-result';
import { type LossEnds, recovered } from './loss-ratios';
import { type CauseChances, type Recovery, recoveriesOf } from './recovery';
import { scenarioOf } from './scenario';
import type { UnitBins } from './unit-bins';
import { unitTotals } from './unit-year';
import type { HouseModel, YearContext } from './year-context';

/**
 * Yearly energy after a repair that works: by each cause it treats, and over those causes together.
 *
 * @param choice   a repair or several together
 * @param bins     full-speed performance of the healthy unit
 * @param ends     loss at its mild end, likely, and at its severe end
 * @param chances  what may be at work
 * @returns the scenario if it meets one of its causes (as found if it meets none) with the cost under each, and what
 *   there is to say about the cause
 * Check: tests/energy/recovery-scenario.test.ts
 */
export function recoveryScenario(
  choice: Repairing,
  bins: UnitBins,
  ends: LossEnds,
  context: YearContext,
  chances: CauseChances,
): { readonly scenario: EnergyScenario; readonly notes: readonly Saying[] } {
  const recoveries = recoveriesOf(choice, chances);
  const meetsFrac = recoveries.reduce((sum, r) => sum + r.frac, 0);
  const scenario = scenarioOf(choice.id, bins, ends, context, meanRecovery(recoveries, meetsFrac));
  const byCause = recoveries.map((recovery) => causeRecovery(recovery, bins, ends, context));
  return {
    scenario: { ...scenario, byCause, meetsCauseFrac: meetsFrac },
    notes: notesOf(choice, chances, meetsFrac),
  };
}

function meanRecovery(recoveries: readonly Recovery[], meetsFrac: number): Estimate {
  if (meetsFrac <= 0) return exactEstimate(0);
  const mean = (end: keyof Estimate) =>
    recoveries.reduce((sum, r) => sum + (r.frac / meetsFrac) * r.recoveredFrac[end], 0);
  return { low: mean('low'), likely: mean('likely'), high: mean('high') };
}

function causeRecovery(
  { cause, frac, recoveredFrac }: Recovery,
  bins: UnitBins,
  ends: LossEnds,
  context: YearContext,
): CauseRecovery {
  const cost = (end: keyof LossEnds, share: number, model: HouseModel = context): number =>
    unitTotals(bins, recovered(ends[end], share), { ...context, ...model }).costUsd;
  const { low, likely, high } = recoveredFrac;
  const { ends: modelEnds } = context;
  return {
    ...(cause === undefined ? {} : { cause }),
    frac,
    recoveredFrac,
    costUsd: {
      likely: cost('likely', likely),
      mild: cost('mild', likely),
      severe: cost('severe', likely),
      recoveryLow: cost('likely', low),
      recoveryHigh: cost('likely', high),
      ...(modelEnds === undefined
        ? {}
        : {
            loadLow: cost('likely', likely, modelEnds.low),
            loadHigh: cost('likely', likely, modelEnds.high),
          }),
    },
  };
}

function notesOf(choice: Repairing, chances: CauseChances, meetsFrac: number): Saying[] {
  if (chances.basis === 'unnamed') {
    return choice.addresses === undefined
      ? [{ code: 'repairCauseUnnamed', values: { choice: choice.name } }]
      : [];
  }
  const cause = chances.causes[0]?.cause;
  if (meetsFrac >= beliefs.values.missesBelowFrac.value || cause === undefined) return [];
  return [{ code: 'repairMissesCause', values: { choice: choice.name, cause } }];
}
