import type { Basis } from '../visit/basis';
import type { FurnaceBehind } from '../visit/choice';
import type { Fuel } from '../visit/tariff';
import type { Visit } from '../visit/visit';
import type { Climate } from './climate-model';
import prices from './data/energy-prices.json';
import defaults from './data/load-defaults.json';
import { type Furnace, fuelPrice } from './furnace';
import { type HouseLoad, heatingLoadBtuh } from './house-load';

export type FuelPriceUsed = {
  readonly fuel: Fuel;
  readonly usdPerMmbtu: number;
  readonly basis: Basis;
  readonly source: string;
};

/**
 * The furnace of a dual-fuel choice made ready for the year.
 *
 * @param furnace  as entered
 * @param visit    prices of fuels and the state
 * @param load     of the house
 * @param climate  its design temperature sizes a furnace whose output was not given
 * Check: tests/energy/furnace.test.ts
 */
export function furnaceBehind(
  furnace: FurnaceBehind,
  visit: Visit,
  load: HouseLoad,
  climate: Climate,
): Furnace {
  const designBtuh = heatingLoadBtuh(load, climate.heatingDesignF);
  return {
    fuel: furnace.fuel,
    efficiencyFrac: furnace.afueFrac,
    outputBtuh: furnace.outputBtuh ?? defaults.furnaceOversizeRatio.value * designBtuh,
    switchOverF: furnace.switchOverF,
    usdPerMmbtu: fuelPriceUsed(furnace.fuel, visit).usdPerMmbtu,
  };
}

/**
 * Price of a million Btu of a fuel: the visit's own, else the state's average.
 *
 * Source: heat contents in data/energy-prices.json, US EIA, status memory
 * Check: tests/energy/furnace.test.ts
 */
export function fuelPriceUsed(fuel: Fuel, visit: Visit): FuelPriceUsed {
  const own = visit.fuelPrices;
  const { therm, propaneGallon, oilGallon } = prices.mmbtuPer;
  const given = {
    naturalGas: perMmbtu(own?.gasUsdPerTherm, therm),
    propane: perMmbtu(own?.propaneUsdPerGallon, propaneGallon),
    oil: perMmbtu(own?.oilUsdPerGallon, oilGallon),
  }[fuel];
  if (given !== undefined) {
    return { fuel, usdPerMmbtu: given, basis: 'bill', source: 'Price given at the visit' };
  }
  return { fuel, ...fuelPrice(fuel, visit.site.stateCode) };
}

function perMmbtu(usd: number | undefined, mmbtu: number): number | undefined {
  return usd === undefined ? undefined : usd / mmbtu;
}
