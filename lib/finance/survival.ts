import { invariant } from '../math/invariant';

/** Weibull life of a unit: S(age) = exp(-(age / scale)^shape). */
export type LifeCurve = { readonly shape: number; readonly scaleYears: number };

/**
 * Life curve from the age at which half of the units are gone.
 *
 * @param medianYears  median life [years], > 0
 * @param shape        Weibull shape, > 0; above 1 the risk rises with age
 * @throws invariant if a value is not positive
 * Source: S(median) = 1/2; computed. The parameters themselves are assumptions: no published ones were found.
 * Check: tests/finance/survival.test.ts
 */
export function lifeCurve(medianYears: number, shape: number): LifeCurve {
  invariant(medianYears > 0 && Number.isFinite(medianYears), `median life ${medianYears}`);
  invariant(shape > 0 && Number.isFinite(shape), `shape ${shape}`);
  return { shape, scaleYears: medianYears / Math.LN2 ** (1 / shape) };
}

/**
 * Chance that a unit of a given age still runs some years later.
 *
 * @param curve       life curve
 * @param ageYears    age now [years], >= 0
 * @param years       years from now, >= 0
 * @param hazardRatio failure risk against an ordinary unit of the same age, > 0: S becomes S^ratio
 * @returns S(age + years) / S(age), 0..1; exact also where both underflow
 * @throws invariant if an argument is out of range
 * Source: definition of conditional survival and of proportional hazards; computed
 * Check: tests/finance/survival.test.ts
 */
export function survivesFrac(curve: LifeCurve, ageYears: number, years: number, hazardRatio = 1): number {
  return Math.exp(-cumulativeHazard(curve, ageYears, years, hazardRatio));
}

/**
 * Chances of failing in each coming year, given that the unit runs at the start of that year.
 *
 * @param curve       life curve
 * @param ageYears    age at the start of the first year, >= 0; need not be whole
 * @param years       number of years, whole
 * @param hazardRatio as in `survivesFrac`
 * @returns chance for year 1, 2, ...; length = years
 * Check: tests/finance/survival.test.ts
 */
export function yearlyFailureFracs(
  curve: LifeCurve,
  ageYears: number,
  years: number,
  hazardRatio = 1,
): Float64Array {
  return Float64Array.from(
    { length: years },
    (_, k) => -Math.expm1(-cumulativeHazard(curve, ageYears + k, 1, hazardRatio)),
  );
}

/** Part of its life that a unit has left, on a straight line to a given life; never below 0. */
export function lifeLeftFrac(ageYears: number, lifeYears: number): number {
  invariant(lifeYears > 0, `life ${lifeYears}`);
  return Math.max(0, 1 - ageYears / lifeYears);
}

function cumulativeHazard(curve: LifeCurve, ageYears: number, years: number, hazardRatio: number): number {
  invariant(ageYears >= 0 && years >= 0, `age ${ageYears}, years ${years}`);
  invariant(hazardRatio > 0 && Number.isFinite(hazardRatio), `hazard ratio ${hazardRatio}`);
  const to = ((ageYears + years) / curve.scaleYears) ** curve.shape;
  return hazardRatio * (to - (ageYears / curve.scaleYears) ** curve.shape);
}
