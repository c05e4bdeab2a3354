import { evaluatePolynomial, fitPolynomial, fitPolynomial2 } from '../../math/polynomial-fit';
import type { RefrigerantName } from '../../visit/refrigerant-names';
import { eosData } from './eos-data';
import { compileEos, densityAt, type Eos, type Phase, type StateSi, stateAt } from './helmholtz';
import { fFromK, J_KG_PER_BTU_LB, J_KGK_PER_BTU_LBR, KG_M3_PER_LB_FT3, kFromF, PA_PER_PSI } from './ip-units';
import { type Boundary, saturationEndK, saturationEndPa, saturationK, saturationPa } from './saturation';
import { axisBetween, isobarOffset, isobarShare, pressureDepth, psiaAtDepth } from './table-coordinates';
import type { CurveData, TableData } from './table-format';
import { propertyRange } from './table-range';

const CURVE_DEGREE = 10;
const PATCH_DEGREE = 7;
/** Everything is fitted a little beyond the range, so that no reading inside it sits on the fit's very end. */
const FIT_MARGIN_FRAC = 0.002;
const SPACINGS = [0.15, 0.2, 0.3, 0.4, 0.6];

/**
 * Property table of one refrigerant, fitted to its equation of state in the trade's units.
 *
 * @param name  refrigerant
 * @returns table to be stored as data/tables/<name>.json; coefficients rounded to what the fit supports
 * Check: tests/diagnostics/refrigerant/tables.test.ts
 */
export function buildTable(name: RefrigerantName): TableData {
  const eos = compileEos(eosData[name]);
  const range = propertyRange(name, eos);
  const fit = {
    lowPsia: range.lowPsia * (1 - FIT_MARGIN_FRAC),
    highPsia: range.highPsia * (1 + FIT_MARGIN_FRAC),
  };
  const endPsia = saturationEndPa(eos) / PA_PER_PSI;
  const frame: Frame = { eos, fit, endPsia, vapourHighF: range.vapourHighF, liquidLowF: range.liquidLowF };
  const pure = eos.data.saturationAncillaries.p_sat_Pa !== undefined;
  return {
    refrigerant: name,
    source: 'fitted by npm run tables to the equation of state in data/eos, cited there',
    status: 'computed',
    range,
    end: { psia: endPsia, f: fFromK(saturationEndK(eos)), critical: eos.data.critical !== undefined },
    fit,
    gasPsiFt3LbR: (eos.gasJPerKgK / 1.8 / PA_PER_PSI) * KG_M3_PER_LB_FT3,
    dew: curve(frame, 'dew'),
    ...(pure ? {} : { bubble: curve(frame, 'bubble') }),
    vapour: vapourPatches(frame),
    liquid: liquidPatch(frame),
  };
}

type Frame = {
  readonly eos: Eos;
  readonly fit: TableData['fit'];
  readonly endPsia: number;
  readonly vapourHighF: number;
  readonly liquidLowF: number;
};

function curve({ eos, fit, endPsia }: Frame, boundary: Boundary): CurveData {
  const depth = axisBetween(pressureDepth(fit.lowPsia, endPsia), pressureDepth(fit.highPsia, endPsia));
  const fAt = (psia: number): number => fFromK(saturationK(eos, psia * PA_PER_PSI, boundary));
  const endF = fFromK(saturationEndK(eos));
  const lowF = fAt(fit.lowPsia);
  const highF = fAt(fit.highPsia);
  const root = axisBetween(Math.sqrt(endF - lowF), Math.sqrt(endF - highF));
  const temperatureF = fitPolynomial(
    (u) => fAt(psiaAtDepth(depth.middle + depth.half * u, endPsia)),
    CURVE_DEGREE,
  );
  const lnPsia = fitPolynomial(
    (u) =>
      Math.log(saturationPa(eos, kFromF(endF - (root.middle + root.half * u) ** 2), boundary) / PA_PER_PSI),
    CURVE_DEGREE,
  );
  return { temperatureF: rounded(temperatureF, 6), lnPsia: rounded(lnPsia, 9), lowF, highF };
}

