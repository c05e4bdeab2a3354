import { describe, expect, it } from 'vitest';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import { nominalGross, speedGross } from '@/lib/diagnostics/healthy-unit/speed-steps';
import { type SpeedTable, speedPoint } from '@/lib/diagnostics/healthy-unit/speed-table';
import { speedSteps, steadyState } from '@/lib/diagnostics/healthy-unit/steady-state';

const low = { netCapacityBtuh: [20_000, 18_000], netPowerW: [1_000, 1_200], blowerRatio: 0.5 };
const high = { netCapacityBtuh: [40_000, 36_000], netPowerW: [2_600, 3_000], blowerRatio: 1 };
const table: SpeedTable = {
  outdoorF: [82, 95],
  speeds: [low, high],
  mixing: 'share',
  nominal: 1,
  ratedBlowerW: 400,
  lowF: 60,
  highF: 115,
};

describe('outside: points of a table worked by hand', () => {
  it('straight lines between and beyond the test temperatures, held and marked beyond the range', () => {
    expect(speedPoint(table, high, 88.5).netCapacityBtuh).toBeCloseTo(38_000, 9);
    expect(speedPoint(table, high, 108).netPowerW).toBeCloseTo(3_400, 9);
    expect(speedPoint(table, high, 115).beyondRange).toBe(false);
    expect(speedPoint(table, high, 120)).toEqual({ ...speedPoint(table, high, 115), beyondRange: true });
  });

  it('the blower of the rating is taken out: 3.412 Btu/h per watt and its own power', () => {
    const gross = nominalGross(table, 'cooling');
    expect(gross.capacityBtuh).toBeCloseTo(36_000 + 400 * 3.412142, 6);
    expect(gross.powerW).toBe(2_600);
    const lowest = speedGross(table, low, 'heatPumpCooling', 67, 95);
    expect(lowest.powerW).toBeCloseTo(1_000, 9);
    expect(lowest.capacityBtuh).toBeCloseTo(18_000 + 200 * 3.412142, 6);
  });

  it('drier rooms lower the capacity as the single-speed curve does', () => {
    const dry = speedGross(table, high, 'heatPumpCooling', 60, 95);
    const rated = speedGross(table, high, 'heatPumpCooling', 67, 95);
    expect(dry.capacityBtuh).toBeLessThan(0.95 * rated.capacityBtuh);
  });
});

describe('wiring: speeds of a unit', () => {
  const variable = healthyUnit({
    unit: { kind: 'heatPump', nominalTons: 3, ratings: { seer2BtuPerWh: 18, hspf2BtuPerWh: 9 } },
    visitDate: '2026-01-01',
    tier: 'variableSpeed',
  });
  const single = healthyUnit({ unit: { kind: 'heatPump', nominalTons: 3 }, visitDate: '2026-01-01' });

  it('a single-speed unit has one step, its steady state', () => {
    const conditions = { mode: 'heating' as const, outdoorF: 30, frost: 'smooth' as const };
    expect(speedSteps(single, conditions)).toEqual([steadyState(single, conditions)]);
  });

  it('the steady state is the nominal speed', () => {
    const conditions = { mode: 'cooling' as const, outdoorF: 95, frost: 'none' as const };
    const steps = speedSteps(variable, conditions);
    expect(steps).toHaveLength(3);
    expect(steps[1]).toEqual(steadyState(variable, conditions));
  });

  it('net capacity, total power and blower rise with the speed in every bin of a year', () => {
    const cooling = [70, 80, 90, 100, 110].map((outdoorF) =>
      speedSteps(variable, { mode: 'cooling', outdoorF, frost: 'none' }),
    );
    const heating = [-18, -5, 5, 17, 30, 47, 60].map((outdoorF) =>
      speedSteps(variable, { mode: 'heating', outdoorF, frost: 'smooth' }),
    );
    const all = [...cooling, ...heating];
    expect(all).toHaveLength(12);
    const falling = all.filter((steps) =>
      steps.some((s, i) => {
        const before = steps[i - 1];
        return (
          before !== undefined &&
          (s.netCapacityBtuh <= before.netCapacityBtuh ||
            s.outdoorUnitW + s.blowerW <= before.outdoorUnitW + before.blowerW ||
            s.blowerW <= before.blowerW)
        );
      }),
    );
    // in deep cold nominal and highest speed nearly meet, but never cross
    expect(falling).toEqual([]);
  });
});
