import psychrolib from 'psychrolib';

psychrolib.SetUnitSystem(psychrolib.IP);

/** Air at a place: dry bulb, humidity ratio, and what follows from them at the local barometer. */
export type Air = {
  readonly airF: number;
  readonly humidityRatio: number;
  readonly psia: number;
  readonly lbPerFt3: number;
  readonly btuPerLbF: number;
};

/** Specific heat of dry air and of water vapour [Btu/(lb F)], heat of vaporisation near a coil [Btu/lb]; ASHRAE Fundamentals, status memory. */
const DRY_AIR_CP = 0.24;
const VAPOUR_CP = 0.444;
const CONDENSING_BTU_LB = 1061;
const LB_MIXTURE_FLOOR = 1e-5;

/** Standard-atmosphere pressure at an altitude [psia]. */
export function barometerPsia(altitudeFt: number): number {
  return psychrolib.GetStandardAtmPressure(altitudeFt);
}

/** Air from dry and wet bulb; above the dry bulb the wet bulb counts as saturation. */
export function airFromWetBulb(airF: number, wetBulbF: number, psia: number): Air {
  return airOf(airF, psychrolib.GetHumRatioFromTWetBulb(airF, Math.min(wetBulbF, airF), psia), psia);
}

/** Air from dry bulb and relative humidity (0-1). */
export function airFromHumidity(airF: number, humidityFrac: number, psia: number): Air {
  return airOf(airF, psychrolib.GetHumRatioFromRelHum(airF, humidityFrac, psia), psia);
}

export function airOf(airF: number, humidityRatio: number, psia: number): Air {
  const ratio = Math.max(LB_MIXTURE_FLOOR, humidityRatio);
  return {
    airF,
    humidityRatio: ratio,
    psia,
    lbPerFt3: 1 / psychrolib.GetMoistAirVolume(airF, ratio, psia),
    btuPerLbF: DRY_AIR_CP + VAPOUR_CP * ratio,
  };
}

export function saturatedHumidityRatio(airF: number, psia: number): number {
  return psychrolib.GetHumRatioFromRelHum(airF, 1, psia);
}

export function wetBulbF(air: Air): number {
  return psychrolib.GetTWetBulbFromHumRatio(air.airF, air.humidityRatio, air.psia);
}

/** Heat set free per pound of water taken out of the air [Btu/lb]. */
export const latentBtuPerLb = CONDENSING_BTU_LB;
