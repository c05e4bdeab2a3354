import data from './data/fan-motor.json';
import type { FaultCurve } from './fault-curve';

/**
 * Power per capacity when the outdoor fan motor loses efficiency and keeps its airflow; split units.
 *
 * @param lossFrac  fractional loss of the motor's efficiency, 0..0.5
 * @returns EIR ratio; capacity is unchanged
 * Source: data/fan-motor.json (NREL/SR-5500-65030, eqs. D-15 to D-18), status read
 * Check: tests/diagnostics/fault-effects/published-checks.test.ts
 */
export function fanMotorEirRatio(lossFrac: number): number {
  return 1 + (data.fanShareOfPower.split * lossFrac) / (1 - lossFrac);
}

/** The same as a curve. */
export const fanMotorCurve: FaultCurve = {
  capacityAt: () => 1,
  eirAt: fanMotorEirRatio,
  turns: [],
};
