import type { EnergyPrice } from './energy-price';
import type { EnergyYear, PriceUsed } from './energy-result';
import type { Pricing } from './tariff/pricing';

/** Share of each month's use taken off to see what the last kilowatt-hours cost. */
const LAST_SHARE = 0.01;

/**
 * What a kilowatt-hour costs on average and at the margin, for the unit as found.
 *
 * @param price    tariff with basis and source
 * @param pricing  the same tariff made ready for the climate
 * @param asFound  likely year of the unit as found; left out or without use = 0 USD
 * @param fuels    prices of fuels that choices burn
 * By hour both are the mean over the hours the unit runs; in tiers the margin is the dearest tier it reaches.
 * Check: tests/energy/price-used.test.ts
 */
export function priceUsed(
  price: EnergyPrice,
  pricing: Pricing,
  asFound: EnergyYear | undefined,
  fuels: PriceUsed['fuels'],
): PriceUsed {
  const { tariff, basis, source } = price;
  const average = averageUsdPerKwh(price, asFound);
  return {
    kind: tariff.kind,
    basis,
    source,
    averageUsdPerKwh: average,
    marginalUsdPerKwh: pricing.kind === 'byHour' ? average : lastUsdPerKwh(pricing, asFound, average),
    ...(tariff.fixedUsdPerMonth === undefined ? {} : { fixedUsdPerMonth: tariff.fixedUsdPerMonth }),
    fuels,
  };
}

function averageUsdPerKwh({ tariff }: EnergyPrice, asFound: EnergyYear | undefined): number {
  if (tariff.kind === 'flat') return tariff.energyUsdPerKwh;
  if (asFound === undefined || asFound.totalKwh === 0) return 0;
  return (asFound.costUsd - (asFound.fuelCostUsd ?? 0)) / asFound.totalKwh;
}

function lastUsdPerKwh(
  pricing: Extract<Pricing, { kind: 'byAmount' }>,
  asFound: EnergyYear | undefined,
  fallback: number,
): number {
  let usd = 0;
  let kwh = 0;
  asFound?.byMonth.forEach((m, month) => {
    const used = m.heatingKwh + m.stripKwh + m.coolingKwh + m.blowerKwh + m.standbyKwh;
    usd += pricing.monthUsd(month, used) - pricing.monthUsd(month, (1 - LAST_SHARE) * used);
    kwh += LAST_SHARE * used;
  });
  return kwh > 0 ? usd / kwh : fallback;
}
