import { eosData } from '../../lib/diagnostics/refrigerant/eos-data';
import { compileEos, densityAt, type Eos, stateAt } from '../../lib/diagnostics/refrigerant/helmholtz';
import { ancillary, saturationEndK, saturationPa } from '../../lib/diagnostics/refrigerant/saturation';
import { findRoot } from '../../lib/math/brent';
import { invariant } from '../../lib/math/invariant';
import type { RefrigerantName } from '../../lib/visit/refrigerant-names';

/** Saturated states at one pressure. Enthalpy differences only mean something within one refrigerant. */
export type Saturated = {
  readonly psia: number;
  readonly dewF: number;
  readonly bubbleF: number;
  readonly vapourBtuLb: number;
  readonly liquidBtuLb: number;
  readonly vapourLbFt3: number;
  readonly liquidLbFt3: number;
};

/** Vapour at a pressure and enthalpy. */
export type Vapour = {
  readonly psia: number;
  readonly vapourF: number;
  readonly enthalpyBtuLb: number;
  readonly entropyBtuLbR: number;
  readonly densityLbFt3: number;
};

/** What the cycle asks of a refrigerant. The simulator goes straight to the equations of state, not to tables. */
export type Fluid = {
  readonly name: RefrigerantName;
  readonly highestSaturatedF: number;
  readonly dewPsia: (dewF: number) => number;
  readonly bubblePsia: (bubbleF: number) => number;
  readonly dewF: (psia: number) => number;
  readonly bubbleF: (psia: number) => number;
  readonly saturatedAt: (psia: number) => Saturated;
  readonly vapour: (psia: number, vapourF: number) => Vapour;
  readonly vapourAtEnthalpy: (psia: number, enthalpyBtuLb: number) => Vapour;
  readonly vapourAtEntropy: (psia: number, entropyBtuLbR: number) => Vapour;
  /** Enthalpy of liquid, taken at its own bubble point: pressure changes it by less than 0.1 Btu/lb here. */
  readonly liquidBtuLb: (liquidF: number) => number;
  readonly liquidF: (enthalpyBtuLb: number) => number;
  readonly liquidLbFt3: (liquidF: number) => number;
};

const PA_PER_PSI = 6894.757293168;
const J_KG_PER_BTU_LB = 2326;
const J_KGK_PER_BTU_LBR = 4186.8;
const KG_M3_PER_LB_FT3 = 16.018463373960142;
const kelvin = (f: number): number => (f + 459.67) / 1.8;
const fahrenheit = (k: number): number => k * 1.8 - 459.67;

const COLDEST_F = -55;
const STEP_F = 1;
/** Share of the critical (absolute) temperature up to which saturation is tabulated. */
const TOP_OF_CRITICAL_FRAC = 0.985;

const made = new Map<RefrigerantName, Fluid>();

/**
 * Properties of a refrigerant for the simulator.
 *
 * @param name refrigerant
 * @returns functions in IP units; saturation by cubic interpolation of 1-F points of the equation of state
 * @throws invariant outside -55 F .. 0.985 of the critical temperature
 * Source: lib/diagnostics/refrigerant/data/eos
 * Check: tests/synthesis/fluid.test.ts
 */
export function fluidOf(name: RefrigerantName): Fluid {
  const known = made.get(name);
  if (known !== undefined) return known;
  const fluid = build(name);
  made.set(name, fluid);
  return fluid;
}

type Curves = Record<
  'lnDew' | 'lnBubble' | 'vapourBtuLb' | 'liquidBtuLb' | 'vapourLbFt3' | 'liquidLbFt3',
  Float64Array
>;

function build(name: RefrigerantName): Fluid {
  const eos = compileEos(eosData[name]);
  const topF = Math.floor(fahrenheit(TOP_OF_CRITICAL_FRAC * saturationEndK(eos)));
  const curves = tabulate(eos, Math.round((topF - COLDEST_F) / STEP_F) + 1);
  const at = (curve: Float64Array, f: number): number => cubic(curve, f, name);
  const inverse = (curve: Float64Array, value: number): number => invert(curve, value, topF, name);
  const dewF = (psia: number): number => inverse(curves.lnDew, Math.log(psia));
  const bubbleF = (psia: number): number => inverse(curves.lnBubble, Math.log(psia));
  const saturatedAt = (psia: number): Saturated => {
    const dew = dewF(psia);
    const bubble = bubbleF(psia);
    return {
      psia,
      dewF: dew,
      bubbleF: bubble,
      vapourBtuLb: at(curves.vapourBtuLb, dew),
      liquidBtuLb: at(curves.liquidBtuLb, bubble),
      vapourLbFt3: at(curves.vapourLbFt3, dew),
      liquidLbFt3: at(curves.liquidLbFt3, bubble),
    };
  };
  const vapour = (psia: number, vapourF: number): Vapour => vapourState(eos, psia, vapourF);
  const vapourWhere = (psia: number, miss: (v: Vapour) => number): Vapour => {
    const start = dewF(psia);
    const quick = bySecant((f) => vapour(psia, f), miss, start);
    if (quick !== undefined) return quick;
    const root = findRoot((f) => miss(vapour(psia, f)), start - 3, start + 400, 1e-5);
    invariant(root.kind === 'root', `${name}: no vapour state at ${psia} psia`);
    return vapour(psia, root.x);
  };
  return {
    name,
    highestSaturatedF: topF - STEP_F,
    dewPsia: (f) => Math.exp(at(curves.lnDew, f)),
    bubblePsia: (f) => Math.exp(at(curves.lnBubble, f)),
    dewF,
    bubbleF,
    saturatedAt,
    vapour,
    vapourAtEnthalpy: (psia, h) => vapourWhere(psia, (v) => v.enthalpyBtuLb - h),
    vapourAtEntropy: (psia, s) => vapourWhere(psia, (v) => v.entropyBtuLbR - s),
    liquidBtuLb: (f) => at(curves.liquidBtuLb, f),
    liquidF: (h) => inverse(curves.liquidBtuLb, h),
    liquidLbFt3: (f) => at(curves.liquidLbFt3, f),
  };
}

