import { invariant } from '../../math/invariant';

/** A value kept inside a published range. */
export type Held = {
  readonly value: number;
  /** How far outside it lay, in widths of the range; 0 inside and on the edge. */
  readonly beyond: number;
};

/**
 * Value held inside a range, with how far outside it lay.
 *
 * @param value  any finite number
 * @param range  [low, high], low < high, same unit
 * @throws invariant if the value is not finite or the range is empty
 * Check: tests/diagnostics/fault-effects/held.test.ts
 */
export function heldIn(value: number, range: readonly number[]): Held {
  const [low, high] = range;
  invariant(low !== undefined && high !== undefined && low < high, 'the range is empty');
  invariant(Number.isFinite(value), 'the value to be held in its range is not finite');
  const held = Math.min(high, Math.max(low, value));
  return { value: held, beyond: Math.abs(value - held) / (high - low) };
}

/** Fahrenheit to Celsius, for the published equations only. */
export function celsius(temperatureF: number): number {
  return (temperatureF - 32) / 1.8;
}
