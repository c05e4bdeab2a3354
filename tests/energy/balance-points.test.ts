import { describe, expect, it } from 'vitest';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import { steadyState } from '@/lib/diagnostics/healthy-unit/steady-state';
import { balancePointF, balancePoints } from '@/lib/energy/balance-points';
import { climateFor } from '@/lib/energy/climate';
import { hoursByMonthAndBin } from '@/lib/energy/climate-model';
import { heatingLoadBtuh, houseLoad } from '@/lib/energy/house-load';
import { noLoss } from '@/lib/energy/loss-ratios';
import { pricingOf } from '@/lib/energy/tariff/pricing';
import { unitBins } from '@/lib/energy/unit-bins';
import { unitYear } from '@/lib/energy/unit-year';
import type { YearContext } from '@/lib/energy/year-context';
import { exampleVisit } from './example-visit';

const visit = exampleVisit();
const healthy = healthyUnit({ unit: visit.unit, visitDate: visit.visitDate });
const climate = climateFor({ kind: 'city', city: 'st-louis-mo' });
const load = houseLoad(visit, healthy, climate);
const bins = unitBins(healthy, climate.binF, load);
const context: YearContext = {
  load,
  heats: true,
  monthBinHours: hoursByMonthAndBin(climate),
  pricing: pricingOf({ kind: 'flat', energyUsdPerKwh: 0.15 }, climate),
  co2LbPerKwh: 0.6,
};

describe('identity: balance point', () => {
  it('capacity meets the load there, and it lies where the chart changes side', () => {
    const at = balancePointF(bins, noLoss, context) ?? Number.NaN;
    const capacity = steadyState(healthy, { mode: 'heating', outdoorF: at, frost: 'smooth' });
    expect(capacity.netCapacityBtuh).toBeCloseTo(heatingLoadBtuh(load, at), 0);
    const points = balancePoints(bins, noLoss, context);
    const colder = points.filter((p) => p.outdoorF < at);
    const milder = points.filter((p) => p.outdoorF >= at);
    expect(colder.length).toBeGreaterThan(2);
    expect(milder.length).toBeGreaterThan(3);
    expect(colder.filter((p) => p.stripBtuh <= 0)).toEqual([]);
    expect(milder.filter((p) => p.stripBtuh !== 0 || p.capacityBtuh < p.loadBtuh)).toEqual([]);
  });

  it('strip heat of the chart times its hours is the strip heat of the year', () => {
    // Atlanta never falls to the cut-out, below which blower heat would count as well
    const atlanta = climateFor({ kind: 'city', city: 'atlanta-ga' });
    const milder = unitBins(healthy, atlanta.binF, load);
    const mild: YearContext = { ...context, monthBinHours: hoursByMonthAndBin(atlanta) };
    const points = balancePoints(milder, noLoss, mild);
    const kwh = points.reduce((sum, p) => sum + (p.stripBtuh * p.hours) / 3_412.142, 0);
    expect(points[0]?.outdoorF).toBeGreaterThan(healthy.cutOutF);
    expect(kwh).toBeGreaterThan(50);
    expect(kwh).toBeCloseTo(unitYear(milder, noLoss, mild).stripHeatKwh, 6);
  });
});

describe('property: balance point', () => {
  it('rises as capacity falls', () => {
    const at = [1, 0.9, 0.8, 0.7, 0.6].map((heatingCapacity) =>
      balancePointF(bins, { ...noLoss, heatingCapacity }, context),
    );
    expect.assertions(5);
    expect(at[0]).toBeGreaterThan(healthy.cutOutF);
    at.slice(1).forEach((f, i) => {
      expect(f).toBeGreaterThan(at[i] ?? Number.POSITIVE_INFINITY);
    });
  });

  it('is the cut-out for a unit that carries everything down to it', () => {
    const easy: YearContext = { ...context, load: { ...load, heatingBtuhPerF: 100 } };
    expect(balancePointF(bins, noLoss, easy)).toBe(healthy.cutOutF);
  });

  it('does not exist without heating duty', () => {
    expect(balancePointF(bins, noLoss, { ...context, heats: false })).toBeUndefined();
    expect(balancePoints(bins, noLoss, { ...context, heats: false })).toEqual([]);
  });
});
