import { addIndependentEstimates, type Estimate, estimate, exactEstimate } from '../math/estimate';
import { balancePointF, balancePoints } from './balance-points';
import type { EnergyScenario, EnergyYear } from './energy-result';
import { type LossEnds, recovered } from './loss-ratios';
import type { UnitBins } from './unit-bins';
import { noLoss, unitYear, type YearContext } from './unit-year';

/**
 * Yearly energy of a unit with a loss that is known as a range.
 *
 * @param id    scenario id
 * @param bins  full-speed performance of the healthy unit
 * @param ends  loss at its mild end, likely, and at its severe end
 * @param recoveredFrac  share of the log loss given back (repairs); left out = none
 * Range of cost: mild to severe end; for a repair, the range of what it gives back is added as independent.
 * Check: tests/energy/scenario.test.ts
 */
export function scenarioOf(
  id: string,
  bins: UnitBins,
  ends: LossEnds,
  context: YearContext,
  recoveredFrac?: Estimate,
): EnergyScenario {
  const back = recoveredFrac ?? exactEstimate(0);
  const year = (end: keyof LossEnds, share: number): EnergyYear =>
    unitYear(bins, recovered(ends[end], share), context);
  const likely = year('likely', back.likely);
  const mild = year('mild', back.likely);
  const severe = year('severe', back.likely);
  const recovery =
    recoveredFrac === undefined
      ? {}
      : { recoveryLow: year('likely', back.low), recoveryHigh: year('likely', back.high) };
  const rangeOf = (value: (y: EnergyYear) => number): Estimate => {
    const parts = [spread(value(likely), value(mild), value(severe))];
    if (recovery.recoveryLow !== undefined) {
      parts.push(
        spread(0, value(recovery.recoveryHigh) - value(likely), value(recovery.recoveryLow) - value(likely)),
      );
    }
    return addIndependentEstimates(parts);
  };
  const ratios = recovered(ends.likely, back.likely);
  const balanceF = balancePointF(bins, ratios, context);
  return {
    id,
    likely,
    mild,
    severe,
    ...recovery,
    costUsd: rangeOf((y) => y.costUsd),
    totalKwh: rangeOf((y) => y.totalKwh),
    balance: balancePoints(bins, ratios, context),
    ...(balanceF === undefined ? {} : { balancePointF: balanceF }),
  };
}

/** Scenario of a unit with nothing wrong. */
export function healthyScenario(id: string, bins: UnitBins, context: YearContext): EnergyScenario {
  return scenarioOf(id, bins, { mild: noLoss, likely: noLoss, severe: noLoss }, context);
}

function spread(likely: number, a: number, b: number): Estimate {
  return estimate(Math.min(likely, a, b), likely, Math.max(likely, a, b));
}
