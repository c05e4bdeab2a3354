import type { HealthyUnit } from '../diagnostics/healthy-unit/healthy-unit-model';
import { resolveAssumption } from '../visit/assumption';
import type { Visit } from '../visit/visit';
import type { Climate } from './climate-model';
import defaults from './data/load-defaults.json';
import type { EnergyAssumption, EnergyResult, PriceUsed } from './energy-result';
import type { HouseLoad } from './house-load';
import type { OtherUse } from './tariff/other-use';
import type { YearContext } from './year-context';

export type AssumptionInput = {
  readonly visit: Visit;
  readonly healthy: HealthyUnit;
  readonly climate: Climate;
  readonly model: Pick<YearContext, 'load' | 'ends'>;
  readonly price: PriceUsed;
  readonly co2: NonNullable<EnergyResult['co2']>;
  /** Only where the price depends on the amount. */
  readonly otherUse?: OtherUse | undefined;
};

/**
 * Everything the yearly figures rest on besides the readings, each with where it came from and, where it has one, its
 * range. Names are worded under `assumption.<name>` in wording/en.json.
 *
 * Check: tests/energy/yearly-energy.test.ts
 */
export function energyAssumptions(input: AssumptionInput): EnergyAssumption[] {
  const { visit, healthy, climate, model, price } = input;
  const { site } = visit;
  const { load } = model;
  const room = (own: number | undefined, name: string, f: number): EnergyAssumption => ({
    name,
    value: `${round(f, 1)} F`,
    basis: own === undefined ? 'assumed' : 'measured',
    source: own === undefined ? defaults.setpoints.source : 'Said by the customer',
  });
  return [
    { name: 'climate', value: climate.name, basis: climate.basis, source: climate.source },
    room(site.heatingSetpointF, 'heatingRoomF', load.heatingRoomF),
    room(site.coolingSetpointF, 'coolingRoomF', site.coolingSetpointF ?? defaults.setpoints.coolingF),
    balance(input, 'heatingBalanceF'),
    balance(input, 'coolingBalanceF'),
    slope(model, 'heatingLoadSlope', (l) => l.heatingBtuhPerF),
    slope(model, 'coolingLoadSlope', (l) => l.coolingBtuhPerF),
    {
      name: 'electricityPrice',
      value: `${round(price.averageUsdPerKwh, 4)} USD/kWh`,
      basis: price.basis,
      source: price.source,
    },
    ...otherUseRow(input.otherUse),
    ...price.fuels.map((fuel) => ({
      name: `fuelPrice.${fuel.fuel}`,
      value: `${round(fuel.usdPerMmbtu, 2)} USD per million Btu`,
      basis: fuel.basis,
      source: fuel.source,
    })),
    ...co2Rows(input.co2),
    ...healthy.facts.map((fact) => factRow(fact, visit)),
  ];
}

function otherUseRow(otherUse: OtherUse | undefined): EnergyAssumption[] {
  if (otherUse === undefined) return [];
  const { kwhPerMonth, basis, source } = otherUse;
  return [{ name: 'otherUse', value: `${round(kwhPerMonth, 0)} kWh a month`, basis, source }];
}

function balance(
  { visit, model: { load } }: AssumptionInput,
  name: 'heatingBalanceF' | 'coolingBalanceF',
): EnergyAssumption {
  const f = load[name];
  const assumed = resolveAssumption(visit.assumptions, name);
  if (load.basis === 'bill') return { name, value: `${round(f, 1)} F`, basis: 'bill', source: load.source };
  return {
    name,
    value: `${round(f, 1)} F`,
    low: `${round(f + assumed.low - assumed.likely, 1)} F`,
    high: `${round(f + assumed.high - assumed.likely, 1)} F`,
    basis: 'assumed',
    source: assumed.source,
  };
}

function slope(
  { load, ends }: AssumptionInput['model'],
  name: string,
  of: (load: HouseLoad) => number,
): EnergyAssumption {
  const words = (l: HouseLoad): string => `${round(of(l), 0)} Btu/h per F`;
  const range = ends === undefined ? {} : { low: words(ends.low.load), high: words(ends.high.load) };
  return { name, value: words(load), ...range, basis: load.basis, source: load.source };
}

function co2Rows(co2: AssumptionInput['co2']): EnergyAssumption[] {
  return [co2[co2.used], co2[co2.used === 'marginal' ? 'average' : 'marginal']].map((factor) => ({
    name: factor.kind === 'marginal' ? 'marginalCo2' : 'averageCo2',
    value: `${round(factor.lbPerKwh, 2)} lb/kWh (${factor.region})`,
    basis: 'assumed',
    source: factor.source,
  }));
}

/** The cyclic coefficients take their range from the assumption that moves them. */
function factRow(fact: HealthyUnit['facts'][number], visit: Visit): EnergyAssumption {
  const { name, value, unit, basis, source } = fact;
  const words = (v: number): string => `${round(v, 3)} ${unit}`.trim();
  if (typeof value !== 'number') return { name, value, basis, source };
  const ratio = resolveAssumption(visit.assumptions, 'cyclicRatio');
  const cyclic = name === 'coolingCyclicFrac' || name === 'heatingCyclicFrac';
  const range = cyclic ? { low: words(value * ratio.low), high: words(value * ratio.high) } : {};
  return { name, value: words(value), ...range, basis, source };
}

function round(value: number, digits: number): number {
  const scale = 10 ** digits;
  return Math.round(value * scale) / scale;
}
