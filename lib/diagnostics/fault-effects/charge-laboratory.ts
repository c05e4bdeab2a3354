import type { Mode } from '../../visit/run';
import data from './data/charge-laboratory.json';
import { type FaultCurve, quadraticRoots } from './fault-curve';

export type ChargeConditions = {
  readonly mode: Mode;
  /** Return dry bulb; no part in heating [degC]. */
  readonly indoorC: number;
  /** Outdoor dry bulb [degC]. */
  readonly outdoorC: number;
};

export type PowerRatios = { readonly capacityRatio: number; readonly powerRatio: number };

/**
 * Published charge correlation as it stands: no clamp, no range check.
 *
 * @param conditions  mode and temperatures [degC]
 * @param fault  (charge - correct) / correct: NEGATIVE for missing charge, published for -0.3..0.3
 * @returns capacity and power of compressor and outdoor fan over the unit rightly charged
 * Source: data/charge-laboratory.json, status read in an open simulator, secondary for NIST TN 1848
 * Check: tests/diagnostics/fault-effects/published-vectors.test.ts
 */
export function chargeRatios(conditions: ChargeConditions, fault: number): PowerRatios {
  const capacity = lineOf(conditions, fault < 0, 'capacity');
  const power = lineOf(conditions, fault < 0, 'power');
  return {
    capacityRatio: 1 + (capacity.slope + capacity.bend * fault) * fault,
    powerRatio: 1 + (power.slope + power.bend * fault) * fault,
  };
}

/**
 * Charge correlation along the share of charge missing or extra, power taken per creditable capacity.
 *
 * @param conditions  mode and temperatures inside the published range [degC]
 * @param missing     true: level is the share missing; false: the share extra
 * @returns curve over levels 0..0.3; a capacity above 1 counts as 1, power stays as measured
 * Check: tests/diagnostics/fault-effects/charge-effect.test.ts
 */
export function chargeCurve(conditions: ChargeConditions, missing: boolean): FaultCurve {
  const sign = missing ? -1 : 1;
  const at = (level: number): PowerRatios => chargeRatios(conditions, sign * level);
  const q = lineOf(conditions, missing, 'capacity');
  const p = lineOf(conditions, missing, 'power');
  const turns = [
    ...quadraticRoots(q.slope, 2 * q.bend, 0),
    ...quadraticRoots(p.slope, 2 * p.bend, 0),
    ...quadraticRoots(q.slope, q.bend, 0),
    ...quadraticRoots(p.slope - q.slope, 2 * (p.bend - q.bend), p.bend * q.slope - p.slope * q.bend),
  ].map((fault) => sign * fault);
  return {
    capacityAt: (level) => at(level).capacityRatio,
    eirAt: (level) => at(level).powerRatio / Math.min(1, at(level).capacityRatio),
    turns,
  };
}

type Line = { readonly slope: number; readonly bend: number };

function lineOf(conditions: ChargeConditions, missing: boolean, of: 'capacity' | 'power'): Line {
  const set = data[conditions.mode][missing ? 'undercharge' : 'overcharge'][of];
  const [a1 = 0, a2 = 0, a3 = 0, a4 = 0] = set;
  return { slope: a1 + a2 * conditions.indoorC + a3 * conditions.outdoorC, bend: a4 };
}
