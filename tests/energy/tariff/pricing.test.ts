import { describe, expect, it } from 'vitest';
import { climateFor } from '@/lib/energy/climate';
import { hoursByMonthAndBin } from '@/lib/energy/climate-model';
import { hourlyPrices } from '@/lib/energy/tariff/hourly-prices';
import { pricingOf } from '@/lib/energy/tariff/pricing';
import type { TieredTariff, TimeOfUseTariff } from '@/lib/visit/tariff';

const climate = climateFor({ kind: 'city', city: 'phoenix-az' });
const all = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];

describe('identity: a tariff joined with the weather', () => {
  it('flat: hours times price', () => {
    const pricing = pricingOf({ kind: 'flat', energyUsdPerKwh: 0.2 }, climate);
    const hours = hoursByMonthAndBin(climate);
    const usd = pricing.kind === 'byHour' ? pricing.usdPerKwByMonthBin : new Float64Array(0);
    expect(usd).toHaveLength(hours.length);
    expect(Math.max(...Array.from(usd, (u, i) => Math.abs(u - 0.2 * (hours[i] ?? 0))))).toBeLessThan(1e-9);
  });

  it('time of use: a steady kilowatt all year costs the sum over days of the hourly prices', () => {
    const tariff: TimeOfUseTariff = {
      kind: 'timeOfUse',
      periods: [{ months: [6, 7, 8], days: 'weekdays', fromHour: 14, toHour: 20, energyUsdPerKwh: 0.5 }],
      otherUsdPerKwh: 0.1,
    };
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    const expected = hourlyPrices(tariff).reduce((sum, p, i) => sum + p * (days[Math.floor(i / 24)] ?? 0), 0);
    const pricing = pricingOf(tariff, climate);
    const usd = pricing.kind === 'byHour' ? pricing.usdPerKwByMonthBin.reduce((a, b) => a + b, 0) : 0;
    expect(usd).toBeCloseTo(expected, 6);
    // by hand: 8,760 kWh at 0.10 and 92 days x 5/7 x 6 h at 0.40 more
    expect(usd).toBeCloseTo(876 + (92 * 5 * 6 * 0.4) / 7, 6);
  });

  it('an afternoon peak costs hot bins more than mild ones', () => {
    const peak = pricingOf(
      {
        kind: 'timeOfUse',
        periods: [{ months: all, days: 'all', fromHour: 14, toHour: 20, energyUsdPerKwh: 0.5 }],
        otherUsdPerKwh: 0.1,
      },
      climate,
    );
    const hours = hoursByMonthAndBin(climate);
    const bins = climate.binF.length;
    const july = (f: number) => {
      const i = 6 * bins + climate.binF.indexOf(f);
      return peak.kind === 'byHour' ? (peak.usdPerKwByMonthBin[i] ?? 0) / (hours[i] ?? 1) : 0;
    };
    expect(july(107.5)).toBeGreaterThan(2 * july(87.5));
  });

  it('tiered: priced on top of the rest of the house', () => {
    const tariff: TieredTariff = {
      kind: 'tiered',
      seasons: [{ months: all, tiers: [{ upToKwh: 700, energyUsdPerKwh: 0.1 }, { energyUsdPerKwh: 0.2 }] }],
    };
    const pricing = pricingOf(tariff, climate, 650);
    expect(pricing.kind === 'byAmount' ? pricing.monthUsd(0, 100) : 0).toBeCloseTo(50 * 0.1 + 50 * 0.2, 9);
    const assumed = pricingOf(tariff, climate);
    expect(assumed.kind === 'byAmount' ? assumed.monthUsd(0, 100) : 0).toBeCloseTo(10, 9);
  });
});
