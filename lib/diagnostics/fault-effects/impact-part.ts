import type { CauseId } from '../../visit/cause';
import data from './data/fault-impact.json';
import { rampFrac, type Spread } from './doubt';
import { type EffectPart, effectPart } from './effect-part';
import type { FullConditions } from './fault-conditions';
import { worstUpTo } from './fault-curve';
import { type FaultImpactSet, impactCurve } from './fault-impact';
import { celsius } from './held';
import { heldLevel, heldValues } from './range-notes';

export type ImpactPartInput = {
  /** Fault and kind of system of the published set. */
  readonly set: FaultImpactSet;
  /** Cause it stands for: gives the scale of the level. */
  readonly cause: CauseId;
  readonly at: FullConditions;
  /** Fault level, >= 0. */
  readonly level: number;
  readonly between: Spread;
};

/**
 * Effect by one set of the fault-impact correlation, its inputs and level held inside their ranges.
 *
 * In heating the set is borrowed: it takes its reference point, since its temperature terms mean nothing there.
 *
 * Source: data/fault-impact.json, status read
 * Check: tests/diagnostics/fault-effects/impact-part.test.ts
 */
export function impactPart({ set, cause, at, level, between }: ImpactPartInput): EffectPart {
  const { levelMax, copRange, maxDeviation } = data.sets[set];
  const { wetBulbF, outdoorF } =
    at.mode === 'cooling' ? { wetBulbF: at.indoorWetBulbF, outdoorF: at.outdoorF } : data.referencePoint;
  const held = heldValues({
    wetBulb: { value: wetBulbF, range: data.range.wetBulbF },
    outdoor: { value: outdoorF, range: data.range.outdoorF },
    ratedCop: { value: at.ratedCop, range: copRange },
  });
  const heldAt = heldLevel(level, levelMax);
  const curve = impactCurve(set, {
    wetBulbC: celsius(held.values.wetBulb),
    outdoorC: celsius(held.values.outdoor),
    ratedCop: held.values.ratedCop,
  });
  const perMax = data.sdPerMaxDeviation.value;
  return effectPart(
    worstUpTo(curve, heldAt.value),
    {
      fitCapacity: perMax * maxDeviation.capacity,
      fitPower: perMax * Math.hypot(maxDeviation.capacity, maxDeviation.eir),
      between,
      levelBeyond: heldAt.beyond,
      conditionsBeyond: held.beyond,
      rampFrac: rampFrac(cause, level),
    },
    [...held.notes, ...heldAt.notes],
  );
}
