import { addIndependentEstimates, type Estimate, estimate, exactEstimate, Z_10_90 } from '../math/estimate';
import { balancePointF, balancePoints } from './balance-points';
import type { EnergyScenario, EnergyTotals } from './energy-result';
import { type LossEnds, type LossRatios, noLoss, recovered } from './loss-ratios';
import type { UnitBins } from './unit-bins';
import { unitTotals, unitYear } from './unit-year';
import type { YearContext } from './year-context';

/**
 * Yearly energy of a unit with a loss that is known as a range.
 *
 * @param id    scenario id
 * @param bins  full-speed performance of the healthy unit
 * @param ends  loss at its mild end, likely, and at its severe end
 * @param recoveredFrac  share of the log loss given back (repairs); left out = none
 * @param rated  power of a new unit at both ends, as ratios to the likely one; left out = a unit that is in place
 * Range of cost: mild to severe end of the loss; what a repair gives back, what was assumed about house and
 * running, and the power of a new unit are added as independent.
 * Check: tests/energy/scenario.test.ts
 */
export function scenarioOf(
  id: string,
  bins: UnitBins,
  ends: LossEnds,
  context: YearContext,
  recoveredFrac?: Estimate,
  rated?: RatedEnds,
): EnergyScenario {
  const back = recoveredFrac ?? exactEstimate(0);
  const ratios = recovered(ends.likely, back.likely);
  const year = (end: keyof LossEnds, share: number): EnergyTotals =>
    unitTotals(bins, recovered(ends[end], share), context);
  const likely = unitYear(bins, ratios, context);
  // a unit with nothing wrong has one loss at all ends
  const { byMonth: _, ...whole } = likely;
  const mild = ends.mild === ends.likely ? whole : year('mild', back.likely);
  const severe = ends.severe === ends.likely ? whole : year('severe', back.likely);
  const recovery =
    recoveredFrac === undefined
      ? {}
      : { recoveryLow: year('likely', back.low), recoveryHigh: year('likely', back.high) };
  const ofUnit =
    rated === undefined
      ? {}
      : { ratedLow: unitTotals(bins, rated.low, context), ratedHigh: unitTotals(bins, rated.high, context) };
  const ofHouse = loadYears(bins, ratios, context);
  const rangeOf = (value: (y: EnergyTotals) => number): Estimate => {
    const parts = [spread(value(likely), value(mild), value(severe))];
    if (recovery.recoveryLow !== undefined) {
      parts.push(
        spread(0, value(recovery.recoveryHigh) - value(likely), value(recovery.recoveryLow) - value(likely)),
      );
    }
    for (const [low, high] of [
      [ofHouse.loadLow, ofHouse.loadHigh],
      [ofUnit.ratedLow, ofUnit.ratedHigh],
    ]) {
      if (low !== undefined && high !== undefined)
        parts.push(spread(0, value(low) - value(likely), value(high) - value(likely)));
    }
    return addIndependentEstimates(parts);
  };
  const balanceF = balancePointF(bins, ratios, context);
  return {
    id,
    likely,
    mild,
    severe,
    ...recovery,
    ...ofHouse,
    ...ofUnit,
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

/** Loss of nothing, with the power at both ends of what the rating leaves open. */
export type RatedEnds = { readonly low: LossRatios; readonly high: LossRatios };

/**
 * Scenario of a new unit: nothing wrong, but its rating does not tell its power exactly.
 *
 * @param bins  full-speed performance; the unit's own standard deviations of ln power set the range
 * Both modes move together: the same maker and the same rating procedure stand behind them.
 * Check: tests/energy/scenario.test.ts
 */
export function newUnitScenario(id: string, bins: UnitBins, context: YearContext): EnergyScenario {
  const { cooling, heating } = bins.unit;
  const at = (z: number): LossRatios => ({
    ...noLoss,
    coolingPower: Math.exp(z * cooling.sdLnPower),
    heatingPower: Math.exp(z * (heating?.sdLnPower ?? 0)),
  });
  const rated = { low: at(-Z_10_90), high: at(Z_10_90) };
  return scenarioOf(id, bins, { mild: noLoss, likely: noLoss, severe: noLoss }, context, undefined, rated);
}

function loadYears(
  bins: UnitBins,
  ratios: LossRatios,
  context: YearContext,
): Pick<EnergyScenario, 'loadLow' | 'loadHigh'> {
  if (context.ends === undefined) return {};
  const { low, high } = context.ends;
  return {
    loadLow: unitTotals(bins, ratios, { ...context, ...low }),
    loadHigh: unitTotals(bins, ratios, { ...context, ...high }),
  };
}

function spread(likely: number, a: number, b: number): Estimate {
  return estimate(Math.min(likely, a, b), likely, Math.max(likely, a, b));
}
