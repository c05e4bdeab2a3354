import { invariant } from '../../math/invariant';

/** Ratios to the healthy unit along the fault level, at fixed conditions; both are 1 at level 0. */
export type FaultCurve = {
  readonly capacityAt: (level: number) => number;
  /** Power per capacity. */
  readonly eirAt: (level: number) => number;
  /** Every level at which one of the two may turn back; others may be among them. */
  readonly turns: readonly number[];
};

export type CurvePoint = {
  readonly capacityRatio: number;
  readonly eirRatio: number;
  /** The published value was a gain in capacity, or in efficiency, or eased off again; it was not credited. */
  readonly capacityBent: boolean;
  readonly eirBent: boolean;
};

const SAME = 1e-9;

/**
 * Point of a curve, kept from ever being kinder than a lower level: capacity never above 1 nor rising with the level,
 * power per capacity never below 1 nor falling.
 *
 * @param curve  published ratios
 * @param level  fault level, >= 0, inside the published range
 * @returns ratios, and whether they were bent
 * @throws invariant if the level is negative or a ratio is not a positive number
 * Check: tests/diagnostics/fault-effects/fault-curve.test.ts
 */
export function worstUpTo(curve: FaultCurve, level: number): CurvePoint {
  invariant(level >= 0, 'the level is below 0');
  const levels = [...curve.turns.filter((turn) => turn > 0 && turn < level), level];
  const capacityRatio = Math.min(1, ...levels.map(curve.capacityAt));
  const eirRatio = Math.max(1, ...levels.map(curve.eirAt));
  invariant(capacityRatio > 0 && Number.isFinite(eirRatio), 'a ratio is not a positive number');
  return {
    capacityRatio,
    eirRatio,
    capacityBent: capacityRatio < curve.capacityAt(level) - SAME,
    eirBent: eirRatio > curve.eirAt(level) + SAME,
  };
}

/**
 * Real roots of a + b x + c x^2; none when it is constant.
 *
 * Check: tests/diagnostics/fault-effects/fault-curve.test.ts
 */
export function quadraticRoots(a: number, b: number, c: number): readonly number[] {
  if (c === 0) return b === 0 ? [] : [-a / b];
  const disc = b * b - 4 * a * c;
  if (disc < 0) return [];
  const q = -0.5 * (b + (b < 0 ? -1 : 1) * Math.sqrt(disc));
  return q === 0 ? [0] : [q / c, a / q];
}
