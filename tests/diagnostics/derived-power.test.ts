import { describe, expect, it } from 'vitest';
import {
  blowerPower,
  compressorPower,
  compressorPowerFactor,
  outdoorUnitPower,
  powerFactor,
  unitVolts,
} from '@/lib/diagnostics/derived/power';
import type { RunContext } from '@/lib/diagnostics/run-context';
import './support/matchers';
import { contextOfRun, type RunPart } from './support/visit-of';

function cooling(readings: Omit<RunPart, 'mode'>, ratedV?: number): RunContext {
  return contextOfRun({ mode: 'cooling', ...readings }, ratedV === undefined ? {} : { ratedV });
}

// Hand arithmetic with the defaults of the assumption table: power factor 0.95, fan share 0.05.
describe('electric power', () => {
  it('identity: a watt reading beats volts times amps', () => {
    const context = cooling({ outdoorUnitW: 2_500, lineV: 240, outdoorUnitA: 14 });
    expect(outdoorUnitPower(context)).toMatchObject({ value: 2_500, basis: 'measured' });
    expect(compressorPower(context)?.value).toBeCloseToWithin(2_500 * 0.95, 1e-9);
  });

  it('identity: with fan amps the fan is taken off instead of a share', () => {
    const context = cooling({ outdoorUnitW: 2_500, lineV: 240, outdoorFanA: 1 });
    expect(compressorPower(context)?.value).toBeCloseToWithin(2_500 - 240 * 0.85, 1e-9);
  });

  it('identity: compressor amps: V x A x PF, and the fan on top for the unit', () => {
    const context = cooling({ lineV: 240, compressorA: 10 });
    expect(compressorPower(context)?.value).toBeCloseToWithin(240 * 10 * 0.95, 1e-9);
    expect(outdoorUnitPower(context)?.value).toBeCloseToWithin((240 * 10 * 0.95) / 0.95, 1e-9);
    const withFan = cooling({ lineV: 240, compressorA: 10, outdoorFanA: 1 });
    expect(outdoorUnitPower(withFan)?.value).toBeCloseToWithin(240 * (10 * 0.95 + 0.85), 1e-9);
  });

  it('identity: unit amps: the whole unit, the compressor less the fan share', () => {
    const context = cooling({ lineV: 240, outdoorUnitA: 11, powerFactorFrac: 0.9 });
    expect(outdoorUnitPower(context)?.value).toBeCloseToWithin(240 * 11 * 0.9, 1e-9);
    expect(compressorPower(context)?.value).toBeCloseToWithin(240 * 11 * 0.9 * 0.95, 1e-9);
  });

  it('identity: no watts and no amps, no power', () => {
    const context = cooling({ lineV: 240 });
    expect(outdoorUnitPower(context)).toBeUndefined();
    expect(compressorPower(context)).toBeUndefined();
  });

  it('identity: volts not read: nameplate, else a typical service, ever wider', () => {
    const read = unitVolts(cooling({ lineV: 230 }));
    const plate = unitVolts(cooling({}, 230));
    const typical = unitVolts(cooling({}));
    expect(read).toMatchObject({ value: 230, basis: 'measured' });
    expect(plate).toMatchObject({ value: 230, basis: 'nameplate' });
    expect(typical).toMatchObject({ basis: 'assumed' });
    expect(plate.sd).toBeGreaterThan(read.sd);
    expect(typical.value).toBeGreaterThan(220);
    expect(typical.value).toBeLessThan(245);
  });

  it('identity: a weak capacitor widens the assumed power factor, a good one and a reading do not', () => {
    const good = compressorPowerFactor(cooling({ compressorCapUf: 44, compressorCapRatedUf: 45 }));
    const weak = compressorPowerFactor(cooling({ compressorCapUf: 35, compressorCapRatedUf: 45 }));
    const read = compressorPowerFactor(
      cooling({ compressorCapUf: 35, compressorCapRatedUf: 45, powerFactorFrac: 0.82 }),
    );
    expect(weak.sd).toBeGreaterThan(good.sd);
    expect(read).toMatchObject({ value: 0.82, basis: 'measured' });
  });

  it('identity: power factor from watts, volts and amps', () => {
    expect(
      powerFactor(cooling({ outdoorUnitW: 2_160, lineV: 240, outdoorUnitA: 10 }))?.value,
    ).toBeCloseToWithin(0.9, 1e-9);
    expect(powerFactor(cooling({ outdoorUnitW: 2_160, outdoorUnitA: 10 }))).toBeUndefined();
  });

  it('identity: blower watts as read, else amps; neither, nothing', () => {
    expect(blowerPower(cooling({ blowerW: 430, blowerA: 9 }))?.value).toBe(430);
    expect(blowerPower(cooling({ blowerA: 2, lineV: 240 }))?.value).toBeCloseToWithin(240 * 2 * 0.85, 1e-9);
    expect(blowerPower(cooling({ lineV: 240 }))).toBeUndefined();
  });

  it('identity: uncertainty of V x A x PF is the root sum of squares of the parts', () => {
    const value = compressorPower(cooling({ lineV: 240, compressorA: 10 }));
    // volts 1 %, amps 2 %, power factor (0.99 - 0.91) / 2.563 / 0.95 = 3.29 %
    expect((value?.sd ?? 0) / (value?.value ?? 1)).toBeCloseToWithin(Math.hypot(0.01, 0.02, 0.03286), 1e-4);
    const shares = value?.inputs.map((input) => input.shareFrac ?? Number.NaN) ?? [];
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseToWithin(1, 1e-9);
    expect(value?.inputs.map((input) => input.name)).toEqual(['lineV', 'compressorA', 'powerFactorFrac']);
  });
});
