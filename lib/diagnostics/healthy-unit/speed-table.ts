import { type Interpolated, interpolateLinear } from '../../math/interpolate';
import type { Mixing } from './run-steps';

/** One speed of a compressor at the test temperatures: net values, blower included. */
export type Speed = {
  readonly netCapacityBtuh: readonly number[];
  readonly netPowerW: readonly number[];
  /** Blower power at this speed over that at the nominal speed. */
  readonly blowerRatio: number;
};

/** A unit of several speeds; between and beyond the test temperatures straight lines. */
export type SpeedTable = {
  /** Test temperatures, rising [F]. */
  readonly outdoorF: readonly number[];
  /** Lowest speed first. */
  readonly speeds: readonly Speed[];
  /** How it works between two of them. */
  readonly mixing: Mixing;
  /** Which of them is the nominal one the ratings name. */
  readonly nominal: number;
  /** Blower of the rating test at nominal speed, part of the net values [W]. */
  readonly ratedBlowerW: number;
  /** The lines are held beyond these [F]. */
  readonly lowF: number;
  readonly highF: number;
};

export type SpeedPoint = {
  readonly netCapacityBtuh: number;
  readonly netPowerW: number;
  readonly beyondRange: boolean;
};

/**
 * Net capacity and power of one speed at an outdoor temperature.
 *
 * @param table  test points
 * @param speed  index, lowest first
 * @param outdoorF  [F]
 * Beyond `lowF` and `highF`: held there and marked; between the test temperatures and those, straight lines go on.
 * Check: tests/diagnostics/healthy-unit/speed-table.test.ts
 */
export function speedPoint(table: SpeedTable, speed: Speed, outdoorF: number): SpeedPoint {
  const held = Math.min(table.highF, Math.max(table.lowF, outdoorF));
  const at = (ys: readonly number[]): Interpolated => interpolateLinear(table.outdoorF, ys, held, 'continue');
  return {
    netCapacityBtuh: at(speed.netCapacityBtuh).value,
    netPowerW: at(speed.netPowerW).value,
    beyondRange: held !== outdoorF,
  };
}
