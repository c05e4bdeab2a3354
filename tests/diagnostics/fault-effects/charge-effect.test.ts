import { describe, expect, it } from 'vitest';
import { chargeRatios } from '@/lib/diagnostics/fault-effects/charge-laboratory';
import { Z_10_90 } from '@/lib/math/estimate';
import '../support/matchers';
import { codesOf, INSIDE, INSIDE_HEATING, knownEffect } from './known-effect';

const low = { ...INSIDE, cause: 'lowCharge' } as const;
const high = { ...INSIDE, cause: 'overcharge' } as const;
const lowHeating = { ...INSIDE_HEATING, cause: 'lowCharge' } as const;

const capacityOf = (input: Parameters<typeof knownEffect>[0]): number =>
  Math.exp(knownEffect(input).lnCapacity.mean);
const powerOf = (input: Parameters<typeof knownEffect>[0]): number =>
  Math.exp(knownEffect(input).lnPower.mean);

describe('outside: missing charge in cooling, expansion valve', () => {
  it('is the published set where nothing is clamped (26.7 degC in, 35 degC out, 20 % missing)', () => {
    const input = { ...low, indoorF: 80, outdoorF: 95, level: 0.2 };
    expect(capacityOf(input)).toBeCloseToWithin(0.8882, 0.0005); // 80 F is 26.67 degC
    expect(powerOf(input)).toBeCloseToWithin(0.9779, 0.0005);
    expect(knownEffect(input)).toMatchObject({ clamped: false, beyondRange: false, evidence: 'laboratory' });
  });

  it('the published formula makes capacity rise in cold return air; ours is held at 70 F', () => {
    const raw = chargeRatios({ mode: 'cooling', indoorC: 18, outdoorC: 35 }, -0.05);
    expect(raw.capacityRatio).toBeGreaterThan(1);
    const at = { ...low, outdoorF: 95, level: 0.05 };
    const cold = knownEffect({ ...at, indoorF: 64.4 });
    expect(cold.lnCapacity.mean).toBe(knownEffect({ ...at, indoorF: 70 }).lnCapacity.mean);
    expect(cold.lnCapacity.mean).toBeLessThan(0);
    expect(cold.beyondRange).toBe(true);
    expect(codesOf(cold)).toContain('indoorBeyondFit');
  });

  it.each([
    { where: 'inside', indoorF: 75, outdoorF: 90, beyond: false },
    { where: 'on the corners', indoorF: 70, outdoorF: 82, beyond: false },
    { where: 'on the other corners', indoorF: 80, outdoorF: 100, beyond: false },
    { where: 'indoors just too cold', indoorF: 69.9, outdoorF: 90, beyond: true },
    { where: 'indoors just too warm', indoorF: 80.1, outdoorF: 90, beyond: true },
    { where: 'outdoors just too cool', indoorF: 75, outdoorF: 81.9, beyond: true },
    { where: 'outdoors just too hot', indoorF: 75, outdoorF: 100.1, beyond: true },
  ])('range of conditions: $where', ({ indoorF, outdoorF, beyond }) => {
    expect(knownEffect({ ...low, indoorF, outdoorF, level: 0.2 }).beyondRange).toBe(beyond);
  });

  it.each([
    { level: 0.299, beyond: false },
    { level: 0.3, beyond: false },
    { level: 0.301, beyond: true },
    { level: 0.9, beyond: true },
  ])('level $level is held at 0.3', ({ level, beyond }) => {
    const effect = knownEffect({ ...low, level });
    const edge = knownEffect({ ...low, level: Math.min(level, 0.3) });
    expect(effect.beyondRange).toBe(beyond);
    expect(effect.lnCapacity.mean).toBe(edge.lnCapacity.mean);
    expect(effect.lnCapacity.sd > edge.lnCapacity.sd).toBe(beyond);
  });
});

