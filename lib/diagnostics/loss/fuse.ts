import { invariant } from '../../math/invariant';
import type { Uncertain } from '../../math/propagate';
import lossData from '../data/loss.json';

export type Fused = Uncertain & {
  /** Square root of chi-squared per degree of freedom that widened the result; 1 when the values agree. */
  readonly birge: number;
  readonly disagree: boolean;
};

/**
 * Inverse-variance mean of independent estimates of one quantity.
 *
 * @param values  at least one, sd > 0
 * @returns mean and standard uncertainty; when two of them lie more than two sigma apart, widened by the Birge ratio
 * and never narrower than half the distance of those two
 * @throws invariant if there is none or an sd is not above 0
 * Source: Birge R. T., Physical Review 40 1932, 207-227 (ratio of external to internal consistency), status memory
 * Check: tests/diagnostics/loss.test.ts
 */
export function fuse(values: readonly Uncertain[]): Fused {
  invariant(values.length > 0, 'nothing to combine');
  let weightSum = 0;
  let weighted = 0;
  for (const { value, sd } of values) {
    invariant(sd > 0, `sd ${sd}`);
    weightSum += 1 / sd ** 2;
    weighted += value / sd ** 2;
  }
  const mean = weighted / weightSum;
  const inner = Math.sqrt(1 / weightSum);
  const apart = furthestApart(values);
  if (apart === undefined) return { value: mean, sd: inner, birge: 1, disagree: false };
  const chi2 = values.reduce((sum, { value, sd }) => sum + ((value - mean) / sd) ** 2, 0);
  const birge = Math.max(1, Math.sqrt(chi2 / (values.length - 1)));
  return { value: mean, sd: Math.max(inner * birge, apart / 2), birge, disagree: true };
}

function furthestApart(values: readonly Uncertain[]): number | undefined {
  let furthest: number | undefined;
  for (const [i, a] of values.entries()) {
    for (const b of values.slice(i + 1)) {
      const distance = Math.abs(a.value - b.value);
      const joint = Math.hypot(a.sd, b.sd);
      if (distance > lossData.disagreement.sigmas * joint) furthest = Math.max(furthest ?? 0, distance);
    }
  }
  return furthest;
}

/** Product of a prior and a measurement, both normal: precisions add. Check: tests/diagnostics/loss.test.ts */
export function combine(prior: Uncertain, measured: Uncertain): Uncertain {
  const priorWeight = 1 / prior.sd ** 2;
  const measuredWeight = 1 / measured.sd ** 2;
  const total = priorWeight + measuredWeight;
  return {
    value: (prior.value * priorWeight + measured.value * measuredWeight) / total,
    sd: Math.sqrt(1 / total),
  };
}
