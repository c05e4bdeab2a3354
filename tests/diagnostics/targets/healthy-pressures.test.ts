import { describe, expect, it } from 'vitest';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import {
  healthyCondensing,
  healthyEvaporating,
  seerClass,
} from '@/lib/diagnostics/targets/healthy-pressures';
import type { Unit } from '@/lib/visit/unit';
import maker from '../../reference/field-healthy-units.json';
import '../support/matchers';
import { contextOfRun } from '../support/visit-of';

const seer14: Partial<Unit> = { ratings: { seerBtuPerWh: 14 } };

describe('condensing temperature of a healthy unit in cooling', () => {
  // Trade rule by class, read; at 14 SEER set between the rule (15) and one maker's own units (14-22, read).
  it.each([
    [8, 30],
    [10, 30],
    [12, 25],
    [13, 20],
    [14, 17.5],
  ])('outside: at %d SEER it lies %f F over outdoor air', (seerBtuPerWh, over) => {
    const context = contextOfRun({ mode: 'cooling', outdoorAirF: 95 }, { ratings: { seerBtuPerWh } });
    expect(healthyCondensing(context)?.temperatureF).toBeCloseToWithin(95 + over, 1e-9);
    expect(healthyCondensing(context)?.toleranceFd).toBe(5);
  });

  it("outside: one maker's seven healthy 14 SEER units lie inside the tolerance", () => {
    const healthy = healthyCondensing(contextOfRun({ mode: 'cooling', outdoorAirF: 95 }, seer14));
    const over = Object.values(maker.condensingOverAmbientOfOneMaker.value).map((row) => row.over_f);
    const target = (healthy?.temperatureF ?? 0) - 95;
    expect(over).toHaveLength(7);
    expect(over.filter((value) => Math.abs(value - target) > 5)).toEqual([]);
  });

  it('identity: a newer rating is brought to the older class', () => {
    const context = contextOfRun({ mode: 'cooling' }, { ratings: { seer2BtuPerWh: 13.3 } });
    expect(seerClass(context)).toBeCloseToWithin(14, 1e-9);
  });

  it('identity: no outdoor air, no target; an assumed class says so', () => {
    expect(healthyCondensing(contextOfRun({ mode: 'cooling' }, seer14))).toBeUndefined();
    const guessed = healthyCondensing(contextOfRun({ mode: 'cooling', outdoorAirF: 95 }));
    expect(guessed?.note?.code).toBe('classAssumed');
  });
});

describe('evaporating temperature of a healthy unit in cooling', () => {
  const rows = maker.normalPressuresOf14Seer.inputs;
  const units = [
    ['3 ton heat pump', rows['3_ton_HP_suction']],
    ['3 ton air conditioner', rows['3_ton_AC_suction']],
    ['2 ton heat pump', rows['2_ton_HP_suction']],
  ] as const;

  // Normal pressures of one maker's 14 SEER units at 80/67 F return, read, 65-115 F outdoors.
  it.each(units)('outside: %s: every normal suction pressure is within the tolerance', (_, suction) => {
    const p = refrigerantProperties('R-410A');
    const misses = rows.outdoor_f.map((outdoorAirF, i) => {
      const run = { mode: 'cooling', outdoorAirF, returnAirF: 80, returnWetBulbF: 67 } as const;
      const healthy = healthyEvaporating(contextOfRun(run, seer14));
      const evaporatingF = Number(p.dewF((suction[i] ?? 0) + 14.696));
      return Math.abs(evaporatingF - (healthy?.temperatureF ?? 0)) - (healthy?.toleranceFd ?? 0);
    });
    expect(misses).toHaveLength(12);
    expect(misses.filter((miss) => miss > 0)).toEqual([]);
  });

  // Trade rule, read: 35 +/-5 F below return at 400 cfm/ton, near 75 F and half humidity (62.5 F wet bulb).
  it('outside: an older unit evaporates about 35 F below 75 F return air', () => {
    const context = contextOfRun(
      { mode: 'cooling', outdoorAirF: 95, returnAirF: 75, returnWetBulbF: 62.5 },
      { ratings: { seerBtuPerWh: 10 } },
    );
    expect(75 - (healthyEvaporating(context)?.temperatureF ?? 0)).toBeCloseToWithin(35, 1);
  });

  it('identity: an assumed wet bulb widens and says so', () => {
    const run = { mode: 'cooling', outdoorAirF: 95, returnAirF: 76 } as const;
    const supposed = healthyEvaporating(contextOfRun(run, seer14));
    const read = healthyEvaporating(contextOfRun({ ...run, returnWetBulbF: 63.3 }, seer14));
    expect(supposed?.note?.code).toBe('wetBulbAssumed');
    expect(supposed?.toleranceFd ?? 0).toBeGreaterThan(read?.toleranceFd ?? 1e9);
    expect(supposed?.temperatureF).toBeCloseToWithin(read?.temperatureF ?? null, 0.5);
  });
});

describe('heating', () => {
  it('identity: never uses the cooling rules', () => {
    const run = { outdoorAirF: 47, returnAirF: 70, returnWetBulbF: 58 } as const;
    const heating = contextOfRun({ mode: 'heating', ...run }, seer14);
    const cooling = contextOfRun({ mode: 'cooling', ...run }, seer14);
    expect(healthyCondensing(heating)?.source).not.toBe(healthyCondensing(cooling)?.source);
    expect(healthyEvaporating(heating)?.source).not.toBe(healthyEvaporating(cooling)?.source);
  });

  // Common practice, no source: 10-20 F below outdoor air at 47 F, less in the cold.
  it('outside: evaporates 10-20 F below outdoor air at 47 F, less at 17 F [common practice]', () => {
    const below = (outdoorAirF: number) =>
      outdoorAirF -
      (healthyEvaporating(contextOfRun({ mode: 'heating', outdoorAirF, returnAirF: 70 }))?.temperatureF ?? 0);
    expect(below(47)).toBeCloseToWithin(15, 0.01);
    expect(below(17)).toBeGreaterThan(5);
    expect(below(17)).toBeLessThan(below(47));
  });

  // Check cycles made up to be realistic: 106, 101 F condensing at 47 F and 92 F at 17 F outdoors, 70 F return.
  it.each([
    [47, 106.1],
    [47, 100.9],
    [17, 92],
  ])('outside: at %d F outdoors condensing at %f F is accepted', (outdoorAirF, condensingF) => {
    const healthy = healthyCondensing(contextOfRun({ mode: 'heating', outdoorAirF, returnAirF: 70 }));
    const target = healthy?.temperatureF ?? 0;
    expect(condensingF).toBeGreaterThan(target - (healthy?.lowFd ?? 0));
    expect(condensingF).toBeLessThan(target + (healthy?.highFd ?? 0));
  });
});
