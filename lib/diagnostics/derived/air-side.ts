import { asSourced, derive } from '../derive';
import type { DerivedValue } from '../findings';
import { airEnthalpyBtuLb, airPressureRatio } from '../moist-air';
import { baroPsiaAtAltitude } from '../refrigerant/gauge';
import { assumption, type RunContext, reading, returnWetBulb } from '../run-context';
import { allowance, constant, plateValue, type Sourced } from '../sourced';

const TRAVERSE =
  'Airflow = mean face velocity x effective area (grille maker technical note TT-14, 2005), status read';

/**
 * Face velocity of the return grille: the mean of the points of a traverse, else the mean typed in.
 *
 * @returns [fpm]; the spread of the points adds to the instrument's uncertainty
 * Check: tests/diagnostics/derived-air.test.ts
 */
export function faceVelocity(context: RunContext): Sourced | undefined {
  const points = context.run.grilleFacePointsFpm;
  const typed = reading(context, 'grilleFaceFpm');
  if (points === undefined || points.length === 0) return typed;
  const mean = points.reduce((sum, point) => sum + point, 0) / points.length;
  const spread = points.reduce((sum, point) => sum + (point - mean) ** 2, 0);
  const ofMean = points.length > 1 ? Math.sqrt(spread / (points.length - 1) / points.length) : 0.1 * mean;
  const instrument = typed?.sd ?? 0.05 * mean;
  return {
    name: 'grilleFacePointsFpm',
    value: mean,
    sd: Math.hypot(instrument, ofMean),
    unit: 'fpm',
    basis: 'measured',
  };
}

/**
 * Gross area of the return grille from its width and height.
 *
 * @returns [in2]; absent when the area itself was typed
 * Check: tests/diagnostics/derived-air.test.ts
 */
export function grilleGrossArea(context: RunContext): DerivedValue | undefined {
  if (context.run.grilleAreaIn2 !== undefined) return undefined;
  return derive({
    id: 'grilleGrossAreaIn2',
    unit: 'in2',
    formula: 'gross area = width x height',
    source: 'Definition',
    inputs: { width: reading(context, 'grilleWidthIn'), height: reading(context, 'grilleHeightIn') },
    compute: (v) => v.width * v.height,
  });
}

/** Gross area of the return grille [in2]: as typed, else from width and height. */
export function grilleArea(context: RunContext): Sourced | undefined {
  return reading(context, 'grilleAreaIn2') ?? asSourced(grilleGrossArea(context));
}

/**
 * Free area of the return grille.
 *
 * @returns [in2]: gross area x free-area factor (400 in2 x 0.70 = 280 in2)
 * Check: tests/diagnostics/derived-air.test.ts
 */
export function grilleFreeArea(context: RunContext): DerivedValue | undefined {
  return derive({
    id: 'grilleFreeAreaIn2',
    unit: 'in2',
    formula: 'free area = gross area x free-area factor',
    source: TRAVERSE,
    inputs: { area: grilleArea(context), factor: freeAreaFactor(context) },
    compute: (v) => v.area * v.factor,
  });
}

/** Airflow by grille traverse [cfm]. Check: tests/diagnostics/derived-air.test.ts */
export function grilleAirflow(context: RunContext): DerivedValue | undefined {
  return derive({
    id: 'airflowGrilleCfm',
    unit: 'cfm',
    formula: 'cfm = face velocity x gross area x free-area factor / 144',
    source: TRAVERSE,
    inputs: {
      velocity: faceVelocity(context),
      area: grilleArea(context),
      factor: freeAreaFactor(context),
    },
    compute: (v) => (v.velocity * v.area * v.factor) / 144,
  });
}

/**
 * Airflow by the temperature rise over the electric heat, compressor off.
 *
 * @returns [cfm]; blower watts, when read, are added to the heat; otherwise the result is biased 3-5 % low and
 * widened for it. A rise of zero or less has no airflow.
 * Source: trade note, airflow by electric heat with worked example (235 V, 75 A, 36 F -> 1,548 cfm), status read
 * Check: tests/diagnostics/derived-air.test.ts
 */
