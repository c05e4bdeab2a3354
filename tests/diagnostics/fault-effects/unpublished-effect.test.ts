import { describe, expect, it } from 'vitest';
import '../support/matchers';
import { codesOf, INSIDE, INSIDE_HEATING, knownEffect } from './known-effect';

describe('identity: faults without a published correlation are our own estimate and say so', () => {
  it.each(['compressorValvesLeaking', 'reversingValveLeaking'] as const)(
    '%s: capacity follows the flow that is left, power less, both modes alike',
    (cause) => {
      const cooling = knownEffect({ ...INSIDE, cause, level: 0.3 });
      expect(Math.exp(cooling.lnCapacity.mean)).toBeCloseToWithin(0.7, 1e-12);
      expect(cooling.lnPower.mean).toBeCloseToWithin(0.3 * Math.log(0.7), 1e-12);
      expect(cooling.lnPower.sd).toBeGreaterThan(Math.abs(cooling.lnPower.mean));
      expect(knownEffect({ ...INSIDE_HEATING, cause, level: 0.3 }).lnCapacity).toEqual(cooling.lnCapacity);
      expect(codesOf(cooling)).toEqual(['noPublishedLeakEffect']);
      expect(cooling).toMatchObject({ evidence: 'assumption', status: 'assumption' });
    },
  );

  it.each([
    { cause: 'compressorValvesLeaking', level: 0.5, beyond: false },
    { cause: 'compressorValvesLeaking', level: 0.51, beyond: true },
    { cause: 'compressorValvesLeaking', level: 1, beyond: true },
    { cause: 'runCapacitorWeak', level: 0.5, beyond: false },
    { cause: 'runCapacitorWeak', level: 0.51, beyond: true },
    { cause: 'runCapacitorWeak', level: 1, beyond: true },
  ] as const)('$cause at $level: held at 0.5', ({ cause, level, beyond }) => {
    const effect = knownEffect({ ...INSIDE, cause, level });
    expect(effect.beyondRange).toBe(beyond);
    expect(effect.lnPower.mean).toBe(knownEffect({ ...INSIDE, cause, level: 0.5 }).lnPower.mean);
  });

  it('weak capacitor: no capacity lost, the fan-motor formula on power, doubt larger than the effect', () => {
    const effect = knownEffect({ ...INSIDE, cause: 'runCapacitorWeak', level: 0.3 });
    expect(effect.lnCapacity.mean).toBe(0);
    expect(Math.exp(effect.lnPower.mean)).toBeCloseToWithin(1.0227, 1e-4);
    expect(effect.lnPower.sd).toBeCloseToWithin(Math.hypot(0.03 / 1.0227, Math.log(1.0227)), 1e-4);
    expect(codesOf(effect)).toEqual(['noPublishedCapacitorEffect']);
  });

  it.each(['none', 'supplementaryHeatFault'] as const)(
    '%s: exactly no effect on the outdoor unit',
    (cause) => {
      const effect = knownEffect({ ...INSIDE_HEATING, cause, level: 0.5 });
      expect([effect.lnCapacity, effect.lnPower]).toEqual([
        { mean: 0, sd: 0 },
        { mean: 0, sd: 0 },
      ]);
    },
  );

  it('electric heat is said to stand apart', () => {
    expect(codesOf(knownEffect({ ...INSIDE_HEATING, cause: 'supplementaryHeatFault', level: 0.5 }))).toEqual([
      'stripHeatApart',
    ]);
  });
});
