import { invariant } from '../../math/invariant';
import type { CauseId } from '../../visit/cause';
import type { UnitKind } from '../../visit/unit';
import type { Saying } from '../../visit/wording';
import { indoorAirflowEffect, outdoorAirflowEffect } from './airflow-effect';
import { withAssumedConditions } from './assumed-conditions';
import { chargeEffect } from './charge-effect';
import { type EffectPart, NO_EFFECT, withoutRepeats } from './effect-part';
import { type EffectSource, effectSource } from './effect-source';
import type { FaultConditions, FullConditions } from './fault-conditions';
import { nonCondensablesEffect, restrictionEffect } from './restriction-effect';
import { capacitorEffect, leakEffect } from './unpublished-effect';

export type Fault = {
  readonly cause: CauseId;
  /** 0 = none, upward; what it counts depends on the cause: severityScale(cause).meaning. */
  readonly level: number;
};

export type FaultEffectInput = FaultConditions & Fault & { readonly unitKind?: UnitKind | undefined };

export type KnownEffect = EffectPart & EffectSource & { readonly kind: 'effect' };

/** What a fault does to capacity and to power of compressor and outdoor fan, against the healthy unit. */
export type FaultEffect = KnownEffect | { readonly kind: 'none'; readonly why: Saying };

/**
 * What a fault of a given level does, by published correlations where there are any.
 *
 * Levels and conditions outside a published range are held at its edge, marked `beyondRange` and widened. A published
 * gain (overcharge, non-condensables) is not credited: marked `clamped`. Level 0 is exactly no effect, without doubt.
 * The blower and the electric heat stand apart from both ratios.
 *
 * @param input  cause, level (>= 0), mode, metering device, outdoor air [F], return dry and wet bulb [F], rated COP;
 *               what is left out is assumed, named and widens
 * @returns log ratios of capacity and power (mean, sd), marks, notes, source; `none` when the unit has no such part
 * @throws invariant if the level is negative or a number is not finite
 * Source: data/*.json beside this file, status beside each table
 * Check: tests/diagnostics/fault-effects/fault-effect.test.ts
 */
export function faultEffect(input: FaultEffectInput): FaultEffect {
  const { cause, level, mode, unitKind } = input;
  invariant(Number.isFinite(level) && level >= 0, `fault level ${level}`);
  if (unitKind === 'airConditioner' && mode === 'heating')
    return { kind: 'none', why: { code: 'noHeating' } };
  if (unitKind === 'airConditioner' && cause === 'reversingValveLeaking') {
    return { kind: 'none', why: { code: 'noReversingValve' } };
  }
  const part = withAssumedConditions(input, (full) => partOf(cause, full, level));
  const source = effectSource(cause, mode, input.metering);
  const whole = level === 0 ? NO_EFFECT : part;
  return { kind: 'effect', ...whole, notes: withoutRepeats(whole.notes), ...source };
}

function partOf(cause: CauseId, at: FullConditions, level: number): EffectPart {
  switch (cause) {
    case 'none':
      return NO_EFFECT;
    case 'supplementaryHeatFault':
      return { ...NO_EFFECT, notes: [{ code: 'stripHeatApart' }] };
    case 'lowCharge':
    case 'overcharge':
      return chargeEffect(cause, at, level);
    case 'lowIndoorAirflow':
      return indoorAirflowEffect(at, level);
    case 'outdoorCoilFouled':
      return outdoorAirflowEffect(at, level);
    case 'liquidLineRestriction':
    case 'meteringRestriction':
      return restrictionEffect(cause, at, level);
    case 'nonCondensables':
      return nonCondensablesEffect(at, level);
    case 'compressorValvesLeaking':
    case 'reversingValveLeaking':
      return leakEffect(cause, level);
    case 'runCapacitorWeak':
      return capacitorEffect(level);
  }
}
