import type { Saying } from '../../visit/wording';
import spread from './data/spread.json';
import { type EffectPart, widened } from './effect-part';
import type { FaultConditions, FullConditions } from './fault-conditions';

const MAY_LACK = ['indoorF', 'indoorWetBulbF', 'ratedCop'] as const;

/**
 * Effect with missing conditions filled by assumption; each widens by what its own doubt does to the result and is
 * named if it does anything.
 *
 * @param conditions  as known
 * @param effectAt    the effect at full conditions
 * Source: data/spread.json, assumedConditions, status assumption
 * Check: tests/diagnostics/fault-effects/assumed-conditions.test.ts
 */
export function withAssumedConditions(
  conditions: FaultConditions,
  effectAt: (full: FullConditions) => EffectPart,
): EffectPart {
  const { assumedConditions } = spread;
  const full: FullConditions = {
    mode: conditions.mode,
    metering: conditions.metering,
    outdoorF: conditions.outdoorF,
    indoorF: conditions.indoorF ?? assumedConditions.indoorF.value,
    indoorWetBulbF: conditions.indoorWetBulbF ?? assumedConditions.indoorWetBulbF.value,
    ratedCop: conditions.ratedCop ?? assumedConditions.ratedCop.value,
  };
  const base = effectAt(full);
  return MAY_LACK.filter((name) => conditions[name] === undefined).reduce((part, name) => {
    const { value, sd } = assumedConditions[name];
    const moved = effectAt({ ...full, [name]: value + sd });
    const capacity = Math.abs(moved.lnCapacity.mean - base.lnCapacity.mean);
    const power = Math.abs(moved.lnPower.mean - base.lnPower.mean);
    const note: Saying = { code: `${name}Assumed`, values: { value } };
    return capacity + power === 0 ? part : widened(part, capacity, power, [note]);
  }, base);
}
