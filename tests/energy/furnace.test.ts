import { describe, expect, it } from 'vitest';
import { heatingHour } from '@/lib/energy/bin-hour';
import { climateFor } from '@/lib/energy/climate';
import { type Furnace, fuelPrice, withFurnace } from '@/lib/energy/furnace';
import { fuelPriceUsed } from '@/lib/energy/furnace-behind';
import type { Choice } from '@/lib/visit/choice';
import { energyOf, exampleLoss, exampleVisit, scenarioNamed } from './example-visit';

const furnace: Furnace = {
  fuel: 'naturalGas',
  efficiencyFrac: 0.8,
  outputBtuh: 60_000,
  switchOverF: 35,
  usdPerMmbtu: 15,
};
const idle = { stripW: 0, stripBlowerW: 500, cyclicFrac: 0.1 };

describe('outside: hours with a furnace worked by hand', () => {
  it('alone: blower heat helps, fuel is output over efficiency', () => {
    const full = 60_000 + 500 * 3.412142;
    const hour = withFurnace(heatingHour({ ...idle, loadBtuh: full / 2, steps: [] }), furnace, 500);
    expect(hour.fuelBtuh).toBeCloseTo(30_000 / 0.8, 9);
    expect(hour.blowerW).toBeCloseTo(250, 9);
    expect(hour.furnaceBtuh).toBeCloseTo(full / 2, 9);
    expect(hour.unmetBtuh).toBe(0);
  });

  it('beside the compressor: only what is left, the blower runs already', () => {
    const step = { grossBtuh: 20_000, outdoorW: 2_000, blowerW: 0 };
    const hour = withFurnace(heatingHour({ ...idle, loadBtuh: 26_000, steps: [step] }), furnace, 500);
    expect(hour.fuelBtuh).toBeCloseTo(6_000 / 0.8, 9);
    expect(hour.blowerW).toBe(0);
  });

  it('more than the furnace can give stays unmet', () => {
    const hour = withFurnace(heatingHour({ ...idle, loadBtuh: 70_000, steps: [] }), furnace, 0);
    expect(hour.unmetBtuh).toBeCloseTo(10_000, 9);
  });

  it('gas at 1.477 USD a therm is 14.77 USD a million Btu [US EIA 2023, read]', () => {
    expect(fuelPrice('naturalGas', undefined).usdPerMmbtu).toBeCloseTo(14.77, 9);
    expect(fuelPrice('propane', 'TN').usdPerMmbtu).toBeCloseTo(27.04, 9);
    expect(fuelPrice('oil', 'ZZ').source).toContain('US');
  });
});

describe('wiring: prices and size of a furnace', () => {
  it('own prices win, in the units fuels are sold in [propane 0.0915, oil 0.1375 million Btu a gallon, EIA, memory]', () => {
    const visit = exampleVisit({
      fuelPrices: { gasUsdPerTherm: 1.2, propaneUsdPerGallon: 2.745, oilUsdPerGallon: 4.125 },
    });
    expect(fuelPriceUsed('naturalGas', visit)).toMatchObject({
      usdPerMmbtu: expect.closeTo(12, 9),
      basis: 'bill',
    });
    expect(fuelPriceUsed('propane', visit).usdPerMmbtu).toBeCloseTo(30, 9);
    expect(fuelPriceUsed('oil', visit).usdPerMmbtu).toBeCloseTo(30, 9);
    expect(fuelPriceUsed('naturalGas', exampleVisit())).toMatchObject({ basis: 'assumed' });
    expect(fuelPriceUsed('naturalGas', exampleVisit()).source).toContain('2023');
  });

  it('a furnace without a size is large enough: nothing is left unmet in the coldest bin of Duluth', () => {
    const climate = climateFor({ kind: 'city', city: 'duluth-mn' });
    const visit = exampleVisit({
      choices: [
        {
          kind: 'replace',
          id: 'dual',
          name: 'Dual fuel',
          priceLines: [],
          unitKind: 'heatPump',
          tier: 'singleSpeed',
          nominalTons: 3,
          ratings: {},
          furnace: { fuel: 'naturalGas', afueFrac: 0.95, switchOverF: 30 },
        },
      ],
    });
    const dual = scenarioNamed(energyOf(visit, exampleLoss, climate), 'dual');
    expect(dual.likely.unmetHeatingHours).toBe(0);
    expect(dual.balance.some((p) => (p.furnaceBtuh ?? 0) > 40_000)).toBe(true);
  });
});

describe('identity: a year with two fuels', () => {
  const replace: Choice = {
    kind: 'replace',
    id: 'dual',
    name: 'Heat pump with gas furnace',
    priceLines: [],
    unitKind: 'heatPump',
    tier: 'singleSpeed',
    nominalTons: 3,
    ratings: { seer2BtuPerWh: 14.3, hspf2BtuPerWh: 7.5 },
  };
  const climate = climateFor({ kind: 'city', city: 'st-louis-mo' });
  const energyWith = (own: Furnace) => {
    const { fuel, efficiencyFrac: afueFrac, outputBtuh, switchOverF } = own;
    const visit = exampleVisit({
      fuelPrices: { gasUsdPerTherm: own.usdPerMmbtu / 10 },
      choices: [
        { ...replace, furnace: { fuel, afueFrac, outputBtuh, switchOverF } },
        { ...replace, id: 'electric' },
      ],
    });
    return energyOf(visit, exampleLoss, climate);
  };
  const result = energyWith(furnace);
  const dual = scenarioNamed(result, 'dual').likely;
  const electric = scenarioNamed(result, 'electric').likely;

  it('no strips, the same heat, cost of fuel included', () => {
    expect(dual.stripHeatKwh).toBe(0);
    expect(dual.heatDeliveredBtu + dual.unmetBtu).toBeCloseTo(
      electric.heatDeliveredBtu + electric.unmetBtu,
      0,
    );
    expect(dual.fuelBtu).toBeGreaterThan(1e7);
    expect(dual.costUsd).toBeCloseTo(dual.totalKwh * 0.15 + ((dual.fuelBtu ?? 0) / 1e6) * 15, 6);
    expect(dual.byMonth.reduce((a, m) => a + m.costUsd, 0)).toBeCloseTo(dual.costUsd, 6);
    expect(electric.fuelBtu).toBeUndefined();
  });

  it('a higher switch-over burns more fuel and uses less electricity', () => {
    const warmer = scenarioNamed(energyWith({ ...furnace, switchOverF: 45 }), 'dual').likely;
    expect(warmer.fuelBtu).toBeGreaterThan(dual.fuelBtu ?? 0);
    expect(warmer.totalKwh).toBeLessThan(dual.totalKwh);
  });

  it('the compressor rests at and below the switch-over temperature', () => {
    const points = scenarioNamed(result, 'dual').balance;
    const cold = points.filter((p) => p.outdoorF <= furnace.switchOverF);
    expect(cold.length).toBeGreaterThan(3);
    expect(cold.filter((p) => p.capacityBtuh !== 0)).toEqual([]);
    expect(scenarioNamed(result, 'dual').balancePointF).toBe(furnace.switchOverF);
  });
});
