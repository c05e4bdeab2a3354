import { invariant } from '../../math/invariant';
import type { EosData } from './eos-data';

type PowerTerm = { readonly n: number; readonly d: number; readonly t: number; readonly l: number };

type GaussianTerm = {
  readonly n: number;
  readonly d: number;
  readonly t: number;
  readonly eta: number;
  readonly beta: number;
  readonly gamma: number;
  readonly epsilon: number;
};

type Pair = { readonly factor: number; readonly exponent: number };

/** An equation of state ready to evaluate: terms named, constants per kilogram. */
export type Eos = {
  readonly data: EosData;
  readonly gasJPerKgK: number;
  readonly reducingK: number;
  readonly reducingKgM3: number;
  readonly idealPower: readonly Pair[];
  readonly idealEinstein: readonly Pair[];
  readonly power: readonly PowerTerm[];
  readonly gaussian: readonly GaussianTerm[];
};

/**
 * Reduced Helmholtz energy and its derivatives, each multiplied by the powers of delta and tau that make it
 * dimensionless: `residualDelta` is delta d(alphar)/d(delta), `idealTauTau` is tau^2 d2(alpha0)/d(tau)2 and so on.
 */
export type Helmholtz = {
  readonly ideal: number;
  readonly idealTau: number;
  readonly idealTauTau: number;
  readonly residual: number;
  readonly residualDelta: number;
  readonly residualDeltaDelta: number;
  readonly residualTau: number;
  readonly residualTauTau: number;
  readonly residualDeltaTau: number;
};

/** Properties at one temperature and density, SI, per kilogram. */
export type StateSi = {
  readonly temperatureK: number;
  readonly densityKgM3: number;
  readonly pressurePa: number;
  readonly enthalpyJKg: number;
  readonly entropyJKgK: number;
  readonly cvJKgK: number;
  readonly cpJKgK: number;
  readonly soundMS: number;
  /** (dp/drho) at constant temperature [J/kg]; negative inside the two-phase dome */
  readonly pressureSlopeJKg: number;
};

/**
 * Reads a coefficient file into named terms.
 *
 * @param data  coefficient file
 * @returns equation ready for `helmholtz` and `stateAt`
 * @throws invariant if a row has the wrong number of columns
 * Check: tests/diagnostics/refrigerant/helmholtz.test.ts
 */
export function compileEos(data: EosData): Eos {
  const pair = (row: readonly number[]): Pair => ({ factor: column(row, 0, 2), exponent: column(row, 1, 2) });
  return {
    data,
    gasJPerKgK: data.gasConstant_J_molK / data.molarMass_kg_mol,
    reducingK: data.reducing.T_K,
    reducingKgM3: data.reducing.rho_mol_m3 * data.molarMass_kg_mol,
    idealPower: data.ideal.power.map(pair),
    idealEinstein: data.ideal.einstein.map(pair),
    power: data.residual.power.map((row) => ({
      n: column(row, 0, 4),
      d: column(row, 1, 4),
      t: column(row, 2, 4),
      l: column(row, 3, 4),
    })),
    gaussian: data.residual.gaussian.map((row) => ({
      n: column(row, 0, 7),
      d: column(row, 1, 7),
      t: column(row, 2, 7),
      eta: column(row, 3, 7),
      beta: column(row, 4, 7),
      gamma: column(row, 5, 7),
      epsilon: column(row, 6, 7),
    })),
  };
}

/**
 * Reduced Helmholtz energy with analytic derivatives.
 *
 * @param eos    equation of state
 * @param delta  density over reducing density, > 0
 * @param tau    reducing temperature over temperature, > 0
 * Source: form as in Span R., Multiparameter Equations of State, Springer 2000, ch. 3, status memory;
 * coefficients in data/eos with their citations
 * Check: tests/diagnostics/refrigerant/helmholtz.test.ts
 */
export function helmholtz(eos: Eos, delta: number, tau: number): Helmholtz {
  return { ...idealPart(eos, delta, tau), ...residualPart(eos, delta, tau) };
}

function idealPart(
  eos: Eos,
  delta: number,
  tau: number,
): Pick<Helmholtz, 'ideal' | 'idealTau' | 'idealTauTau'> {
  const { a1, a2, logTau } = eos.data.ideal;
  let ideal = Math.log(delta) + a1 + a2 * tau + logTau * Math.log(tau);
  let idealTau = a2 * tau + logTau;
  let idealTauTau = -logTau;
  for (const { factor, exponent } of eos.idealPower) {
    const term = factor * tau ** exponent;
    ideal += term;
    idealTau += exponent * term;
    idealTauTau += exponent * (exponent - 1) * term;
  }
  for (const { factor, exponent } of eos.idealEinstein) {
    const u = exponent * tau;
    const decay = Math.exp(-u);
    ideal += factor * Math.log(1 - decay);
    idealTau += (factor * u * decay) / (1 - decay);
    idealTauTau -= (factor * u * u * decay) / (1 - decay) ** 2;
  }
  return { ideal, idealTau, idealTauTau };
}

