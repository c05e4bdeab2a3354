import { describe, expect, it } from 'vitest';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import { curvePoint, frostFactor } from '@/lib/diagnostics/healthy-unit/performance-curve';
import { grossPoint, steadyState } from '@/lib/diagnostics/healthy-unit/steady-state';

const heatPump = healthyUnit({
  unit: {
    kind: 'heatPump',
    nominalTons: 3,
    ratings: { seerBtuPerWh: 13, eerBtuPerWh: 11.3, hspfBtuPerWh: 8, heating17Btuh: 20_500 },
    blower: 'psc',
  },
  visitDate: '2026-03-01',
});
const airConditioner = healthyUnit({
  unit: { kind: 'airConditioner', nominalTons: 2 },
  visitDate: '2026-03-01',
});

describe('identity: steady state', () => {
  it('gives the rated net capacity at the rating points with the blower of the procedure', () => {
    const at95 = steadyState(heatPump, { mode: 'cooling', outdoorF: 95, frost: 'none' });
    const at47 = steadyState(heatPump, { mode: 'heating', outdoorF: 47, frost: 'none' });
    const procedureBlowerBtuh = 3.412142 * 0.365 * 1_200;
    expect(at95.capacityBtuh - procedureBlowerBtuh).toBeCloseTo(36_000, 0);
    expect(at47.capacityBtuh + procedureBlowerBtuh).toBeCloseTo(35_460, 0);
  });

  it('takes blower heat off cooling and adds it to heating, at 3.412 Btu/h per watt', () => {
    const cooling = steadyState(heatPump, { mode: 'cooling', outdoorF: 90, frost: 'none' });
    const heating = steadyState(heatPump, { mode: 'heating', outdoorF: 30, frost: 'none' });
    expect(heatPump.blowerW).toBe(600);
    expect(cooling.capacityBtuh - cooling.netCapacityBtuh).toBeCloseTo(600 * 3.412142, 6);
    expect(heating.netCapacityBtuh - heating.capacityBtuh).toBeCloseTo(600 * 3.412142, 6);
  });

  it('smooth frost multiplies heating by the frost factor and leaves cooling alone', () => {
    const bare = steadyState(heatPump, { mode: 'heating', outdoorF: 25, frost: 'none' });
    const frosted = steadyState(heatPump, { mode: 'heating', outdoorF: 25, frost: 'smooth' });
    const factor = frostFactor(25);
    expect(frosted.capacityBtuh / bare.capacityBtuh).toBeCloseTo(factor.capacityRatio, 12);
    expect(frosted.outdoorUnitW / bare.outdoorUnitW).toBeCloseTo(factor.powerRatio, 12);
    const cooling = { mode: 'cooling' as const, outdoorF: 70 };
    expect(steadyState(heatPump, { ...cooling, frost: 'smooth' })).toEqual(
      steadyState(heatPump, { ...cooling, frost: 'none' }),
    );
  });

  it('power is capacity times EIR on the published curve', () => {
    const performance = airConditioner.cooling;
    const point = curvePoint('airConditioner', 63, 100);
    const gross = grossPoint(performance, 63, 100);
    expect(gross.powerW / gross.capacityBtuh).toBeCloseTo(
      (performance.outdoorUnitW / performance.grossCapacityBtuh) * point.eirRatio,
      12,
    );
  });

  it('the bend to a second rating is whole at its far end and held beyond it', () => {
    const bend = heatPump.heating?.capacityTilt;
    expect(bend?.toF).toBe(17);
    const capacityAt = (outdoorF: number) =>
      steadyState(heatPump, { mode: 'heating', outdoorF, frost: 'none' }).capacityBtuh /
      curvePoint('heatPumpHeating', 70, outdoorF).capacityRatio;
    expect(capacityAt(5)).toBeCloseTo(capacityAt(17), 6);
    expect(capacityAt(60)).toBeCloseTo(capacityAt(47), 6);
    expect(capacityAt(32)).toBeCloseTo(Math.sqrt(capacityAt(17) * capacityAt(47)), 6);
  });
});

describe('property: steady state', () => {
  it('cooling falls and draws more, heating falls, as outdoor air moves away from the room', () => {
    const cooling = [80, 85, 90, 95, 100, 105, 110].map((outdoorF) =>
      steadyState(heatPump, { mode: 'cooling', outdoorF, frost: 'none' }),
    );
    const heating = [60, 50, 41, 35, 30, 20, 10, 0, -10].map((outdoorF) =>
      steadyState(heatPump, { mode: 'heating', outdoorF, frost: 'smooth' }),
    );
    expect.assertions(2 * 6 + 8);
    cooling.slice(1).forEach((s, i) => {
      expect(s.capacityBtuh).toBeLessThan(cooling[i]?.capacityBtuh ?? 0);
      expect(s.outdoorUnitW).toBeGreaterThan(cooling[i]?.outdoorUnitW ?? Number.POSITIVE_INFINITY);
    });
    heating.slice(1).forEach((s, i) => {
      expect(s.capacityBtuh).toBeLessThan(heating[i]?.capacityBtuh ?? 0);
    });
  });

  it('marks conditions beyond the published curve', () => {
    expect(steadyState(heatPump, { mode: 'cooling', outdoorF: 95, frost: 'none' }).beyondRange).toBe(false);
    expect(steadyState(heatPump, { mode: 'cooling', outdoorF: 70, frost: 'none' }).beyondRange).toBe(true);
    expect(steadyState(heatPump, { mode: 'heating', outdoorF: -20, frost: 'none' }).beyondRange).toBe(true);
  });

  it('heating of a unit that has none is our own mistake', () => {
    expect(() => steadyState(airConditioner, { mode: 'heating', outdoorF: 40, frost: 'none' })).toThrow(
      'heating asked of a unit that has none',
    );
  });
});
