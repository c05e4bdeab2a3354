import type { CauseId } from '../../visit/cause';
import type { MeteringDevice } from '../../visit/unit';
import spread from './data/spread.json';
import { severityScale } from './severity';

/** How far a unit nobody tested differs from a correlation, for faults that ask little of the metering device. */
export const BETWEEN_UNITS = spread.betweenUnits.sdRatio;

/**
 * How far units differ from a correlation of charge or restriction, as standard deviation of the ratio.
 *
 * @param metering  fixed orifices differ about twice as much
 * Source: data/spread.json, status computed
 * Check: tests/diagnostics/fault-effects/doubt.test.ts
 */
export function spreadByMetering(metering: MeteringDevice): number {
  return metering === 'txv' ? BETWEEN_UNITS : spread.betweenFixedOrificeUnits.sdRatio;
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
