import { describe, expect, it } from 'vitest';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import { heatingHour } from '@/lib/energy/bin-hour';
import { climateFor } from '@/lib/energy/climate';
import { type Furnace, fuelPrice, withFurnace } from '@/lib/energy/furnace';
import { yearlyEnergy } from '@/lib/energy/yearly-energy';
import type { Choice } from '@/lib/visit/choice';
import { exampleLoss, exampleVisit, scenarioNamed } from './example-visit';

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
  const visit = exampleVisit({ choices: [replace, { ...replace, id: 'electric' }] });
  const healthy = healthyUnit({ unit: visit.unit, visitDate: visit.visitDate });
  const climate = climateFor({ kind: 'city', city: 'st-louis-mo' });
  const energyWith = (own: Furnace) =>
    yearlyEnergy({ visit, healthy, loss: exampleLoss, climate, furnaces: { dual: own } });
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