/** Enthalpy and entropy are nearly straight over temperature, so a few secant steps do; undefined if they stray. */
function bySecant(at: (f: number) => Vapour, miss: (v: Vapour) => number, dewF: number): Vapour | undefined {
  let left = { f: dewF + 20, miss: miss(at(dewF + 20)) };
  let f = dewF + 50;
  for (let i = 0; i < 12; i += 1) {
    const state = at(f);
    const here = miss(state);
    if (Math.abs(here) < 1e-9 || Math.abs(f - left.f) < 1e-6) return state;
    const next = f - (here * (f - left.f)) / (here - left.miss);
    if (!(next > dewF - 3 && next < dewF + 400)) return undefined;
    left = { f, miss: here };
    f = next;
  }
  return undefined;
}

function vapourState(eos: Eos, psia: number, vapourF: number): Vapour {
  const k = kelvin(vapourF);
  const state = stateAt(eos, k, densityAt(eos, k, psia * PA_PER_PSI, 'vapour'));
  return {
    psia,
    vapourF,
    enthalpyBtuLb: state.enthalpyJKg / J_KG_PER_BTU_LB,
    entropyBtuLbR: state.entropyJKgK / J_KGK_PER_BTU_LBR,
    densityLbFt3: state.densityKgM3 / KG_M3_PER_LB_FT3,
  };
}

function tabulate(eos: Eos, points: number): Curves {
  const empty = (): Float64Array => new Float64Array(points);
  const curves: Curves = {
    lnDew: empty(),
    lnBubble: empty(),
    vapourBtuLb: empty(),
    liquidBtuLb: empty(),
    vapourLbFt3: empty(),
    liquidLbFt3: empty(),
  };
  for (let i = 0; i < points; i += 1) {
    const k = kelvin(COLDEST_F + i * STEP_F);
    const dewPa = saturationPa(eos, k, 'dew');
    const bubblePa = saturationPa(eos, k, 'bubble');
    const vapour = stateAt(eos, k, densityAt(eos, k, dewPa, 'vapour'));
    const liquid = stateAt(eos, k, liquidDensity(eos, k, bubblePa));
    curves.lnDew[i] = Math.log(dewPa / PA_PER_PSI);
    curves.lnBubble[i] = Math.log(bubblePa / PA_PER_PSI);
    curves.vapourBtuLb[i] = vapour.enthalpyJKg / J_KG_PER_BTU_LB;
    curves.liquidBtuLb[i] = liquid.enthalpyJKg / J_KG_PER_BTU_LB;
    curves.vapourLbFt3[i] = vapour.densityKgM3 / KG_M3_PER_LB_FT3;
    curves.liquidLbFt3[i] = liquid.densityKgM3 / KG_M3_PER_LB_FT3;
  }
  return curves;
}

/** The collapsed two-component blend cannot be solved for its liquid at the bubble point: its own fit is the model. */
function liquidDensity(eos: Eos, k: number, bubblePa: number): number {
  if (eos.data.kind.includes('collapsed')) {
    return ancillary(eos.data.saturationAncillaries.rho_liquid_mol_m3, k) * eos.data.molarMass_kg_mol;
  }
  return densityAt(eos, k, bubblePa, 'liquid');
}

/** Catmull-Rom cubic through the 1-F points. */
function cubic(curve: Float64Array, f: number, name: string): number {
  const place = (f - COLDEST_F) / STEP_F;
  const i = Math.floor(place);
  invariant(i >= 1 && i + 2 < curve.length, `${name}: ${f} F is outside the simulator's saturation range`);
  const [a = 0, b = 0, c = 0, d = 0] = curve.subarray(i - 1, i + 3);
  const t = place - i;
  return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
}

function invert(curve: Float64Array, value: number, topF: number, name: string): number {
  const low = COLDEST_F + STEP_F;
  const high = topF - 2 * STEP_F;
  let a = 1;
  let b = Math.round((high - COLDEST_F) / STEP_F);
  invariant(
    value >= (curve[a] ?? Number.NaN) && value <= (curve[b] ?? Number.NaN),
    `${name}: value ${value} is outside the simulator's saturation range ${low}..${high} F`,
  );
  while (b - a > 1) {
    const middle = (a + b) >> 1;
    if ((curve[middle] ?? 0) <= value) a = middle;
    else b = middle;
  }
  const left = COLDEST_F + a * STEP_F;
  let f = left + (STEP_F * (value - (curve[a] ?? 0))) / ((curve[b] ?? 0) - (curve[a] ?? 0));
  for (let n = 0; n < 3; n += 1) {
    const slope = ((curve[b] ?? 0) - (curve[a] ?? 0)) / STEP_F;
    f = Math.min(left + STEP_F, Math.max(left, f - (cubic(curve, f, name) - value) / slope));
  }
  return f;
}
