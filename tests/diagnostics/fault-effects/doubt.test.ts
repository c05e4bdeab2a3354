import { describe, expect, it } from 'vitest';
import spread from '@/lib/diagnostics/fault-effects/data/spread.json';
import { rampFrac, spreadByMetering } from '@/lib/diagnostics/fault-effects/doubt';
import { knownEffect } from './known-effect';
import '../support/matchers';

const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);

describe('outside: spread between units', () => {
  it('expansion valves: rms of the printed differences between laboratories', () => {
    expect(rms([4.6, 2.1, -7.7, 6.8, -0.9, -5.5]) / 100).toBeCloseToWithin(
      spread.betweenUnits.capacity,
      0.0005,
    );
    expect(rms([3.0, 4.4]) / 100).toBeCloseToWithin(spread.betweenUnits.power, 0.0005);
  });

  it('fixed orifices: rms of the differences between the set and the published units', () => {
    const at = {
      mode: 'cooling',
      indoorF: 80,
      indoorWetBulbF: 67,
      ratedCop: 4,
      metering: 'fixedOrifice',
    } as const;
    const seasonal = knownEffect({ ...at, outdoorF: 82, cause: 'lowCharge', level: 0.2 });
    const hot = knownEffect({ ...at, outdoorF: 95, cause: 'lowCharge', level: 0.15 });
    const efficiency = (e: typeof hot): number => Math.exp(e.lnCapacity.mean - e.lnPower.mean);
    const differences = [
      efficiency(seasonal) - 0.79, // Farzad 1990, capillary
      efficiency(seasonal) - 1, // Farzad 1990, short tube
      efficiency(hot) - 0.89, // Home Energy 2002, orifice
      efficiency(hot) - 0.95, // Home Energy 2002, capillary, middle of the range
      Math.exp(hot.lnCapacity.mean) - 0.85, // the same, capacity
    ];
    expect(rms(differences)).toBeCloseToWithin(spread.betweenFixedOrificeUnits.capacity, 0.0005);
    expect(
      spread.betweenFixedOrificeUnits.power / spread.betweenFixedOrificeUnits.capacity,
    ).toBeCloseToWithin(spread.betweenUnits.power / spread.betweenUnits.capacity, 0.01);
  });

  it('fixed orifices are the wider', () => {
    expect(spreadByMetering('fixedOrifice').capacity).toBeGreaterThan(spreadByMetering('txv').capacity);
    expect(spreadByMetering('fixedOrifice').power).toBeGreaterThan(spreadByMetering('txv').power);
  });
});

it('identity: the doubt grows from nothing to whole at mild', () => {
  expect([0, 0.05, 0.1, 0.2].map((level) => rampFrac('lowCharge', level))).toEqual([0, 0.5, 1, 1]);
});
