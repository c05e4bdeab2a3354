import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import { climateFor } from '@/lib/energy/climate';
import { hoursByMonthAndBin } from '@/lib/energy/climate-model';
import type { EnergyYear } from '@/lib/energy/energy-result';
import { coolingLoadBtuh, heatingLoadBtuh, houseLoad } from '@/lib/energy/house-load';
import { type LossRatios, noLoss } from '@/lib/energy/loss-ratios';
import { pricingOf } from '@/lib/energy/tariff/pricing';
import { unitBins } from '@/lib/energy/unit-bins';
import { unitTotals, unitYear } from '@/lib/energy/unit-year';
import type { YearContext } from '@/lib/energy/year-context';
import { exampleVisit } from './example-visit';

const visit = exampleVisit();
const healthy = healthyUnit({ unit: { ...visit.unit, electricHeatKw: 30 }, visitDate: visit.visitDate });
const climate = climateFor({ kind: 'city', city: 'st-louis-mo' });
const load = houseLoad(visit, healthy, climate);
const bins = unitBins(healthy, climate.binF, load);
const flat = (usdPerKwh: number, at = climate) => pricingOf({ kind: 'flat', energyUsdPerKwh: usdPerKwh }, at);
const context: YearContext = {
  load,
  heats: true,
  monthBinHours: hoursByMonthAndBin(climate),
  pricing: flat(0.15),
  co2LbPerKwh: 0.6,
};
const year = (ratios: LossRatios = noLoss, more: Partial<YearContext> = {}) =>
  unitYear(bins, ratios, { ...context, ...more });

const kwhParts = (y: EnergyYear) =>
  y.heatingCompressorKwh + y.stripHeatKwh + y.coolingKwh + y.blowerKwh + y.standbyKwh;

/** All hours as one bin of one temperature. */
function oneBin(outdoorF: number, hours: number, ratios: LossRatios = noLoss) {
  const monthBinHours = new Float64Array(12);
  monthBinHours[0] = hours;
  return unitYear(unitBins(healthy, [outdoorF], load), ratios, { ...context, monthBinHours });
}

describe('identity: the year adds up', () => {
  it('parts make the total, months make the year, price and factor make cost and CO2', () => {
    const y = year();
    expect(kwhParts(y)).toBeCloseTo(y.totalKwh, 6);
    expect(y.byMonth).toHaveLength(12);
    const months = y.byMonth.reduce(
      (a, m) => a + m.heatingKwh + m.stripKwh + m.coolingKwh + m.blowerKwh + m.standbyKwh,
      0,
    );
    expect(months).toBeCloseTo(y.totalKwh, 6);
    expect(y.byMonth.reduce((a, m) => a + m.costUsd, 0)).toBeCloseTo(y.costUsd, 6);
    expect(y.costUsd).toBeCloseTo(y.totalKwh * 0.15, 9);
    expect(y.co2Lb).toBeCloseTo(y.totalKwh * 0.6, 9);
  });

  it('the year without its months has the same totals, by hour and in tiers', () => {
    const tiered = pricingOf(
      {
        kind: 'tiered',
        seasons: [
          {
            months: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
            tiers: [{ upToKwh: 900, energyUsdPerKwh: 0.1 }, { energyUsdPerKwh: 0.2 }],
          },
        ],
      },
      climate,
    );
    for (const pricing of [context.pricing, tiered]) {
      const { byMonth: _, ...whole } = year(noLoss, { pricing });
      const totals = unitTotals(bins, noLoss, { ...context, pricing });
      expect(Object.keys(totals).sort()).toEqual(Object.keys(whole).sort());
      for (const [key, value] of Object.entries(totals)) {
        expect(value / (whole[key as keyof typeof whole] ?? Number.NaN) || 1).toBeCloseTo(1, 9);
      }
    }
  });

  it('energy closes in each bin: asked for = delivered + unmet', () => {
    const lossy = { coolingCapacity: 0.6, coolingPower: 1.1, heatingCapacity: 0.5, heatingPower: 1.1 };
    expect.assertions(climate.binF.length);
    for (const outdoorF of climate.binF) {
      const y = oneBin(outdoorF, 100, lossy);
      const asked = 100 * (heatingLoadBtuh(load, outdoorF) + coolingLoadBtuh(load, outdoorF));
      expect(Math.abs(y.heatDeliveredBtu + y.coolingDeliveredBtu + y.unmetBtu - asked)).toBeLessThan(0.01);
    }
  });

  it('strip heat is 3.412 Btu for each watt-hour: below the cut-out strips and blower carry all', () => {
    const y = oneBin(-5, 1_000);
    expect(y.heatingCompressorKwh).toBe(0);
    expect(y.heatDeliveredBtu).toBeCloseTo((y.stripHeatKwh + y.blowerKwh) * 3_412.142, 0);
    expect(y.unmetHours).toBe(0);
  });

  it('is the sum of its bins: 8,760 single hours give the same year', () => {
    const bySingleBins = climate.binF.reduce((sum, outdoorF, bin) => {
      let hours = 0;
      for (let month = 0; month < 12; month += 1) {
        hours += context.monthBinHours[month * climate.binF.length + bin] ?? 0;
      }
      return sum + oneBin(outdoorF, hours).totalKwh;
    }, 0);
    expect(bySingleBins).toBeCloseTo(year().totalKwh, 6);
  });

  it('a seasonal cooling rating comes back: hours in the procedure bins with the procedure line give SEER', () => {
    // SEER of a single-speed unit is PLF(0.5) x EER at 82 F; one bin at half load must give just that
    const unit = healthyUnit({
      unit: {
        kind: 'heatPump',
        nominalTons: 3,
        ratings: { seerBtuPerWh: 13, hspfBtuPerWh: 8 },
        blower: 'psc',
      },
      visitDate: '2026-01-01',
    });
    const rated = { ...unit, blowerW: 0.365 * 1_200, crankcaseW: 0 };
    const at82 = unitBins(rated, [82], { ...load, coolingRoomWetBulbF: 67 });
    const net = (at82.cooling[0]?.[0]?.grossBtuh ?? 0) - 3.412142 * rated.blowerW;
    const half = { ...load, coolingBalanceF: 72, coolingBtuhPerF: net / 2 / 10 };
    const monthBinHours = new Float64Array(12);
    monthBinHours[6] = 500;
    const y = unitYear(at82, noLoss, { ...context, load: half, monthBinHours, heats: false });
    // running share is 0.5 / PLF: delivered over energy is EER x PLF(0.5)
    expect(y.coolingDeliveredBtu / 1000 / y.totalKwh).toBeCloseTo(13, 6);
  });
});

