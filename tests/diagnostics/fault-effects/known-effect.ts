import {
  type FaultEffectInput,
  faultEffect,
  type KnownEffect,
} from '@/lib/diagnostics/fault-effects/fault-effect';

/** The effect, where there must be one. */
export function knownEffect(input: FaultEffectInput): KnownEffect {
  return mustBeKnown(faultEffect(input));
}

export function mustBeKnown(effect: ReturnType<typeof faultEffect>): KnownEffect {
  if (effect.kind === 'none') throw new Error(`no effect: ${effect.why.code}`);
  return effect;
}

export function codesOf(effect: Pick<KnownEffect, 'notes'>): readonly string[] {
  return effect.notes.map(({ code }) => code);
}

/** A cooled house, everything known, everything inside every published range. */
export const INSIDE = {
  mode: 'cooling',
  outdoorF: 90,
  indoorF: 76,
  indoorWetBulbF: 64,
  ratedCop: 4,
  metering: 'txv',
} as const;

export const INSIDE_HEATING = {
  mode: 'heating',
  outdoorF: 35,
  indoorF: 70,
  indoorWetBulbF: 57,
  ratedCop: 4,
  metering: 'txv',
} as const;
