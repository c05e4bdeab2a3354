import { describe, expect, it } from 'vitest';
import { priceFromBills } from '@/lib/energy/bills/price-from-bills';
import { energyPrice } from '@/lib/energy/energy-price';
import type { Bill } from '@/lib/visit/bills';
import { exampleVisit } from '../example-visit';

const bills = (usd: (kwh: number, i: number) => number, count = 12): Bill[] =>
  [1_400, 1_200, 900, 650, 700, 1_100, 1_500, 1_450, 1_000, 640, 800, 1_300]
    .slice(0, count)
    .map((kwh, i) => ({
      fromDate: `2025-${String(i + 1).padStart(2, '0')}-01`,
      toDate: i === 11 ? '2026-01-01' : `2025-${String(i + 2).padStart(2, '0')}-01`,
      kwh,
      costUsd: Math.round(usd(kwh, i) * 100) / 100,
    }));

describe('identity: the price of a kilowatt-hour from the bills', () => {
  it('slope and fixed charge of a known line come back, cents rounded', () => {
    const price = priceFromBills(bills((kwh) => 14 + 0.132 * kwh));
    expect(price?.energyUsdPerKwh).toBeCloseTo(0.132, 4);
    expect(price?.fixedUsdPerMonth).toBeCloseTo(14, 1);
    expect(price?.periods).toBe(12);
  });

  it('bills that follow no line give their mean price', () => {
    const price = priceFromBills(bills((kwh, i) => (i % 2 === 0 ? 0.09 : 0.21) * kwh));
    const kwh = bills(() => 0).reduce((a, b) => a + b.kwh, 0);
    const usd = bills((k, i) => (i % 2 === 0 ? 0.09 : 0.21) * k).reduce((a, b) => a + (b.costUsd ?? 0), 0);
    expect(price?.energyUsdPerKwh).toBeCloseTo(usd / kwh, 9);
    expect(price?.fixedUsdPerMonth).toBeUndefined();
  });

  it('too few bills with a cost, or an impossible price, say nothing', () => {
    expect(priceFromBills(bills((kwh) => 0.1 * kwh, 5))).toBeUndefined();
    expect(priceFromBills(bills(() => 4))).toBeUndefined();
    expect(priceFromBills([])).toBeUndefined();
  });

  it('comes after the tariff and a price set in the visit, before the average of the state', () => {
    const { tariff: _, ...rest } = exampleVisit({
      bills: bills((kwh) => 14 + 0.132 * kwh),
      site: { stateCode: 'GA' },
    });
    expect(energyPrice(rest)).toMatchObject({ basis: 'bill', tariff: { kind: 'flat' } });
    expect(energyPrice(rest).source).toContain('12 bills');
    expect(energyPrice({ ...rest, tariff: { kind: 'flat', energyUsdPerKwh: 0.2 } }).tariff).toMatchObject({
      energyUsdPerKwh: 0.2,
    });
  });
});
