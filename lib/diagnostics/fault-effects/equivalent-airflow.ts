import type { Mode } from '../../visit/run';
import { airflowRatios, type EirRatios } from './airflow-quadratic';
import { chargeRatios } from './charge-laboratory';
import data from './data/charge-laboratory.json';

/**
 * What low indoor airflow costs a unit whose charge is off as well. A coil short of refrigerant behaves as if it had
 * more air for it, by the factor g.
 *
 * @param mode      cooling or heating
 * @param fault     (charge - correct) / correct, NEGATIVE for missing charge
 * @param flowFrac  actual over rated indoor airflow
 * @returns multipliers for capacity and for power per capacity, to go with those of the charge alone; and g
 * Source: installation-quality program of OpenStudio-HPXML (equivalent-airflow method), status read
 * Check: tests/diagnostics/fault-effects/published-vectors.test.ts
 */
export function airflowAfterCharge(
  mode: Mode,
  fault: number,
  flowFrac: number,
): EirRatios & { readonly airMultiplier: number } {
  const { coolingIndoorC, coolingOutdoorC, heatingOutdoorC, decimals } = data.interaction;
  const outdoorC = mode === 'cooling' ? coolingOutdoorC : heatingOutdoorC;
  const charge = chargeRatios({ mode, indoorC: coolingIndoorC, outdoorC }, fault);
  const airMultiplier = Number((1 / charge.capacityRatio).toFixed(decimals));
  const full = airflowRatios(mode, airMultiplier);
  const part = airflowRatios(mode, airMultiplier * flowFrac);
  return {
    capacityRatio: part.capacityRatio / full.capacityRatio,
    eirRatio: part.eirRatio / full.eirRatio,
    airMultiplier,
  };
}