function vapourPatches(frame: Frame): TableData['vapour'] {
  const enthalpy = (state: StateSi): number => state.enthalpyJKg / J_KG_PER_BTU_LB;
  const spacing = bestSpacing(frame, 'vapour', enthalpy);
  const patch = (property: (state: StateSi) => number, decimals: number): number[] =>
    rounded(fitPatch(frame, 'vapour', spacing, property), decimals);
  return {
    spacing,
    enthalpyBtuLb: patch(enthalpy, 6),
    entropyBtuLbR: patch((state) => state.entropyJKgK / J_KGK_PER_BTU_LBR, 9),
    compressibility: patch(
      (state) => state.pressurePa / (state.densityKgM3 * frame.eos.gasJPerKgK * state.temperatureK),
      7,
    ),
  };
}

function liquidPatch(frame: Frame): TableData['liquid'] {
  const enthalpy = (state: StateSi): number => state.enthalpyJKg / J_KG_PER_BTU_LB;
  const spacing = bestSpacing(frame, 'liquid', enthalpy);
  return { spacing, enthalpyBtuLb: rounded(fitPatch(frame, 'liquid', spacing, enthalpy), 6) };
}

function fitPatch(
  frame: Frame,
  phase: Phase,
  spacing: number,
  property: (state: StateSi) => number,
): Float64Array {
  const state = patchState(frame, phase, spacing);
  return fitPolynomial2((u, v) => property(state(u, v)), PATCH_DEGREE, PATCH_DEGREE);
}

/** State of the equation of state at a patch's coordinates. */
function patchState(frame: Frame, phase: Phase, spacing: number): (u: number, v: number) => StateSi {
  const { eos, fit, endPsia } = frame;
  const depth = axisBetween(pressureDepth(fit.lowPsia, endPsia), pressureDepth(fit.highPsia, endPsia));
  const farF = phase === 'vapour' ? frame.vapourHighF : frame.liquidLowF;
  const saturation = new Map<number, { readonly psia: number; readonly nearF: number }>();
  const isobarAt = (u: number): { readonly psia: number; readonly nearF: number } => {
    const known = saturation.get(u);
    if (known !== undefined) return known;
    const psia = psiaAtDepth(depth.middle + depth.half * u, endPsia);
    const nearF = fFromK(saturationK(eos, psia * PA_PER_PSI, phase === 'vapour' ? 'dew' : 'bubble'));
    saturation.set(u, { psia, nearF });
    return { psia, nearF };
  };
  return (u, v) => {
    const { psia, nearF } = isobarAt(u);
    const share = isobarShare(v, isobarOffset(psia, endPsia, spacing));
    const temperatureK = kFromF(nearF + (farF - nearF) * share);
    return stateAt(eos, temperatureK, densityAt(eos, temperatureK, psia * PA_PER_PSI, phase));
  };
}

/** Spacing whose patch strays least from the equation of state on a grid that includes the edges. */
function bestSpacing(frame: Frame, phase: Phase, property: (state: StateSi) => number): number {
  let best = { spacing: 0, stray: Number.POSITIVE_INFINITY };
  for (const spacing of SPACINGS) {
    const stray = largestStray(frame, phase, spacing, property);
    if (stray < best.stray) best = { spacing, stray };
  }
  return best.spacing;
}

function largestStray(
  frame: Frame,
  phase: Phase,
  spacing: number,
  property: (state: StateSi) => number,
): number {
  const coefficients = fitPatch(frame, phase, spacing, property);
  const state = patchState(frame, phase, spacing);
  const steps = 12;
  let stray = 0;
  for (let i = 0; i <= steps; i += 1) {
    for (let j = 0; j <= steps; j += 1) {
      const u = -1 + (2 * i) / steps;
      const v = -1 + (2 * j) / steps;
      stray = Math.max(stray, Math.abs(patchValue(coefficients, u, v) - property(state(u, v))));
    }
  }
  return stray;
}

function patchValue(coefficients: Float64Array, u: number, v: number): number {
  const width = PATCH_DEGREE + 1;
  let sum = 0;
  for (let j = PATCH_DEGREE; j >= 0; j -= 1) {
    sum = sum * v + evaluatePolynomial(coefficients.subarray(j * width, (j + 1) * width), u);
  }
  return sum;
}

function rounded(values: Float64Array, decimals: number): number[] {
  return Array.from(values, (value) => Number(value.toFixed(decimals)) + 0);
}
