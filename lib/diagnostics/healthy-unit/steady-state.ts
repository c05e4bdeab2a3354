import { invariant } from '../../math/invariant';
import type { Mode } from '../../visit/run';
import procedure from './data/test-procedure.json';
import type { HealthyUnit, ModePerformance, Tilt } from './healthy-unit-model';
import { curvePoint, frostFactor } from './performance-curve';
import { type GrossPoint, speedGross } from './speed-steps';

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
 * What the healthy unit gives and draws at steady conditions, running without stop at its nominal speed.
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
  const performance = performanceOf(unit, conditions.mode);
  const indoorF = indoorOf(conditions);
  const gross = grossPoint(performance, indoorF, conditions.outdoorF);
  return withBlower(unit, conditions, gross, 1);
}

/**
 * The same at every speed of the unit, lowest first; a single-speed unit has one step, equal to `steadyState`.
 *
 * @throws invariant if heating is asked of a unit that has none
 * Check: tests/diagnostics/healthy-unit/speed-table.test.ts
 */
export function speedSteps(unit: HealthyUnit, conditions: SteadyConditions): readonly SteadyState[] {
  const performance = performanceOf(unit, conditions.mode);
  const { speeds, curve } = performance;
  if (speeds === undefined) return [steadyState(unit, conditions)];
  const indoorF = indoorOf(conditions);
  return speeds.speeds.map((speed) =>
    withBlower(
      unit,
      conditions,
      speedGross(speeds, speed, curve, indoorF, conditions.outdoorF),
      speed.blowerRatio,
    ),
  );
}

function performanceOf(unit: HealthyUnit, mode: Mode): ModePerformance {
  const performance = mode === 'heating' ? unit.heating : unit.cooling;
  invariant(performance !== undefined, 'heating asked of a unit that has none');
  return performance;
}

function indoorOf(conditions: SteadyConditions): number {
  return conditions.mode === 'heating' ? (conditions.indoorF ?? 70) : (conditions.indoorWetBulbF ?? 67);
}

function withBlower(
  unit: HealthyUnit,
  conditions: SteadyConditions,
  gross: GrossPoint,
  blowerRatio: number,
): SteadyState {
  const heating = conditions.mode === 'heating';
  const frost =
    heating && conditions.frost === 'smooth'
      ? frostFactor(conditions.outdoorF)
      : { capacityRatio: 1, powerRatio: 1 };
  const capacityBtuh = gross.capacityBtuh * frost.capacityRatio;
  const blowerW = unit.blowerW * blowerRatio;
  const blowerBtuh = procedure.btuhPerW.value * blowerW;
  return {
    capacityBtuh,
    netCapacityBtuh: capacityBtuh + (heating ? blowerBtuh : -blowerBtuh),
    outdoorUnitW: gross.powerW * frost.powerRatio,
    blowerW,
    beyondRange: gross.beyondRange,
  };
}

/**
 * Gross capacity and outdoor-unit power of one mode at nominal speed, frost-free.
 *
 * @param performance  one mode of a healthy unit
 * @param indoorF  cooling: return wet bulb; heating: dry bulb [F]
 * @param outdoorF outdoor dry bulb [F]
 * Outside the curve's range: held at its edge and marked.
 * Check: tests/diagnostics/healthy-unit/steady-state.test.ts
 */
export function grossPoint(performance: ModePerformance, indoorF: number, outdoorF: number): GrossPoint {
  const nominal = performance.speeds?.speeds[performance.speeds.nominal];
  if (performance.speeds !== undefined && nominal !== undefined) {
    return speedGross(performance.speeds, nominal, performance.curve, indoorF, outdoorF);
  }
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
