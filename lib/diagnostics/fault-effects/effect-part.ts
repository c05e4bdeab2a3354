import type { Saying } from '../../visit/wording';
import spread from './data/spread.json';
import type { Spread } from './doubt';
import type { CurvePoint } from './fault-curve';

export type LnRatio = { readonly mean: number; readonly sd: number };

/** What one correlation says: log ratios to the healthy unit, what was held or bent on the way. */
export type EffectPart = {
  readonly lnCapacity: LnRatio;
  readonly lnPower: LnRatio;
  /** A published gain was not credited, or the curve was kept from easing off. */
  readonly clamped: boolean;
  /** A condition or the level lay outside the published range and was held at its edge. */
  readonly beyondRange: boolean;
  readonly notes: readonly Saying[];
};

/** No effect, exactly. */
export const NO_EFFECT: EffectPart = {
  lnCapacity: { mean: 0, sd: 0 },
  lnPower: { mean: 0, sd: 0 },
  clamped: false,
  beyondRange: false,
  notes: [],
};

export type Doubt = {
  /** Standard error of the correlation itself [points of the ratio]. */
  readonly fitCapacity: number;
  readonly fitPower: number;
  readonly between: Spread;
  /** Level and conditions beyond the published range [widths of the range]. */
  readonly levelBeyond: number;
  readonly conditionsBeyond: number;
  /** 0..1: share of the doubt that applies at this level; small faults cannot be off by much. */
  readonly rampFrac: number;
};

/**
 * Log ratios of a point with their doubt.
 *
 * sd = ramp x root of squares of fit error, spread between units, and widening by extrapolation; the last is the size
 * of the effect (at least the spread) for each range width outside, twice that for the level.
 *
 * @param point  ratios, already kept from being kinder than a lower level
 * @param doubt  what the sd is made of
 * @param notes  what was said on the way
 * Source: data/spread.json
 * Check: tests/diagnostics/fault-effects/effect-part.test.ts
 */
export function effectPart(point: CurvePoint, doubt: Doubt, notes: readonly Saying[]): EffectPart {
  const powerRatio = point.capacityRatio * point.eirRatio;
  const { perLevelWidth, perConditionWidth } = spread.extrapolation;
  const beyond = perLevelWidth * doubt.levelBeyond + perConditionWidth * doubt.conditionsBeyond;
  const sdOf = (ratio: number, fit: number, between: number): number =>
    doubt.rampFrac *
    Math.hypot(fit / ratio, between / ratio, beyond * Math.max(Math.abs(Math.log(ratio)), between));
  const bent: Saying[] = [];
  if (point.capacityBent) bent.push({ code: 'capacityGainNotCredited' });
  if (point.eirBent) bent.push({ code: 'efficiencyGainNotCredited' });
  return {
    lnCapacity: {
      mean: lnOf(point.capacityRatio),
      sd: sdOf(point.capacityRatio, doubt.fitCapacity, doubt.between.capacity),
    },
    lnPower: { mean: lnOf(powerRatio), sd: sdOf(powerRatio, doubt.fitPower, doubt.between.power) },
    clamped: point.capacityBent || point.eirBent,
    beyondRange: beyond > 0,
    notes: [...notes, ...bent],
  };
}

/** Log ratio; of 1 plain 0. */
function lnOf(ratio: number): number {
  return ratio === 1 ? 0 : Math.log(ratio);
}

/**
 * A part made wider by independent doubts on the log ratios.
 *
 * Check: tests/diagnostics/fault-effects/effect-part.test.ts
 */
export function widened(
  part: EffectPart,
  capacity: number,
  power: number,
  notes: readonly Saying[] = [],
): EffectPart {
  return {
    ...part,
    lnCapacity: { mean: part.lnCapacity.mean, sd: Math.hypot(part.lnCapacity.sd, capacity) },
    lnPower: { mean: part.lnPower.mean, sd: Math.hypot(part.lnPower.sd, power) },
    notes: [...part.notes, ...notes],
  };
}

/**
 * Midway between two sets of which neither is better known; half their distance joins the doubt.
 *
 * Check: tests/diagnostics/fault-effects/effect-part.test.ts
 */
export function midway(a: EffectPart, b: EffectPart, notes: readonly Saying[] = []): EffectPart {
  const mid = (x: LnRatio, y: LnRatio): LnRatio => ({
    mean: (x.mean + y.mean) / 2,
    sd: Math.hypot((x.sd + y.sd) / 2, (x.mean - y.mean) / 2),
  });
  return {
    lnCapacity: mid(a.lnCapacity, b.lnCapacity),
    lnPower: mid(a.lnPower, b.lnPower),
    clamped: a.clamped || b.clamped,
    beyondRange: a.beyondRange || b.beyondRange,
    notes: withoutRepeats([...a.notes, ...b.notes, ...notes]),
  };
}

/** Each code once, the first kept. */
export function withoutRepeats(notes: readonly Saying[]): readonly Saying[] {
  if (notes.length < 2) return notes;
  const seen = new Set<string>();
  return notes.filter(({ code, values }) => {
    const key = values === undefined ? code : JSON.stringify([code, values]);
    const fresh = !seen.has(key);
    seen.add(key);
    return fresh;
  });
}
