import psychrolib from 'psychrolib';
import { baroPsiaAtAltitude } from './refrigerant/gauge';

/**
 * Local barometric pressure over sea-level pressure: what 1.08 and 4.5 are multiplied by at altitude.
 *
 * @param altitudeFt  [ft]
 * @returns ratio, 1 at sea level, 0.832 at 5,000 ft
 * Source: standard atmosphere, through refrigerant/gauge.ts
 * Check: tests/diagnostics/moist-air.test.ts
 */
export function airPressureRatio(altitudeFt: number): number {
  return baroPsiaAtAltitude(altitudeFt) / baroPsiaAtAltitude(0);
}

/**
 * Wet bulb from dry bulb and relative humidity.
 *
 * @param dryBulbF  [F]
 * @param humidityFrac  0..1; clamped to 0.001..1, since an instrument's uncertainty may lead beyond
 * @param psia  barometric pressure [psia]
 * @returns [F]
 * Source: psychrolib (ASHRAE Fundamentals ch. 1), status read
 * Check: tests/diagnostics/moist-air.test.ts
 */
export function wetBulbF(dryBulbF: number, humidityFrac: number, psia: number): number {
  return ip().GetTWetBulbFromRelHum(dryBulbF, Math.min(1, Math.max(0.001, humidityFrac)), psia);
}

/**
 * Enthalpy of moist air per pound of dry air.
 *
 * @param dryBulbF  [F]
 * @param wetF  wet bulb [F]; above the dry bulb the air is taken as saturated at the dry bulb
 * @param psia  barometric pressure [psia]
 * @returns [Btu/lb]
 * Source: psychrolib (ASHRAE Fundamentals ch. 1), status read
 * Check: tests/diagnostics/moist-air.test.ts
 */
export function airEnthalpyBtuLb(dryBulbF: number, wetF: number, psia: number): number {
  const library = ip();
  const humidity = library.GetHumRatioFromTWetBulb(dryBulbF, Math.min(wetF, dryBulbF), psia);
  return library.GetMoistAirEnthalpy(dryBulbF, humidity);
}

/** The library keeps its unit system in one place for the whole program: set before every use. */
function ip(): typeof psychrolib {
  psychrolib.SetUnitSystem(psychrolib.IP);
  return psychrolib;
}
