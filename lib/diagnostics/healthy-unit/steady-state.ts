import { invariant } from '../../math/invariant';
import type { Mode } from '../../visit/run';
import procedure from './data/test-procedure.json';
import type { HealthyUnit, ModePerformance, Tilt } from './healthy-unit-model';
import { curvePoint, frostFactor } from './performance-curve';

export type SteadyConditions = {
  readonly mode: Mode;
  readonly outdoorF: number;
  /** Heating: room or return dry bulb; left out = 70 F. */
  readonly indoorF?: number;
  /** Cooling: return wet bulb; left out = 67 F. */
  readonly indoorWetBulbF?: number;
  /** `smooth` averages frost and defrost in (heating); `none` is the running value between defrosts. */
  readonly frost: 'smooth' | 'none';
};

export type SteadyState = {
  /** Gross, at the coil [Btu/h]. */
  readonly capacityBtuh: number;
  /** What the house gets: blower heat deducted in cooling, added in heating [Btu/h]. */
  readonly netCapacityBtuh: number;
  /** Compressor and outdoor fan [W]. */
  readonly outdoorUnitW: number;
  readonly blowerW: number;
  /** A condition lay outside the published curve and was held at its edge. */
  readonly beyondRange: boolean;
};

/**
 * What the healthy unit gives and draws at steady conditions, running without stop at full speed.
 *
 * @param unit  the healthy unit
 * @param conditions  mode, outdoor and indoor temperatures [F], frost
 * @returns capacities [Btu/h] and powers [W]
 * @throws invariant if heating is asked of a unit that has none, or a temperature is not finite
 * Outside the curve's range: held at its edge and marked `beyondRange`. The cut-out is the caller's business.
 * Source: Cutler and others, NREL/TP-5500-56354, 2013, normalised; status secondary
 * Check: tests/diagnostics/healthy-unit/steady-state.test.ts
 */
export function steadyState(unit: HealthyUnit, conditions: SteadyConditions): SteadyState {
  const heating = conditions.mode === 'heating';
  const performance = heating ? unit.heating : unit.cooling;
  invariant(performance !== undefined, 'heating asked of a unit that has none');
  const indoor = heating ? (conditions.indoorF ?? 70) : (conditions.indoorWetBulbF ?? 67);
  const gross = grossPoint(performance, indoor, conditions.outdoorF);
  const frost =
    heating && conditions.frost === 'smooth'
      ? frostFactor(conditions.outdoorF)
      : { capacityRatio: 1, powerRatio: 1 };
  const capacityBtuh = gross.capacityBtuh * frost.capacityRatio;
  const blowerHeatBtuh = procedure.btuhPerW.value * unit.blowerW;
  return {
    capacityBtuh,
    netCapacityBtuh: capacityBtuh + (heating ? blowerHeatBtuh : -blowerHeatBtuh),
    outdoorUnitW: gross.powerW * frost.powerRatio,
    blowerW: unit.blowerW,
    beyondRange: gross.beyondRange,
  };
}

/**
 * Gross capacity and outdoor-unit power of one mode, frost-free.
 *
 * @param performance  one mode of a healthy unit
 * @param indoorF  cooling: return wet bulb; heating: dry bulb [F]
 * @param outdoorF outdoor dry bulb [F]
 * Outside the curve's range: held at its edge and marked.
 * Check: tests/diagnostics/healthy-unit/steady-state.test.ts
 */
export function grossPoint(
  performance: ModePerformance,
  indoorF: number,
  outdoorF: number,
): { readonly capacityBtuh: number; readonly powerW: number; readonly beyondRange: boolean } {
  const point = curvePoint(performance.curve, indoorF, outdoorF);
  const capacityTilt = Math.exp(tiltAt(performance.capacityTilt, outdoorF));
  const powerTilt = Math.exp(tiltAt(performance.powerTilt, outdoorF));
  return {
    capacityBtuh: performance.grossCapacityBtuh * point.capacityRatio * capacityTilt,
    powerW: performance.outdoorUnitW * point.capacityRatio * point.eirRatio * powerTilt,
    beyondRange: point.beyondRange,
  };
}

function tiltAt(tilt: Tilt | undefined, outdoorF: number): number {
  if (tilt === undefined) return 0;
  const t = (outdoorF - tilt.fromF) / (tilt.toF - tilt.fromF);
  return tilt.lnAtTo * Math.min(1, Math.max(0, t));
}
