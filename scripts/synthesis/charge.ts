import type { CondenserState } from './condenser';
import { chargeConstants as k } from './constants';
import type { EvaporatorState } from './evaporator';
import type { Saturated } from './fluid';

/** Inner volumes of the circuit [ft3]; the gas lines hold little and are left out. */
export type Volumes = {
  readonly condenserFt3: number;
  readonly evaporatorFt3: number;
  readonly liquidLineFt3: number;
};

/**
 * Refrigerant held by the circuit in a steady state.
 *
 * @param liquidLbFt3 density in the liquid line [lb/ft3]
 * @returns mass [lb]
 * Source: zone volumes times densities, two-phase density by a slip ratio (Zivi 1964, status memory)
 * Check: tests/synthesis/charge.test.ts
 */
export function chargeHeld(
  volumes: Volumes,
  condenser: CondenserState,
  high: Saturated,
  evaporator: EvaporatorState,
  low: Saturated,
  liquidLbFt3: number,
): number {
  const inCondenser =
    condenser.gasFrac * high.vapourLbFt3 +
    condenser.condensingFrac * meanTwoPhaseDensity(high, 0, 1) +
    condenser.liquidFrac * high.liquidLbFt3;
  const inEvaporator =
    evaporator.boilingFrac * meanTwoPhaseDensity(low, Math.min(0.9, evaporator.inletQualityFrac), 1) +
    (1 - evaporator.boilingFrac) * low.vapourLbFt3;
  return (
    volumes.condenserFt3 * inCondenser +
    volumes.evaporatorFt3 * inEvaporator +
    volumes.liquidLineFt3 * liquidLbFt3
  );
}

const STEPS = 24;

/** Mean density over a tube in which quality changes evenly from one end to the other [lb/ft3]. */
export function meanTwoPhaseDensity(edge: Saturated, fromQuality: number, toQuality: number): number {
  let sum = 0;
  for (let i = 0; i < STEPS; i += 1) {
    sum += twoPhaseDensity(edge, fromQuality + ((i + 0.5) / STEPS) * (toQuality - fromQuality));
  }
  return sum / STEPS;
}

/** Density of a mixture whose gas runs ahead of its liquid [lb/ft3]. */
export function twoPhaseDensity(edge: Saturated, qualityFrac: number): number {
  if (qualityFrac <= 0) return edge.liquidLbFt3;
  const slip = (edge.vapourLbFt3 / edge.liquidLbFt3) ** k.slipExponent.value;
  const voidFrac = 1 / (1 + ((1 - qualityFrac) / qualityFrac) * slip);
  return voidFrac * edge.vapourLbFt3 + (1 - voidFrac) * edge.liquidLbFt3;
}
