import { Z_10_90 } from '../../math/estimate';
import type { MeteringDevice } from '../../visit/unit';
import data from './data/fault-impact.json';
import spread from './data/spread.json';
import { BETWEEN_UNITS, spreadByMetering } from './doubt';
import { type EffectPart, midway, widened } from './effect-part';
import type { FullConditions } from './fault-conditions';
import { impactPart } from './impact-part';

export type RestrictionCause = 'liquidLineRestriction' | 'meteringRestriction';

/**
 * Effect of a restriction between condenser and evaporator.
 *
 * Published for the liquid line of packaged units with fixed orifice. An expansion valve opens first and hides it:
 * there the effect sets in gradually, whole only at the end of the published range, and what is withheld widens the
 * range. A restricted metering device has no correlation of its own: its drop is part of the same total, and a valve
 * that is itself restricted cannot open, so it takes the orifice figures and is wider. In heating all of it is
 * borrowed from cooling.
 *
 * @param cause  liquid line (or drier), or metering device
 * @param at     conditions
 * @param level  fractional increase of the pressure drop from condenser outlet to evaporator inlet; published 0..0.25
 * Source: data/fault-impact.json, packagedLiquidLineRestriction, status read; use on other parts is an assumption
 * Check: tests/diagnostics/fault-effects/restriction-effect.test.ts
 */
export function restrictionEffect(cause: RestrictionCause, at: FullConditions, level: number): EffectPart {
  if (level === 0) return restrictionOf(cause, at, 0, 'fixedOrifice');
  if (cause === 'meteringRestriction') {
    const like = restrictionOf(cause, at, level, 'fixedOrifice');
    return borrowed(like, at.mode === 'heating' ? 2 : 1, 'meteringAsLiquidLine');
  }
  const line =
    at.metering === undefined
      ? midway(restrictionOf(cause, at, level, 'txv'), restrictionOf(cause, at, level, 'fixedOrifice'), [
          { code: 'meteringUnknown' },
        ])
      : restrictionOf(cause, at, level, at.metering);
  return at.mode === 'heating' ? borrowed(line, 1, 'borrowedFromCooling') : line;
}

function restrictionOf(
  cause: RestrictionCause,
  at: FullConditions,
  level: number,
  metering: MeteringDevice,
): EffectPart {
  const set = 'packagedLiquidLineRestriction';
  const full = impactPart({ set, cause, at, level, between: spreadByMetering(metering) });
  if (metering === 'fixedOrifice') return full;
  const share = Math.min(1, level / data.sets[set].levelMax);
  const withheld = (mean: number): number => ((1 - share) * Math.abs(mean)) / Z_10_90;
  return widened(
    {
      ...full,
      lnCapacity: { ...full.lnCapacity, mean: share * full.lnCapacity.mean },
      lnPower: { ...full.lnPower, mean: share * full.lnPower.mean },
    },
    withheld(full.lnCapacity.mean),
    withheld(full.lnPower.mean),
    [{ code: 'valveOpensFirst' }],
  );
}

/**
 * Effect of air or another gas that does not condense.
 *
 * Published for packaged units with fixed orifice: the fitted capacity rises, which is not credited; power follows
 * the power per capacity. In heating it is borrowed from cooling.
 *
 * @param at     conditions
 * @param level  mass of air in the circuit over the mass that would fill it at one atmosphere; published 0..0.8
 * Source: data/fault-impact.json, packagedNonCondensables, status read
 * Check: tests/diagnostics/fault-effects/restriction-effect.test.ts
 */
export function nonCondensablesEffect(at: FullConditions, level: number): EffectPart {
  const cause = 'nonCondensables';
  const part = impactPart({ set: 'packagedNonCondensables', cause, at, level, between: BETWEEN_UNITS });
  return at.mode === 'heating' && level > 0 ? borrowed(part, 1, 'borrowedFromCooling') : part;
}

/** Wider because the set was fitted on something else; `times` borrowed. */
function borrowed(part: EffectPart, times: number, code: string): EffectPart {
  const { sdFrac } = spread.borrowed;
  const factor = sdFrac * Math.sqrt(times);
  return widened(part, factor * Math.abs(part.lnCapacity.mean), factor * Math.abs(part.lnPower.mean), [
    { code },
  ]);
}