function residualPart(
  eos: Eos,
  delta: number,
  tau: number,
): Omit<Helmholtz, 'ideal' | 'idealTau' | 'idealTauTau'> {
  let residual = 0;
  let residualDelta = 0;
  let residualDeltaDelta = 0;
  let residualTau = 0;
  let residualTauTau = 0;
  let residualDeltaTau = 0;
  /** adds a term whose logarithmic derivatives (delta d ln/d delta, tau d ln/d tau) and curvatures are known */
  const add = (term: number, byDelta: number, deltaCurve: number, byTau: number, tauCurve: number): void => {
    residual += term;
    residualDelta += term * byDelta;
    residualDeltaDelta += term * (byDelta * byDelta - deltaCurve);
    residualTau += term * byTau;
    residualTauTau += term * (byTau * byTau - tauCurve);
    residualDeltaTau += term * byDelta * byTau;
  };
  for (const { n, d, t, l } of eos.power) {
    const cut = l > 0 ? delta ** l : 0;
    const term = n * delta ** d * tau ** t * (l > 0 ? Math.exp(-cut) : 1);
    const byDelta = d - l * cut;
    add(term, byDelta, byDelta + l * l * cut, t, t);
  }
  for (const { n, d, t, eta, beta, gamma, epsilon } of eos.gaussian) {
    const term =
      n * delta ** d * tau ** t * Math.exp(-eta * (delta - epsilon) ** 2 - beta * (tau - gamma) ** 2);
    const byDelta = d - 2 * eta * delta * (delta - epsilon);
    const byTau = t - 2 * beta * tau * (tau - gamma);
    add(term, byDelta, d + 2 * eta * delta * delta, byTau, t + 2 * beta * tau * tau);
  }
  return { residual, residualDelta, residualDeltaDelta, residualTau, residualTauTau, residualDeltaTau };
}

/**
 * Properties at a temperature and density, whatever the phase.
 *
 * @param eos  equation of state
 * @param temperatureK  temperature [K], > 0
 * @param densityKgM3   density [kg/m3], > 0
 * @returns pressure, enthalpy, entropy, heat capacities, speed of sound; h = 200 kJ/kg and s = 1 kJ/(kg K) for
 * bubble-point liquid at 273.15 K, so only differences mean anything
 * Outside the published range: extrapolates; callers keep inside.
 * Check: tests/diagnostics/refrigerant/helmholtz.test.ts
 */
export function stateAt(eos: Eos, temperatureK: number, densityKgM3: number): StateSi {
  const tau = eos.reducingK / temperatureK;
  const a = helmholtz(eos, densityKgM3 / eos.reducingKgM3, tau);
  const rt = eos.gasJPerKgK * temperatureK;
  const cv = -eos.gasJPerKgK * (a.idealTauTau + a.residualTauTau);
  const stiffness = 1 + 2 * a.residualDelta + a.residualDeltaDelta;
  const expansion = 1 + a.residualDelta - a.residualDeltaTau;
  const cp = cv + (eos.gasJPerKgK * expansion * expansion) / stiffness;
  const soundSquared = rt * (stiffness - (expansion * expansion) / (a.idealTauTau + a.residualTauTau));
  return {
    temperatureK,
    densityKgM3,
    pressurePa: densityKgM3 * rt * (1 + a.residualDelta),
    enthalpyJKg: rt * (1 + a.idealTau + a.residualTau + a.residualDelta),
    entropyJKgK: eos.gasJPerKgK * (a.idealTau + a.residualTau - a.ideal - a.residual),
    cvJKgK: cv,
    cpJKgK: cp,
    soundMS: soundSquared > 0 ? Math.sqrt(soundSquared) : 0,
    pressureSlopeJKg: rt * stiffness,
  };
}

/**
 * Density of vapour or liquid at a temperature and pressure, by Newton steps that stay on the wanted branch.
 * Vapour starts at the ideal-gas density, liquid at a density above every liquid of interest; both then walk
 * towards the root from the stable side, neither crossing the reducing density, which divides the branches.
 *
 * @param eos  equation of state
 * @param temperatureK  temperature [K]
 * @param pressurePa    pressure [Pa], > 0
 * @param phase  branch to follow; slightly beyond saturation the metastable branch is followed
 * @returns density [kg/m3]
 * @throws invariant if no such density is found
 * Far inside the two-phase dome equations of state have roots without meaning, which may be returned; callers stay
 * at saturation or on the phase's own side of it.
 * Check: tests/diagnostics/refrigerant/helmholtz.test.ts
 */
export function densityAt(eos: Eos, temperatureK: number, pressurePa: number, phase: Phase): number {
  const tau = eos.reducingK / temperatureK;
  const rt = eos.gasJPerKgK * temperatureK;
  const inward = phase === 'vapour' ? 0.97 : 1.03;
  let density = phase === 'vapour' ? pressurePa / rt : liquidStart * eos.reducingKgM3;
  for (let i = 0; i < 100; i += 1) {
    const r = residualPart(eos, density / eos.reducingKgM3, tau);
    const slope = rt * (1 + 2 * r.residualDelta + r.residualDeltaDelta);
    const miss = density * rt * (1 + r.residualDelta) - pressurePa;
    const step = -miss / slope;
    if (slope > 0 && Math.abs(step) <= 1e-10 * density) return density + step;
    const next = slope > 0 ? Math.max(0.5 * density, density + step) : inward * density;
    density = phase === 'vapour' ? Math.min(next, eos.reducingKgM3) : Math.max(next, eos.reducingKgM3);
  }
  throw new Error(`invariant: no ${phase} at ${temperatureK} K and ${pressurePa} Pa`);
}

export type Phase = 'vapour' | 'liquid';

/** Reduced density above that of every liquid in the temperature range used here. */
const liquidStart = 3.4;

function column(row: readonly number[], i: number, width: number): number {
  const value = row[i];
  invariant(row.length === width && value !== undefined, `row of ${row.length} columns, ${width} expected`);
  return value;
}
