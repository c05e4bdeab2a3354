import { describe, expect, it } from 'vitest';
import data from '@/lib/diagnostics/healthy-unit/data/performance-curves.json';
import { curvePoint, frostFactor } from '@/lib/diagnostics/healthy-unit/performance-curve';
import reference from '../../reference/seasonal-ratings.json';

const values = reference.curveValues;

describe('outside: published curves [Cutler and others 2013, secondary; carried raw and normalised by two sources]', () => {
  it('each set is 1 at its rating point', () => {
    expect.assertions(6);
    for (const [name, indoor, outdoor] of [
      ['airConditioner', 67, 95],
      ['heatPumpCooling', 67, 95],
      ['heatPumpHeating', 70, 47],
    ] as const) {
      const point = curvePoint(name, indoor, outdoor);
      expect(point.capacityRatio).toBeCloseTo(1, 4);
      expect(point.eirRatio).toBeCloseTo(1, 4);
    }
  });

  // raw value at 82 F or 17 F over raw value at the rating point; sources print five decimals
  it.each([
    ['airConditioner', 67, 82, values.airConditioner82F, values.airConditionerAtRating],
    ['heatPumpCooling', 67, 82, values.heatPump82F, values.heatPumpAtRating],
    ['heatPumpHeating', 70, 17, values.heating17F, values.heatingAtRating],
  ] as const)('%s at %d F indoors, %d F outdoors', (name, indoor, outdoor, raw, atRating) => {
    const point = curvePoint(name, indoor, outdoor);
    expect(point.capacityRatio).toBeCloseTo(raw.cap / atRating.cap, 4);
    expect(point.eirRatio).toBeCloseTo(raw.eir / atRating.eir, 4);
  });

  it('the normalised heat pump sets are the raw sets over their value at the rating point', () => {
    expect.assertions(24);
    const pairs = [
      [data.sets.heatPumpCooling.capacity, values.rawHeatPumpCooling.cap_ft, values.heatPumpAtRating.cap],
      [data.sets.heatPumpCooling.eir, values.rawHeatPumpCooling.eir_ft, values.heatPumpAtRating.eir],
      [data.sets.heatPumpHeating.capacity, values.rawHeating.cap_ft, values.heatingAtRating.cap],
      [data.sets.heatPumpHeating.eir, values.rawHeating.eir_ft, values.heatingAtRating.eir],
    ] as const;
    for (const [normalised, raw, atRating] of pairs) {
      raw.forEach((c, i) => {
        // coefficients are printed to two or more significant digits
        expect(Math.abs(((normalised[i] ?? 0) * atRating) / c - 1)).toBeLessThan(0.005);
      });
    }
  });

  it('capacity lies within 8 % of simple published ratios of the 2020s (other units, net) [RESNET Addendum 82, secondary]', () => {
    const at82 = curvePoint('airConditioner', 67, 82);
    const at17 = curvePoint('heatPumpHeating', 70, 17);
    expect(Math.abs(1 / at82.capacityRatio / reference.simpleRatios.Q95_over_Q82 - 1)).toBeLessThan(0.08);
    expect(Math.abs(at17.capacityRatio / reference.simpleRatios.Q17_over_Q47 - 1)).toBeLessThan(0.08);
    expect(Math.abs(at17.eirRatio / reference.simpleRatios.EIR17_over_EIR47 - 1)).toBeLessThan(0.08);
  });
});

describe('outside: frost factor [RESNET Addendum 82, secondary; worked values of the source]', () => {
  it.each([
    [17, reference.frost.at_17F.capacity, reference.frost.at_17F.power],
    [35, reference.frost.at_35F.capacity, reference.frost.at_35F.power],
  ])('at %d F', (outdoorF, capacity, power) => {
    expect(frostFactor(outdoorF).capacityRatio).toBeCloseTo(capacity, 4);
    expect(frostFactor(outdoorF).powerRatio).toBeCloseTo(power, 4);
  });

  it('is 1 at and above 40 F, and its time share ends at 8 %', () => {
    expect(frostFactor(40)).toEqual({ capacityRatio: 1, powerRatio: 1 });
    expect(frostFactor(39.99).capacityRatio).toBeLessThan(1);
    expect(frostFactor(-20)).toEqual(frostFactor(17));
  });
});

describe('property: outside its range a curve is held and says so', () => {
  it.each([
    ['heatPumpCooling', 57, 75, false],
    ['heatPumpCooling', 56.9, 80, true],
    ['heatPumpCooling', 67, 74.9, true],
    ['heatPumpCooling', 72, 115, false],
    ['heatPumpCooling', 67, 115.1, true],
    ['heatPumpHeating', 70, -13, false],
    ['heatPumpHeating', 70, -13.1, true],
    ['heatPumpHeating', 70, 65.1, true],
    ['heatPumpHeating', 80.1, 47, true],
  ] as const)('%s at %d F, %d F', (name, indoor, outdoor, beyond) => {
    expect(curvePoint(name, indoor, outdoor).beyondRange).toBe(beyond);
  });

  it('held at the edge', () => {
    expect(curvePoint('airConditioner', 67, 60).eirRatio).toBe(curvePoint('airConditioner', 67, 75).eirRatio);
  });
});