export function heatRiseAirflow(context: RunContext): DerivedValue | undefined {
  const blower = reading(context, 'blowerW');
  return derive({
    id: 'airflowHeatRiseCfm',
    unit: 'cfm',
    formula: 'cfm = (V x A + blower W, if read) x 3.412 / (1.08 x rise x p/p0)',
    source: 'Trade note, airflow by electric heat with worked example, status read',
    inputs: {
      volts: reading(context, 'heatRiseV'),
      amps: reading(context, 'heatRiseA'),
      supply: reading(context, 'heatRiseSupplyF'),
      return: reading(context, 'heatRiseReturnF'),
      factor: allowance('airHeatFactorFrac'),
      blower: blower ?? { ...allowance('blowerHeatShareFrac'), value: 0, sd: 0 },
      blowerShare: blower === undefined ? allowance('blowerHeatShareFrac') : exactZero('blowerHeatShareFrac'),
      altitude: context.altitude,
    },
    compute: (v) => {
      const riseFd = v.supply - v.return;
      if (riseFd <= 0) return Number.NaN;
      const heatBtuh = (v.volts * v.amps + v.blower) * (1 + v.blowerShare) * constant('btuhPerW');
      return heatBtuh / (sensibleFactor(v.altitude) * v.factor * riseFd);
    },
  });
}

/** Airflow as measured directly [cfm]. Check: tests/diagnostics/derived-air.test.ts */
export function directAirflow(context: RunContext): DerivedValue | undefined {
  return derive({
    id: 'airflowDirectCfm',
    unit: 'cfm',
    formula: 'cfm as read',
    source: 'Flow hood, flow grid or similar',
    inputs: { airflow: reading(context, 'airflowCfm') },
    compute: (v) => v.airflow,
  });
}

/**
 * Best airflow of the run: methods weighted by the inverse of their variance.
 *
 * @param methods  results of the methods for which readings exist
 * @returns [cfm], undefined when there is none; methods more than two sigma apart are flagged elsewhere and the
 * result is widened so that it covers them
 * Check: tests/diagnostics/derived-air.test.ts
 */
export function bestAirflow(methods: readonly DerivedValue[]): DerivedValue | undefined {
  if (methods.length === 0) return undefined;
  const weights = methods.map((m) => 1 / m.sd ** 2);
  const total = weights.reduce((sum, w) => sum + w, 0);
  const scatter = birgeRatio(methods);
  const best = derive({
    id: 'airflowCfm',
    unit: 'cfm',
    formula: methods.length === 1 ? (methods[0]?.formula ?? '') : 'mean of the methods, weighted by 1/sd^2',
    source: 'Inverse-variance mean; widened by the Birge ratio when methods disagree',
    inputs: Object.fromEntries(methods.map((m) => [m.id, asSourced(m)])) as Record<
      string,
      Sourced | undefined
    >,
    compute: (v) =>
      methods.reduce((sum, m, i) => sum + (v[m.id] ?? Number.NaN) * (weights[i] ?? 0), 0) / total,
  });
  return best === undefined ? undefined : { ...best, sd: best.sd * scatter };
}

/** Square root of chi-squared per degree of freedom of values that should agree; never below 1. */
function birgeRatio(values: readonly DerivedValue[]): number {
  if (values.length < 2) return 1;
  const weights = values.map((m) => 1 / m.sd ** 2);
  const total = weights.reduce((sum, w) => sum + w, 0);
  const mean = values.reduce((sum, m, i) => sum + m.value * (weights[i] ?? 0), 0) / total;
  const chi2 = values.reduce((sum, m) => sum + ((m.value - mean) / m.sd) ** 2, 0);
  return Math.max(1, Math.sqrt(chi2 / (values.length - 1)));
}

/** Airflow per ton of nominal size [cfm/ton]. Check: tests/diagnostics/derived-air.test.ts */
export function airflowPerTon(
  context: RunContext,
  airflow: DerivedValue | undefined,
): DerivedValue | undefined {
  return derive({
    id: 'airflowCfmPerTon',
    unit: 'cfm/ton',
    formula: 'cfm per ton = airflow / nominal tons',
    source: 'Trade definition',
    inputs: {
      airflow: asSourced(airflow),
      tons: plateValue('nominalTons', context.visit.unit.nominalTons, 'ton'),
    },
    compute: (v) => v.airflow / v.tons,
  });
}

/** Total external static pressure [in. w.c.]. Check: tests/diagnostics/derived-air.test.ts */
export function totalExternalStatic(context: RunContext): DerivedValue | undefined {
  return derive({
    id: 'totalExternalStaticInWc',
    unit: 'in. w.c.',
    formula: 'TESP = supply static + |return static|',
    source: 'Trade definition',
    inputs: {
      supply: reading(context, 'supplyStaticInWc'),
      return: reading(context, 'returnStaticInWc'),
    },
    compute: (v) => v.supply + Math.abs(v.return),
  });
}

