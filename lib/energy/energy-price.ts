import { resolveAssumption } from '../visit/assumption';
import type { Basis } from '../visit/basis';
import type { Tariff } from '../visit/tariff';
import type { Visit } from '../visit/visit';
import type { Saying } from '../visit/wording';
import { priceFromBills } from './bills/price-from-bills';
import data from './data/energy-prices.json';
import { checkTariff } from './tariff/check-tariff';

export type EnergyPrice = {
  /** What a kilowatt-hour costs when and how much it is used. */
  readonly tariff: Tariff;
  readonly basis: Basis;
  readonly source: string;
  /** What was doubtful in the tariff and what stands in for it. */
  readonly notes: readonly Saying[];
};

/**
 * Price of one more or one less kilowatt-hour.
 *
 * @param visit  its tariff wins; then a price somebody set as an assumption; then the bills; then the state's average; then the
 *   general assumption
 * @returns tariff [USD/kWh] with basis and source. Fixed charges stay apart: no choice saves them.
 * Source: US EIA state energy data 2023, status read
 * Check: tests/energy/energy-price.test.ts
 */
export function energyPrice(visit: Visit): EnergyPrice {
  if (visit.tariff !== undefined) {
    return { ...checkTariff(visit.tariff), basis: 'bill', source: 'Tariff given at the visit' };
  }
  const assumed = resolveAssumption(visit.assumptions, 'electricityUsdPerKwh');
  const billed = assumed.setBy === 'visit' ? undefined : priceFromBills(visit.bills ?? []);
  if (billed !== undefined) {
    const { periods, ...price } = billed;
    return {
      tariff: { kind: 'flat', ...price },
      basis: 'bill',
      source: `Cost over kilowatt-hours of ${periods} bills${price.fixedUsdPerMonth === undefined ? ', fixed charges included' : ''}`,
      notes: [],
    };
  }
  const averages: Readonly<Record<string, number>> = data.electricityUsdPerKwh;
  const state = visit.site.stateCode === undefined ? undefined : averages[visit.site.stateCode];
  if (assumed.setBy === 'keepworth' && state !== undefined) {
    return {
      tariff: flat(state),
      basis: 'assumed',
      source: `Average of ${visit.site.stateCode}, ${data.year}: ${data.source}`,
      notes: [],
    };
  }
  return { tariff: flat(assumed.likely), basis: 'assumed', source: assumed.source, notes: [] };
}

function flat(energyUsdPerKwh: number): Tariff {
  return { kind: 'flat', energyUsdPerKwh };
}
