import type { Mode } from '../../visit/run';
import data from './data/airflow-quadratic.json';
import type { FaultCurve } from './fault-curve';

export type EirRatios = { readonly capacityRatio: number; readonly eirRatio: number };

/**
 * Published effect of indoor airflow as it stands: no clamp, no range check.
 *
 * @param mode      cooling or heating
 * @param flowFrac  actual over rated indoor airflow; to be trusted for 0.7..1.2
 * @returns capacity, and power per capacity (compressor and outdoor fan, no blower), over their value at rated airflow
 * Source: data/airflow-quadratic.json, status read in an open simulator
 * Check: tests/diagnostics/fault-effects/published-vectors.test.ts
 */
export function airflowRatios(mode: Mode, flowFrac: number): EirRatios {
  return {
    capacityRatio: quadratic(data[mode].capacity, flowFrac),
    eirRatio: quadratic(data[mode].eir, flowFrac),
  };
}

/**
 * The same along the share of airflow that is missing.
 *
 * @returns curve over levels 0..0.3
 * Check: tests/diagnostics/fault-effects/airflow-effect.test.ts
 */
export function airflowCurve(mode: Mode): FaultCurve {
  return {
    capacityAt: (missing) => airflowRatios(mode, 1 - missing).capacityRatio,
    eirAt: (missing) => airflowRatios(mode, 1 - missing).eirRatio,
    turns: [data[mode].capacity, data[mode].eir].map((c) => 1 - vertex(c)),
  };
}

function quadratic(c: readonly number[], x: number): number {
  const [c0 = 0, c1 = 0, c2 = 0] = c;
  return c0 + c1 * x + c2 * x * x;
}

function vertex(c: readonly number[]): number {
  const [, c1 = 0, c2 = 1] = c;
  return -c1 / (2 * c2);
}
