import { invariant } from '../../math/invariant';
import data from './data/performance-curves.json';

export type CurveName = keyof typeof data.sets;

export type CurvePoint = {
  /** Gross capacity over its value at the rating point. */
  readonly capacityRatio: number;
  /** Power per capacity over its value at the rating point. */
  readonly eirRatio: number;
  /** An input lay outside the curve's range and was held at its edge. */
  readonly beyondRange: boolean;
};

/**
 * Published single-speed performance at indoor and outdoor conditions, relative to the rating point
 * (cooling 67 F wet bulb and 95 F outdoor, heating 70 F indoor and 47 F outdoor).
 *
 * @param name     curve set
 * @param indoorF  cooling: indoor wet bulb; heating: indoor dry bulb [F]
 * @param outdoorF outdoor dry bulb [F]
 * @returns ratios of gross capacity and of power per capacity (EIR), both 1 at the rating point
 * @throws invariant if a temperature is not finite
 * Outside the range in data/performance-curves.json: inputs are held at the edge and marked.
 * Source: Cutler and others, NREL/TP-5500-56354, 2013, normalised; status secondary
 * Check: tests/diagnostics/healthy-unit/performance-curve.test.ts
 */
export function curvePoint(name: CurveName, indoorF: number, outdoorF: number): CurvePoint {
  invariant(Number.isFinite(indoorF) && Number.isFinite(outdoorF), `curve at ${indoorF} F, ${outdoorF} F`);
  const set = data.sets[name];
  const heating = name === 'heatPumpHeating';
  const indoorRange = heating ? data.validity.heatingIndoorF : data.validity.coolingWetBulbF;
  const outdoorRange = heating ? data.validity.heatingOutdoorF : data.validity.coolingOutdoorF;
  const x = Math.min(indoorRange.high, Math.max(indoorRange.low, indoorF));
  const y = Math.min(outdoorRange.high, Math.max(outdoorRange.low, outdoorF));
  return {
    capacityRatio: biquadratic(set.capacity, x, y),
    eirRatio: biquadratic(set.eir, x, y),
    beyondRange: x !== indoorF || y !== outdoorF,
  };
}

function biquadratic(c: readonly number[], x: number, y: number): number {
  const [c0 = 0, c1 = 0, c2 = 0, c3 = 0, c4 = 0, c5 = 0] = c;
  return c0 + c1 * x + c2 * x * x + c3 * y + c4 * y * y + c5 * x * y;
}

export type FrostFactor = { readonly capacityRatio: number; readonly powerRatio: number };

/**
 * Loss of heating capacity and power to frost and defrost, averaged over time. It applies to frost-free steady
 * values and must not be combined with the test procedure's own frosting line (its step at 45 F).
 *
 * @param outdoorF outdoor dry bulb [F]
 * @returns multipliers of capacity and power, 1 at and above 40 F
 * Range: any finite temperature; the time share stays between 0 and 8 %.
 * Source: RESNET Addendum 82 as carried in an open performance library; status secondary
 * Check: tests/diagnostics/healthy-unit/performance-curve.test.ts
 */
export function frostFactor(outdoorF: number): FrostFactor {
  const { startF, interceptFrac, slopeFracPerF, maxFrac, capacityFactor, powerFactor } = data.frost;
  const line = Math.max(0, interceptFrac + slopeFracPerF * outdoorF);
  const share = outdoorF < startF ? Math.min(maxFrac, line) : 0;
  return { capacityRatio: 1 - capacityFactor * share, powerRatio: 1 - powerFactor * share };
}
