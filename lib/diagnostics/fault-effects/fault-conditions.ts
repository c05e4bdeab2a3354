import type { Mode } from '../../visit/run';
import type { MeteringDevice } from '../../visit/unit';
import spread from './data/spread.json';

/** Unit and conditions at which a fault is judged; what is left out is assumed and widens the range. */
export type FaultConditions = {
  readonly mode: Mode;
  readonly metering?: MeteringDevice | undefined;
  /** Outdoor dry bulb [F]. */
  readonly outdoorF: number;
  /** Return dry bulb [F]. */
  readonly indoorF?: number | undefined;
  /** Return wet bulb [F]. */
  readonly indoorWetBulbF?: number | undefined;
  /** Rated gross cooling capacity over power of compressor and outdoor fan. */
  readonly ratedCop?: number | undefined;
};

/** Conditions with nothing missing but the metering device. */
export type FullConditions = {
  readonly mode: Mode;
  readonly metering?: MeteringDevice | undefined;
  readonly outdoorF: number;
  readonly indoorF: number;
  readonly indoorWetBulbF: number;
  readonly ratedCop: number;
};

/**
 * Conditions under which most of a season is spent, for a mode in which no run was taken.
 *
 * @param mode  cooling or heating
 * @returns temperatures [F]
 * Source: data/spread.json, typicalConditions, status assumption
 * Check: tests/diagnostics/fault-effects/assumed-conditions.test.ts
 */
export function typicalConditions(mode: Mode): FaultConditions {
  return { mode, ...spread.typicalConditions[mode] };
}