/**
 * Air temperature difference over the indoor coil: return less supply in cooling, supply less return in heating.
 *
 * @returns [F difference], id `airSplitFd` or `airRiseFd`
 * Check: tests/diagnostics/derived-air.test.ts
 */
export function airDifference(context: RunContext): DerivedValue | undefined {
  const cooling = context.run.mode === 'cooling';
  return derive({
    id: cooling ? 'airSplitFd' : 'airRiseFd',
    unit: 'Fd',
    formula: cooling ? 'split = return air - supply air' : 'rise = supply air - return air',
    source: 'Trade definition',
    inputs: {
      return: reading(context, 'returnAirF'),
      supply: reading(context, 'supplyAirF'),
      mixing: allowance('ductMixingFd'),
    },
    compute: (v) => (cooling ? v.return - v.supply : v.supply - v.return) + v.mixing,
  });
}

/**
 * Sensible heat the air took up or gave off, net of (cooling) or with (heating) blower heat.
 *
 * @returns [Btu/h]: 1.08 x cfm x difference x p/p0
 * Source: trade article on the factor 1.08 (2021), status read; altitude by standard atmosphere, status computed
 * Check: tests/diagnostics/derived-air.test.ts
 */
export function sensibleCapacity(
  context: RunContext,
  airflow: DerivedValue | undefined,
): DerivedValue | undefined {
  return derive({
    id: 'sensibleCapacityBtuh',
    unit: 'Btu/h',
    formula: 'sensible = 1.08 x cfm x temperature difference x p/p0',
    source: 'Trade article on where the 1.08 factor comes from (2021), status read',
    inputs: {
      airflow: asSourced(airflow),
      difference: asSourced(airDifference(context)),
      factor: allowance('airHeatFactorFrac'),
      altitude: context.altitude,
    },
    compute: (v) => sensibleFactor(v.altitude) * v.factor * v.airflow * v.difference,
  });
}

/**
 * Total heat the air gave up in cooling, from wet bulbs before and after the coil.
 *
 * @returns [Btu/h], net of blower heat; in heating the sensible capacity is the total and this is absent
 * Source: 4.5 x cfm x enthalpy difference x p/p0 (60 x 0.075), status memory; enthalpies by psychrolib
 * Check: tests/diagnostics/derived-air.test.ts
 */
export function totalCapacity(
  context: RunContext,
  airflow: DerivedValue | undefined,
): DerivedValue | undefined {
  if (context.run.mode !== 'cooling') return undefined;
  return derive({
    id: 'totalCapacityBtuh',
    unit: 'Btu/h',
    formula: 'total = 4.5 x cfm x (h_return - h_supply) x p/p0',
    source: 'Common practice (60 x 0.075); air enthalpies by psychrolib',
    inputs: {
      airflow: asSourced(airflow),
      returnDry: reading(context, 'returnAirF'),
      returnWet: returnWetBulb(context),
      supplyDry: reading(context, 'supplyAirF'),
      supplyWet: reading(context, 'supplyWetBulbF'),
      altitude: context.altitude,
    },
    compute: (v) => {
      const psia = baroPsiaAtAltitude(v.altitude);
      const before = airEnthalpyBtuLb(v.returnDry, v.returnWet, psia);
      const after = airEnthalpyBtuLb(v.supplyDry, v.supplyWet, psia);
      return constant('totalLbhPerCfm') * airPressureRatio(v.altitude) * v.airflow * (before - after);
    },
  });
}

/** 1.08 at the altitude [Btu/(h cfm F)]. Check: tests/diagnostics/derived-air.test.ts */
export function sensibleFactor(altitudeFt: number): number {
  return constant('sensibleBtuhPerCfmFd') * airPressureRatio(altitudeFt);
}

/** Free-area factor of the grille: as typed, else the assumption. */
export function freeAreaFactor(context: RunContext): Sourced {
  return reading(context, 'grilleFreeAreaFrac') ?? assumption(context, 'grilleFreeAreaFrac');
}

function exactZero(name: string): Sourced {
  return { name, value: 0, sd: 0, unit: 'frac', basis: 'measured' };
}
