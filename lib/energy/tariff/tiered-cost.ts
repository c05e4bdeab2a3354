import { invariant } from '../../math/invariant';
import type { TieredTariff } from '../../visit/tariff';

/**
 * Energy charge of one month under a tiered tariff; the fixed charge stays apart.
 *
 * @param tariff  checked with `checkTariff` before
 * @param month   1..12
 * @param kwh     all the house uses in the month, >= 0
 * @returns [USD]
 * @throws invariant if the month has no season
 * Check: tests/energy/tariff/tiered-cost.test.ts
 */
export function tieredMonthUsd(tariff: TieredTariff, month: number, kwh: number): number {
  const season = tariff.seasons.find((s) => s.months.includes(month));
  invariant(season !== undefined, `month ${month} has no season`);
  let below = 0;
  let usd = 0;
  for (const tier of season.tiers) {
    const end = Math.min(kwh, tier.upToKwh ?? Number.POSITIVE_INFINITY);
    if (end > below) {
      usd += (end - below) * tier.energyUsdPerKwh;
      below = end;
    }
  }
  return usd;
}

/**
 * What a load costs on top of the rest of the house: the bill with it less the bill without it.
 *
 * @param otherKwh  what the rest of the house uses in the month
 * @param kwh       the load's own use in the month
 * @returns [USD]; this is where a saving is priced at the marginal tier
 * Check: tests/energy/tariff/tiered-cost.test.ts
 */
export function tieredAddedUsd(tariff: TieredTariff, month: number, otherKwh: number, kwh: number): number {
  return tieredMonthUsd(tariff, month, otherKwh + kwh) - tieredMonthUsd(tariff, month, otherKwh);
}
