import type { HealthyUnit } from '../diagnostics/healthy-unit/healthy-unit-model';
import { resolveAssumption } from '../visit/assumption';
import type { Visit } from '../visit/visit';
import type { Climate } from './climate-model';
import defaults from './data/load-defaults.json';
import type { EmissionFactor } from './emission-factor';
import type { EnergyPrice } from './energy-price';
import type { EnergyAssumption } from './energy-result';
import type { HouseLoad } from './house-load';

export type AssumptionInput = {
  readonly visit: Visit;
  readonly healthy: HealthyUnit;
  readonly climate: Climate;
  readonly load: HouseLoad;
  readonly price: EnergyPrice;
  readonly priceUsdPerKwh: number;
  readonly emission: EmissionFactor;
};

/**
 * Everything the yearly figures rest on besides the readings, each with where it came from. Names are worded under
 * `assumption.<name>` in wording/en.json.
 *
 * Check: tests/energy/yearly-energy.test.ts
 */
export function energyAssumptions(input: AssumptionInput): EnergyAssumption[] {
  const { visit, healthy, climate, load, price, priceUsdPerKwh, emission } = input;
  const { site, assumptions } = visit;
  const room = (own: number | undefined, name: string, f: number): EnergyAssumption => ({
    name,
    value: `${f} F`,
    basis: own === undefined ? 'assumed' : 'measured',
    source: own === undefined ? defaults.setpoints.source : 'Said by the customer',
  });
  const balance = (key: 'heatingBalanceF' | 'coolingBalanceF', f: number): EnergyAssumption => ({
    name: key,
    value: `${round(f, 1)} F`,
    basis: 'assumed',
    source: resolveAssumption(assumptions, key).source,
  });
  return [
    { name: 'climate', value: climate.name, basis: climate.basis, source: climate.source },
    room(site.heatingSetpointF, 'heatingRoomF', load.heatingRoomF),
    room(site.coolingSetpointF, 'coolingRoomF', site.coolingSetpointF ?? defaults.setpoints.coolingF),
    balance('heatingBalanceF', load.heatingBalanceF),
    balance('coolingBalanceF', load.coolingBalanceF),
    {
      name: 'heatingLoadSlope',
      value: `${round(load.heatingBtuhPerF, 0)} Btu/h per F`,
      basis: load.basis,
      source: load.source,
    },
    {
      name: 'coolingLoadSlope',
      value: `${round(load.coolingBtuhPerF, 0)} Btu/h per F`,
      basis: load.basis,
      source: load.source,
    },
    {
      name: 'electricityPrice',
      value: `${round(priceUsdPerKwh, 4)} USD/kWh`,
      basis: price.basis,
      source: price.source,
    },
    {
      name: emission.kind === 'marginal' ? 'marginalCo2' : 'averageCo2',
      value: `${round(emission.lbPerKwh, 2)} lb/kWh (${emission.region})`,
      basis: 'assumed',
      source: emission.source,
    },
    ...healthy.facts.map((fact) => ({
      name: fact.name,
      value: typeof fact.value === 'number' ? `${round(fact.value, 3)} ${fact.unit}`.trim() : fact.value,
      basis: fact.basis,
      source: fact.source,
    })),
  ];
}

function round(value: number, digits: number): number {
  const scale = 10 ** digits;
  return Math.round(value * scale) / scale;
}
