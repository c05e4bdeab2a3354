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
 * @returns tariff [USD/kWh] with basis and source; a tariff with months or hours nobody priced counts as assumed. Fixed
 *   charges stay apart: no choice saves them.
 * Source: US EIA state energy data 2023, status read
 * Check: tests/energy/energy-price.test.ts
 */
export function energyPrice(visit: Visit): EnergyPrice {
  const average = averagePrice(visit);
  if (visit.tariff !== undefined) {
    const { tariff, notes, standsIn } = checkTariff(visit.tariff, average.usdPerKwh);
    if (!standsIn) return { tariff, notes, basis: 'bill', source: TARIFF_SOURCE };
    const onAverage = notes.some(({ code }) => code === 'tariffHourAverage');
    const rest = onAverage ? average.source : 'from its other prices';
    return { tariff, notes, basis: 'assumed', source: `${TARIFF_SOURCE}; where it names no price: ${rest}` };
  }
  const billed = average.setBy === 'visit' ? undefined : priceFromBills(visit.bills ?? []);
  if (billed !== undefined) {
    const { periods, ...price } = billed;
    return {
      tariff: { kind: 'flat', ...price },
      basis: 'bill',
      source: `Cost over kilowatt-hours of ${periods} bills${price.fixedUsdPerMonth === undefined ? ', fixed charges included' : ''}`,
      notes: [],
    };
  }
  const { usdPerKwh: energyUsdPerKwh, source } = average;
  return { tariff: { kind: 'flat', energyUsdPerKwh }, basis: 'assumed', source, notes: [] };
}

const TARIFF_SOURCE = 'Tariff given at the visit';

/** Price where neither tariff nor bills tell: one somebody set, the state's average, the general assumption. */
function averagePrice(visit: Visit): { usdPerKwh: number; source: string; setBy: string } {
  const { likely, source, setBy } = resolveAssumption(visit.assumptions, 'electricityUsdPerKwh');
  const averages: Readonly<Record<string, number>> = data.electricityUsdPerKwh;
  const { stateCode } = visit.site;
  const state = stateCode === undefined ? undefined : averages[stateCode];
  if (setBy !== 'keepworth' || state === undefined) return { usdPerKwh: likely, source, setBy };
  return { usdPerKwh: state, source: `Average of ${stateCode}, ${data.year}: ${data.source}`, setBy };
}
