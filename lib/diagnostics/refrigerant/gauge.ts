import { invariant } from '../../math/invariant';
import atmosphere from './data/standard-atmosphere.json';

/**
 * Barometric pressure of the standard atmosphere at an altitude.
 *
 * @param altitudeFt  altitude above sea level [ft], -16,500..36,000
 * @returns pressure [psia]; weather moves the true value by about +/-0.3 psi
 * @throws invariant outside the formula's range (the visit schema allows less)
 * Source: data/standard-atmosphere.json
 * Check: tests/diagnostics/refrigerant/gauge.test.ts
 */
export function baroPsiaAtAltitude(altitudeFt: number): number {
  const { lowFt, highFt } = atmosphere.range;
  invariant(altitudeFt >= lowFt && altitudeFt <= highFt, `altitude ${altitudeFt} ft`);
  return atmosphere.seaLevelPsia * (1 - atmosphere.lapsePerFt * altitudeFt) ** atmosphere.exponent;
}

/**
 * Altitude at which the standard atmosphere has a pressure: inverse of `baroPsiaAtAltitude`.
 *
 * @param baroPsia  barometric pressure [psia], > 0
 * @returns altitude [ft]
 * @throws invariant outside the formula's range
 * Check: tests/diagnostics/refrigerant/gauge.test.ts
 */
export function altitudeFtAtBaro(baroPsia: number): number {
  invariant(baroPsia > 0, `barometric pressure ${baroPsia} psia`);
  const altitudeFt =
    (1 - (baroPsia / atmosphere.seaLevelPsia) ** (1 / atmosphere.exponent)) / atmosphere.lapsePerFt;
  const { lowFt, highFt } = atmosphere.range;
  invariant(altitudeFt >= lowFt - 1 && altitudeFt <= highFt + 1, `barometric pressure ${baroPsia} psia`);
  return altitudeFt;
}

/**
 * Absolute pressure from a gauge reading.
 *
 * @param psig      gauge reading [psi above the local atmosphere]
 * @param baroPsia  local barometric pressure [psia]
 * @returns absolute pressure [psia]
 * Check: tests/diagnostics/refrigerant/gauge.test.ts
 */
export function psigToPsia(psig: number, baroPsia: number): number {
  return psig + baroPsia;
}

/**
 * Gauge reading of an absolute pressure.
 *
 * @param psia      absolute pressure [psia]
 * @param baroPsia  local barometric pressure [psia]
 * @returns gauge reading [psig], negative in vacuum
 * Check: tests/diagnostics/refrigerant/gauge.test.ts
 */
export function psiaToPsig(psia: number, baroPsia: number): number {
  return psia - baroPsia;
}