const ratio = fc.double({ min: 0.3, max: 1.1, noNaN: true });
const power = fc.double({ min: 0.7, max: 1.5, noNaN: true });
const ratios = fc.record({
  coolingCapacity: ratio,
  coolingPower: power,
  heatingCapacity: ratio,
  heatingPower: power,
});

describe('property: the year', () => {
  it('less capacity or more power never lowers the cost', () => {
    const key = fc.constantFrom('coolingCapacity' as const, 'heatingCapacity' as const);
    const powerKey = fc.constantFrom('coolingPower' as const, 'heatingPower' as const);
    fc.assert(
      fc.property(ratios, key, powerKey, fc.double({ min: 0.5, max: 1, noNaN: true }), (r, k, p, f) => {
        const base = year(r).costUsd;
        expect(year({ ...r, [k]: r[k] * f }).costUsd).toBeGreaterThanOrEqual(base - 1e-9);
        expect(year({ ...r, [p]: r[p] / f }).costUsd).toBeGreaterThanOrEqual(base - 1e-9);
      }),
    );
  });

  it('doubling the price doubles the cost and leaves the energy', () => {
    fc.assert(
      fc.property(ratios, (r) => {
        const once = year(r);
        const twice = year(r, { pricing: flat(0.3) });
        expect(twice.costUsd).toBeCloseTo(2 * once.costUsd, 9);
        expect(twice.totalKwh).toBe(once.totalKwh);
      }),
    );
  });

  it('a colder year never lowers the heating cost while strips suffice', () => {
    const heatingOnly: YearContext = { ...context, load: { ...load, coolingBtuhPerF: 0 } };
    fc.assert(
      fc.property(ratios, fc.double({ min: 0, max: 12, noNaN: true }), (r, colder) => {
        const unit = { ...healthy, crankcaseW: 0 };
        const at = (shift: number) =>
          unitYear(
            unitBins(
              unit,
              climate.binF.map((f) => f - shift),
              load,
            ),
            r,
            heatingOnly,
          );
        expect(at(colder).costUsd).toBeGreaterThanOrEqual(at(0).costUsd - 1e-6);
        expect(at(colder).unmetHours).toBe(0);
      }),
    );
  });

  it('without heating duty there is no heat, no strips', () => {
    const y = year(noLoss, { heats: false });
    expect(y.heatingCompressorKwh + y.stripHeatKwh + y.heatDeliveredBtu).toBe(0);
    expect(y.coolingKwh).toBeGreaterThan(0);
  });

  it('unmet hours count only hours with more than one percent open', () => {
    const weak = { ...noLoss, coolingCapacity: 0.4 };
    const y = oneBin(97, 10, weak);
    expect(y.unmetHours).toBe(10);
    expect(oneBin(75, 10).unmetHours).toBe(0);
  });

  it('a loss ratio of zero is our own mistake', () => {
    expect(() => year({ ...noLoss, heatingCapacity: 0 })).toThrow('loss ratio 0');
  });
});
