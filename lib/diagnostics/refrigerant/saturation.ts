import { findRoot } from '../../math/brent';
import { invariant } from '../../math/invariant';
import type { AncillaryData } from './eos-data';
import { type Eos, type StateSi, stateAt } from './helmholtz';

/** Where boiling starts (`bubble`, all liquid) or ends (`dew`, all vapour). Equal for a pure refrigerant. */
export type Boundary = 'bubble' | 'dew';

/**
 * Value of a fitted saturation curve.
 *
 * @param curve  curve of a coefficient file
 * @param temperatureK  temperature [K], below the curve's reference temperature
 * @returns value in the unit of the curve (pressure [Pa] or density [mol/m3])
 * Check: tests/diagnostics/refrigerant/saturation.test.ts
 */
export function ancillary(curve: AncillaryData, temperatureK: number): number {
  const theta = 1 - temperatureK / curve.T_ref_K;
  invariant(theta >= 0, `${temperatureK} K is above the curve's end ${curve.T_ref_K} K`);
  let sum = 0;
  for (const [factor = 0, exponent = 0] of curve.terms) sum += factor * theta ** exponent;
  if (curve.multiplyByTrefOverT) sum *= curve.T_ref_K / temperatureK;
  return curve.form === 'exp' ? curve.value_ref * Math.exp(sum) : curve.value_ref * (1 + sum);
}

/**
 * Saturation pressure at a temperature.
 *
 * Pure refrigerants: equal pressure and equal Gibbs energy of both phases, Newton steps on the two densities,
 * started from the fitted curves. Pseudo-pure blends: the two published equations, which are the model. R-454B: the project's
 * own fit to the two-component model (0.003 %).
 *
 * @param eos  equation of state
 * @param temperatureK  temperature [K], below critical
 * @param boundary  bubble or dew; the same for a pure refrigerant
 * @returns pressure [Pa]
 * @throws invariant if the steps do not settle, or the temperature is above the curve's end
 * Check: tests/diagnostics/refrigerant/saturation.test.ts
 */
export function saturationPa(eos: Eos, temperatureK: number, boundary: Boundary): number {
  const curves = eos.data.saturationAncillaries;
  if (curves.p_sat_Pa !== undefined) return equalGibbsPa(eos, temperatureK);
  const curve = boundary === 'bubble' ? curves.p_bubble_Pa : curves.p_dew_Pa;
  invariant(curve !== undefined, `${eos.data.refrigerant} has no ${boundary} curve`);
  return ancillary(curve, temperatureK);
}

function equalGibbsPa(eos: Eos, temperatureK: number): number {
  const curves = eos.data.saturationAncillaries;
  const molarMass = eos.data.molarMass_kg_mol;
  let liquidKgM3 = ancillary(curves.rho_liquid_mol_m3, temperatureK) * molarMass;
  let vapourKgM3 = ancillary(curves.rho_vapour_mol_m3, temperatureK) * molarMass;
  for (let i = 0; i < 60; i += 1) {
    const liquid = stateAt(eos, temperatureK, liquidKgM3);
    const vapour = stateAt(eos, temperatureK, vapourKgM3);
    if (liquid.pressureSlopeJKg <= 0 || vapour.pressureSlopeJKg <= 0) {
      liquidKgM3 *= liquid.pressureSlopeJKg > 0 ? 1 : 1.02;
      vapourKgM3 *= vapour.pressureSlopeJKg > 0 ? 1 : 0.98;
      continue;
    }
    const pressureMiss = liquid.pressurePa - vapour.pressurePa;
    const gibbsMiss = gibbs(liquid) - gibbs(vapour);
    const volumes = 1 / liquidKgM3 - 1 / vapourKgM3;
    const liquidStep = (pressureMiss / vapourKgM3 - gibbsMiss) / (liquid.pressureSlopeJKg * volumes);
    const vapourStep = (pressureMiss / liquidKgM3 - gibbsMiss) / (vapour.pressureSlopeJKg * volumes);
    liquidKgM3 += withinTenth(liquidStep, liquidKgM3);
    vapourKgM3 += withinTenth(vapourStep, vapourKgM3);
    if (Math.abs(liquidStep) <= 1e-11 * liquidKgM3 && Math.abs(vapourStep) <= 1e-11 * vapourKgM3) {
      return stateAt(eos, temperatureK, vapourKgM3).pressurePa;
    }
  }
  throw new Error(`invariant: no equal Gibbs energy at ${temperatureK} K`);
}

function withinTenth(step: number, of: number): number {
  return Math.max(-0.1 * of, Math.min(0.1 * of, step));
}

function gibbs(state: StateSi): number {
  return state.enthalpyJKg - state.temperatureK * state.entropyJKgK;
}

/**
 * Saturation temperature at a pressure: the inverse of `saturationPa`.
 *
 * @param eos  equation of state
 * @param pressurePa  pressure [Pa]
 * @param boundary  bubble or dew
 * @returns temperature [K]
 * @throws invariant if the pressure is not reached between 200 K and 0.997 of the curve's end
 * Check: tests/diagnostics/refrigerant/saturation.test.ts
 */
export function saturationK(eos: Eos, pressurePa: number, boundary: Boundary): number {
  const high = 0.997 * saturationEndK(eos);
  const root = findRoot((t) => Math.log(saturationPa(eos, t, boundary) / pressurePa), 200, high, 1e-9);
  invariant(root.kind === 'root', `${eos.data.refrigerant}: no ${boundary} temperature at ${pressurePa} Pa`);
  return root.x;
}

/**
 * Temperature at which the saturation curves end.
 *
 * @param eos  equation of state
 * @returns critical temperature, or for R-454B the reference temperature of its fit [K]
 * Check: tests/diagnostics/refrigerant/saturation.test.ts
 */
export function saturationEndK(eos: Eos): number {
  return eos.data.critical?.T_K ?? eos.data.saturationAncillaries.rho_liquid_mol_m3.T_ref_K;
}

/**
 * Pressure at which the saturation curves end.
 *
 * @param eos  equation of state
 * @returns critical pressure, or for R-454B the value its bubble fit takes at its reference temperature [Pa]
 * Check: tests/diagnostics/refrigerant/saturation.test.ts
 */
export function saturationEndPa(eos: Eos): number {
  return eos.data.critical?.p_Pa ?? saturationPa(eos, saturationEndK(eos), 'bubble');
}
