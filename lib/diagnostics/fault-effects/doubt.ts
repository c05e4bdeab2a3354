import type { CauseId } from '../../visit/cause';
import type { MeteringDevice } from '../../visit/unit';
import spread from './data/spread.json';
import { severityScale } from './severity';

/** Standard deviations of the ratios between units [points]. */
export type Spread = { readonly capacity: number; readonly power: number };

/** How far a unit nobody tested differs from a correlation, for faults that ask little of the metering device. */
export const BETWEEN_UNITS: Spread = spread.betweenUnits;

/**
 * How far units differ from a correlation of charge or restriction.
 *
 * @param metering  fixed orifices differ half as much again
 * Source: data/spread.json, status computed
 * Check: tests/diagnostics/fault-effects/doubt.test.ts
 */
export function spreadByMetering(metering: MeteringDevice): Spread {
  return metering === 'txv' ? BETWEEN_UNITS : spread.betweenFixedOrificeUnits;
}

/**
 * Share of a correlation's doubt that applies at a level: all of it from mild on, in proportion below.
 *
 * @returns 0..1
 * Check: tests/diagnostics/fault-effects/doubt.test.ts
 */
export function rampFrac(cause: CauseId, level: number): number {
  return Math.min(1, level / severityScale(cause).mild);
}
