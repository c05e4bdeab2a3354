import type { EirRatios } from './airflow-quadratic';
import data from './data/fault-impact.json';
import { type FaultCurve, quadraticRoots } from './fault-curve';

export type FaultImpactSet = keyof typeof data.sets;

export type ImpactConditions = {
  /** Wet bulb of the air entering the indoor coil [degC]. */
  readonly wetBulbC: number;
  /** Outdoor dry bulb [degC]. */
  readonly outdoorC: number;
  /** Rated cooling capacity over power of compressor and outdoor fan. */
  readonly ratedCop: number;
};

/**
 * Published fault-impact correlation (cooling) as it stands: no clamp, no range check.
 *
 * @param set         fault and kind of system
 * @param conditions  wet bulb and outdoor [degC], rated COP
 * @param fault       POSITIVE for every fault; meaning and end of range in data/fault-impact.json
 * @returns capacity, and power per capacity (compressor and outdoor fan), over the healthy unit
 * Source: data/fault-impact.json (NREL/SR-5500-65030), status read
 * Check: tests/diagnostics/fault-effects/published-vectors.test.ts
 */
export function impactRatios(set: FaultImpactSet, conditions: ImpactConditions, fault: number): EirRatios {
  const { capacity, eir } = data.sets[set];
  return {
    capacityRatio: cubic(cubicOf(capacity, conditions), fault),
    eirRatio: cubic(cubicOf(eir, conditions), fault),
  };
}

/**
 * The same along the fault level.
 *
 * @returns curve over levels 0..levelMax of the set
 * Check: tests/diagnostics/fault-effects/fault-curve.test.ts
 */
export function impactCurve(set: FaultImpactSet, conditions: ImpactConditions): FaultCurve {
  const { capacity, eir } = data.sets[set];
  return {
    capacityAt: (level) => impactRatios(set, conditions, level).capacityRatio,
    eirAt: (level) => impactRatios(set, conditions, level).eirRatio,
    turns: [capacity, eir].flatMap((coefficients) => {
      const { linear, square, cube } = cubicOf(coefficients, conditions);
      return quadraticRoots(linear, 2 * square, 3 * cube);
    }),
  };
}

type Cubic = { readonly linear: number; readonly square: number; readonly cube: number };

function cubicOf(coefficients: readonly number[], conditions: ImpactConditions): Cubic {
  const [b1 = 0, b2 = 0, b3 = 0, b4 = 0, b5 = 0, b6 = 0] = coefficients;
  const scaled = (temperatureC: number): number => temperatureC / 273.15 + 1;
  const { wetBulbC, outdoorC, ratedCop } = conditions;
  return {
    linear: b1 + b2 * scaled(wetBulbC) + b3 * scaled(outdoorC) + b6 * ratedCop,
    square: b4,
    cube: b5,
  };
}

function cubic({ linear, square, cube }: Cubic, x: number): number {
  return 1 + x * (linear + square * x + cube * x * x);
}
