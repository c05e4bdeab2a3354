import type { Bill } from '../../visit/bills';
import rules from '../data/bill-rules.json';
import { checkBills } from './check-bills';

export type BilledPrice = {
  readonly energyUsdPerKwh: number;
  /** Charge that comes whatever is used, where the bills let it be told apart [USD]. */
  readonly fixedUsdPerMonth?: number;
  /** Bills behind it. */
  readonly periods: number;
};

/**
 * Price of electricity from the cost of the bills: the slope of cost over kWh, which leaves fixed charges out; where
 * the bills do not show a believable line, the mean price.
 *
 * @returns undefined if fewer bills than `priceLine.leastBills` carry a cost
 * Source: least squares; limits in data/bill-rules.json `price` and `priceLine`, status assumption
 * Check: tests/energy/bills/price-from-bills.test.ts
 */
export function priceFromBills(bills: readonly Bill[]): BilledPrice | undefined {
  const paid = checkBills(bills).usable.flatMap(({ kwh, costUsd }) =>
    costUsd === undefined || kwh <= 0 ? [] : [{ kwh, usd: costUsd }],
  );
  const n = paid.length;
  const { leastBills, leastR2 } = rules.priceLine;
  const { leastUsdPerKwh, mostUsdPerKwh } = rules.price;
  if (n < leastBills) return undefined;
  const sum = (value: (bill: { kwh: number; usd: number }) => number): number =>
    paid.reduce((total, bill) => total + value(bill), 0);
  const [meanKwh, meanUsd] = [sum((b) => b.kwh) / n, sum((b) => b.usd) / n];
  const believable = (price: number): boolean => price >= leastUsdPerKwh && price <= mostUsdPerKwh;
  const kk = sum((b) => (b.kwh - meanKwh) ** 2);
  const ku = sum((b) => (b.kwh - meanKwh) * (b.usd - meanUsd));
  const uu = sum((b) => (b.usd - meanUsd) ** 2);
  const slope = kk > 0 ? ku / kk : 0;
  const fixed = meanUsd - slope * meanKwh;
  const r2 = kk > 0 && uu > 0 ? ku ** 2 / (kk * uu) : 0;
  if (believable(slope) && fixed >= 0 && r2 >= leastR2) {
    return { energyUsdPerKwh: slope, fixedUsdPerMonth: fixed, periods: n };
  }
  const mean = meanUsd / meanKwh;
  return believable(mean) ? { energyUsdPerKwh: mean, periods: n } : undefined;
}
