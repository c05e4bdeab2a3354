import { Z_10_90 } from '../../math/estimate';
import type { MeteringDevice } from '../../visit/unit';
import type { Saying } from '../../visit/wording';
import { type ChargeConditions, chargeCurve, chargeRatios } from './charge-laboratory';
import data from './data/charge-laboratory.json';
import { rampFrac, type Spread, spreadByMetering } from './doubt';
import { type EffectPart, effectPart, midway, widened } from './effect-part';
import type { FullConditions } from './fault-conditions';
import { worstUpTo } from './fault-curve';
import { celsius } from './held';
import { impactPart } from './impact-part';
import { heldLevel, heldValues } from './range-notes';

export type ChargeCause = 'lowCharge' | 'overcharge';

/**
 * Effect of missing or extra charge.
 *
 * Cooling: the laboratory set for expansion valves; for fixed orifices the packaged-unit set when charge is missing
 * (all its units have orifices), midway between the two when there is too much (that packaged set is undocumented).
 * Unknown metering: midway. Heating: the laboratory set for both, wider for orifices; for missing charge wider again,
 * since a yearly figure by the same authors is far milder.
 *
 * @param cause  lowCharge: level = share missing; overcharge: level = share extra; published for 0..0.3
 * @param at     conditions
 * @param level  >= 0
 * Check: tests/diagnostics/fault-effects/charge-effect.test.ts
 */
export function chargeEffect(cause: ChargeCause, at: FullConditions, level: number): EffectPart {
  if (at.metering !== undefined) return chargeByMetering(cause, at, level, at.metering);
  return midway(
    chargeByMetering(cause, at, level, 'txv'),
    chargeByMetering(cause, at, level, 'fixedOrifice'),
    [{ code: 'meteringUnknown' }],
  );
}

function chargeByMetering(
  cause: ChargeCause,
  at: FullConditions,
  level: number,
  metering: MeteringDevice,
): EffectPart {
  const between = spreadByMetering(metering);
  const laboratory = laboratoryPart(cause, at, level, between);
  if (at.mode === 'heating') return heatingCharge(cause, level, laboratory, metering);
  if (metering === 'txv') return laboratory;
  if (cause === 'lowCharge') return impactPart({ set: 'packagedUndercharge', cause, at, level, between });
  const packaged = impactPart({ set: 'packagedOvercharge', cause, at, level, between });
  return midway(laboratory, packaged, [{ code: 'overchargeSetsDiffer' }]);
}

function laboratoryPart(cause: ChargeCause, at: FullConditions, level: number, between: Spread): EffectPart {
  const held = at.mode === 'cooling' ? heldInCooling(at) : heldInHeating(at);
  const heldAt = heldLevel(level, data.range.levelMax);
  return effectPart(
    worstUpTo(chargeCurve(held.conditions, cause === 'lowCharge'), heldAt.value),
    {
      fitCapacity: data.fit.sdRatio,
      fitPower: data.fit.sdRatio,
      between,
      levelBeyond: heldAt.beyond,
      conditionsBeyond: held.beyond,
      rampFrac: rampFrac(cause, level),
    },
    [...held.notes, ...heldAt.notes],
  );
}

type HeldConditions = {
  readonly conditions: ChargeConditions;
  readonly beyond: number;
  readonly notes: readonly Saying[];
};

function heldInCooling(at: FullConditions): HeldConditions {
  const { values, beyond, notes } = heldValues({
    indoor: { value: at.indoorF, range: data.range.coolingIndoorF },
    outdoor: { value: at.outdoorF, range: data.range.coolingOutdoorF },
  });
  const conditions = {
    mode: 'cooling',
    indoorC: celsius(values.indoor),
    outdoorC: celsius(values.outdoor),
  } as const;
  return { conditions, beyond, notes };
}

/** The heating set has no indoor term. */
function heldInHeating(at: FullConditions): HeldConditions {
  const { values, beyond, notes } = heldValues({
    outdoor: { value: at.outdoorF, range: data.range.heatingOutdoorF },
  });
  return { conditions: { mode: 'heating', indoorC: 0, outdoorC: celsius(values.outdoor) }, beyond, notes };
}

function heatingCharge(
  cause: ChargeCause,
  level: number,
  laboratory: EffectPart,
  metering: MeteringDevice,
): EffectPart {
  const onValve = metering === 'txv' ? [] : [{ code: 'testedOnExpansionValve' }];
  if (cause === 'overcharge' || level === 0) return widened(laboratory, 0, 0, onValve);
  const share = disagreementShare();
  return widened(
    laboratory,
    (share * Math.abs(laboratory.lnCapacity.mean)) / Z_10_90,
    (share * Math.abs(laboratory.lnPower.mean)) / Z_10_90,
    [...onValve, { code: 'heatingChargeUnresolved' }],
  );
}

/** By what share of itself the effect would have to shrink to meet the yearly figure: 1 - ln(yearly) / ln(ours). */
function disagreementShare(): number {
  const { missingFrac, copRatio, outdoorF } = data.heatingDisagreement;
  const ours = chargeRatios({ mode: 'heating', indoorC: 0, outdoorC: celsius(outdoorF) }, -missingFrac);
  return 1 - Math.log(copRatio) / Math.log(ours.capacityRatio / ours.powerRatio);
}