describe('outside: extra charge', () => {
  it('the published gain of 2 to 3 % capacity is not credited, the power stays as measured', () => {
    const input = { ...high, indoorF: 80, outdoorF: 95, level: 0.3 };
    expect(knownEffect(input).lnCapacity.mean).toBe(0);
    expect(powerOf(input)).toBeCloseToWithin(1.0615, 0.0005);
    expect(knownEffect(input).clamped).toBe(true);
    expect(codesOf(knownEffect(input))).toContain('capacityGainNotCredited');
  });

  it('heating: power grows by 19 % at 30 % extra and 47 F', () => {
    const input = { ...INSIDE_HEATING, outdoorF: 47, cause: 'overcharge', level: 0.3 } as const;
    expect(powerOf(input)).toBeCloseToWithin(1.1918, 0.0005);
  });

  it('heating in the cold: a published dip in power is not credited', () => {
    const raw = chargeRatios({ mode: 'heating', indoorC: 0, outdoorC: -8.33 }, 0.05);
    expect(raw.powerRatio).toBeLessThan(1);
    const effect = knownEffect({ ...INSIDE_HEATING, outdoorF: 17, cause: 'overcharge', level: 0.05 });
    expect(effect.lnPower.mean - effect.lnCapacity.mean).toBeCloseToWithin(0, 1e-12);
    expect(codesOf(effect)).toContain('efficiencyGainNotCredited');
  });

  it('fixed orifice: between the laboratory set and the packaged set', () => {
    const input = { ...high, metering: 'fixedOrifice', level: 0.2 } as const;
    expect(capacityOf(input)).toBeCloseToWithin(0.96, 0.01);
    expect(codesOf(knownEffect(input))).toContain('overchargeSetsDiffer');
  });
});

describe('outside: missing charge in heating', () => {
  it.each([
    { level: 0.1, capacity: 0.96 },
    { level: 0.2, capacity: 0.87 },
    { level: 0.3, capacity: 0.72 },
  ])('square law: $level missing at 47 F', ({ level, capacity }) => {
    expect(capacityOf({ ...lowHeating, outdoorF: 47, level })).toBeCloseToWithin(capacity, 0.005);
  });

  it('no gain in the cold, where the formula has one', () => {
    const raw = chargeRatios({ mode: 'heating', indoorC: 0, outdoorC: -8.33 }, -0.04);
    expect(raw.capacityRatio).toBeGreaterThan(1);
    const effect = knownEffect({ ...lowHeating, outdoorF: 17, level: 0.04 });
    expect(effect.lnCapacity.mean).toBe(0);
    expect(effect.clamped).toBe(true);
  });

  it('the mild end of the range reaches the yearly figure of 8 % at 30 % missing (NREL ComStock)', () => {
    for (const outdoorF of [17, 32, 47]) {
      const { lnCapacity, lnPower, notes } = knownEffect({ ...lowHeating, outdoorF, level: 0.3 });
      const mild = lnCapacity.mean + Z_10_90 * lnCapacity.sd - lnPower.mean;
      expect(mild).toBeGreaterThan(Math.log(1 - 0.0824));
      expect(notes.map(({ code }) => code)).toContain('heatingChargeUnresolved');
    }
  });

  it.each([
    { outdoorF: 17, beyond: false },
    { outdoorF: 47, beyond: false },
    { outdoorF: 16.9, beyond: true },
    { outdoorF: 47.1, beyond: true },
  ])('range: $outdoorF F outdoors', ({ outdoorF, beyond }) => {
    expect(knownEffect({ ...lowHeating, outdoorF, level: 0.2 }).beyondRange).toBe(beyond);
  });

  it('indoor temperature has no part in heating', () => {
    const at = (indoorF: number) => knownEffect({ ...lowHeating, indoorF, level: 0.2 });
    expect(at(60)).toEqual(at(75));
  });

  it('fixed orifice: as the valve, wider, and said so', () => {
    const valve = knownEffect({ ...lowHeating, level: 0.2 });
    const orifice = knownEffect({ ...lowHeating, metering: 'fixedOrifice', level: 0.2 });
    expect(orifice.lnCapacity.mean).toBe(valve.lnCapacity.mean);
    expect(orifice.lnCapacity.sd).toBeGreaterThan(valve.lnCapacity.sd);
    expect(codesOf(orifice)).toContain('testedOnExpansionValve');
  });
});

describe('identity: metering device', () => {
  it('a fixed orifice takes its own set: the valve coefficients are not used for it', () => {
    const valve = knownEffect({ ...low, level: 0.2 });
    const orifice = knownEffect({ ...low, metering: 'fixedOrifice', level: 0.2 });
    expect(orifice.lnCapacity.mean).toBeLessThan(valve.lnCapacity.mean);
    expect([valve.evidence, orifice.evidence]).toEqual(['laboratory', 'simulation']);
  });

  it('unknown is midway and says so', () => {
    const valve = knownEffect({ ...low, level: 0.2 });
    const orifice = knownEffect({ ...low, metering: 'fixedOrifice', level: 0.2 });
    const unknown = knownEffect({ ...low, metering: undefined, level: 0.2 });
    expect(unknown.lnCapacity.mean).toBeCloseToWithin(
      (valve.lnCapacity.mean + orifice.lnCapacity.mean) / 2,
      1e-12,
    );
    expect(codesOf(unknown)).toContain('meteringUnknown');
  });
});
