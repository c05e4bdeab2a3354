import procedure from '../diagnostics/healthy-unit/data/test-procedure.json';
import type { Basis } from '../visit/basis';
import type { Fuel } from '../visit/tariff';
import type { HeatingHour } from './bin-hour';
import emissions from './data/emission-factors.json';
import prices from './data/energy-prices.json';

/** A furnace behind a heat pump: it heats alone at and below the switch-over temperature, and helps above it. */
export type Furnace = {
  readonly fuel: Fuel;
  /** Seasonal efficiency (AFUE), 0.5..1. */
  readonly efficiencyFrac: number;
  /** Heat it can give, blower heat not counted [Btu/h]. */
  readonly outputBtuh: number;
  readonly switchOverF: number;
  /** Price of a million Btu of fuel [USD]. */
  readonly usdPerMmbtu: number;
};

export type FurnaceHour = HeatingHour & {
  readonly furnaceBtuh: number;
  /** Fuel burnt [Btu/h]. */
  readonly fuelBtuh: number;
};

/**
 * An hour of heating with a furnace in place of strips: it carries what the compressor leaves, up to its size.
 *
 * @param hour    the same hour without strips; what it leaves unmet is the furnace's
 * @param furnace the furnace
 * @param blowerW its blower; alone it adds its heat, beside the compressor it runs already [W]
 * @returns the hour with fuel [Btu/h]; heat still unmet is what exceeds the furnace
 * Check: tests/energy/furnace.test.ts
 */
export function withFurnace(hour: HeatingHour, furnace: Furnace, blowerW: number): FurnaceHour {
  const alone = hour.runningFrac === 0;
  const blowerBtuh = alone ? procedure.btuhPerW.value * blowerW : 0;
  const fullBtuh = furnace.outputBtuh + blowerBtuh;
  const share = fullBtuh > 0 ? Math.min(1, hour.unmetBtuh / fullBtuh) : 0;
  const furnaceBtuh = share === 1 ? fullBtuh : hour.unmetBtuh * (share > 0 ? 1 : 0);
  return {
    ...hour,
    blowerW: hour.blowerW + (alone ? share * blowerW : 0),
    furnaceBtuh,
    fuelBtuh: (share * furnace.outputBtuh) / furnace.efficiencyFrac,
    unmetBtuh: hour.unmetBtuh - furnaceBtuh,
  };
}

/**
 * Average price of a million Btu of fuel in a state.
 *
 * @param fuel  gas is priced per therm in the table, a tenth of a million Btu
 * @param stateCode two-letter state; unknown = United States
 * Source: US EIA state energy data 2023, status read
 * Check: tests/energy/furnace.test.ts
 */
export function fuelPrice(
  fuel: Fuel,
  stateCode: string | undefined,
): { readonly usdPerMmbtu: number; readonly basis: Basis; readonly source: string } {
  const gas: Readonly<Record<string, number>> = prices.gasUsdPerTherm;
  const propane: Readonly<Record<string, number>> = prices.propaneUsdPerMmbtu;
  const oil: Readonly<Record<string, number>> = prices.oilUsdPerMmbtu;
  const table = { naturalGas: gas, propane, oil }[fuel];
  const state = stateCode !== undefined && table[stateCode] !== undefined ? stateCode : 'US';
  const value = table[state] ?? 0;
  return {
    usdPerMmbtu: fuel === 'naturalGas' ? value * 10 : value,
    basis: 'assumed',
    source: `Average of ${state}, ${prices.year}: ${prices.source}`,
  };
}

/** Carbon dioxide of burning a fuel [lb per million Btu]. Source: data/emission-factors.json, status read. */
export function fuelCo2LbPerMmbtu(fuel: Fuel): number {
  return emissions.fuelLbPerMmbtu[fuel];
}
