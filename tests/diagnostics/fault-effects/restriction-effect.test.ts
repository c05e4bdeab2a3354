import { describe, expect, it } from 'vitest';
import { impactRatios } from '@/lib/diagnostics/fault-effects/fault-impact';
import '../support/matchers';
import { codesOf, INSIDE, INSIDE_HEATING, knownEffect } from './known-effect';

const line = { ...INSIDE, cause: 'liquidLineRestriction' } as const;
const AT = { wetBulbC: 19.4, outdoorC: 35, ratedCop: 4.2 };
const AT_F = { indoorWetBulbF: 66.92, outdoorF: 95, ratedCop: 4.2 };

describe('outside: liquid-line restriction', () => {
  it('fixed orifice: the published set, not the non-condensables numbers printed in its place by one document', () => {
    const effect = knownEffect({ ...line, ...AT_F, metering: 'fixedOrifice', level: 0.2 });
    expect(Math.exp(effect.lnCapacity.mean)).toBeCloseToWithin(0.8949, 1e-4);
    expect(Math.exp(effect.lnPower.mean - effect.lnCapacity.mean)).toBeCloseToWithin(1.124, 1e-4);
    expect(impactRatios('packagedNonCondensables', AT, 0.2).capacityRatio).toBeGreaterThan(1);
  });

  it('an expansion valve opens first: part of the effect, whole at the end of the range, never more', () => {
    const ln = (metering: 'txv' | 'fixedOrifice', level: number): number =>
      knownEffect({ ...line, metering, level }).lnCapacity.mean;
    const shares = [0.05, 0.125, 0.25].map((level) => ln('txv', level) / ln('fixedOrifice', level));
    expect(shares[0]).toBeCloseToWithin(0.2, 1e-9);
    expect(shares[1]).toBeCloseToWithin(0.5, 1e-9);
    expect(shares[2]).toBeCloseToWithin(1, 1e-9);
    const power = (['txv', 'fixedOrifice'] as const).map(
      (metering) => knownEffect({ ...line, metering, level: 0.05 }).lnPower.mean,
    );
    expect((power[0] ?? 0) / (power[1] ?? 0)).toBeCloseToWithin(0.2, 1e-9);
    expect(codesOf(knownEffect({ ...line, level: 0.1 }))).toContain('valveOpensFirst');
  });

  it.each([
    { level: 0.249, beyond: false },
    { level: 0.25, beyond: false },
    { level: 0.251, beyond: true },
  ])('level $level is held at 0.25', ({ level, beyond }) => {
    const effect = knownEffect({ ...line, metering: 'fixedOrifice', level });
    expect(effect.beyondRange).toBe(beyond);
    expect(effect.lnCapacity.mean).toBe(
      knownEffect({ ...line, metering: 'fixedOrifice', level: Math.min(level, 0.25) }).lnCapacity.mean,
    );
  });

  it('metering device: borrowed from the liquid line, the same for both devices, wider', () => {
    const like = knownEffect({ ...line, metering: 'fixedOrifice', level: 0.2 });
    const orifice = knownEffect({
      ...line,
      metering: 'fixedOrifice',
      cause: 'meteringRestriction',
      level: 0.2,
    });
    const valve = knownEffect({ ...line, cause: 'meteringRestriction', level: 0.2 });
    expect(orifice.lnCapacity.mean).toBe(like.lnCapacity.mean);
    expect(orifice.lnCapacity.sd).toBeGreaterThan(like.lnCapacity.sd);
    expect(valve.lnCapacity).toEqual(orifice.lnCapacity);
    expect(orifice.evidence).toBe('assumption');
    expect(codesOf(orifice)).toContain('meteringAsLiquidLine');
  });

  it('heating: borrowed from cooling at its reference point, wider, whatever the weather', () => {
    const at = (outdoorF: number) =>
      knownEffect({
        ...INSIDE_HEATING,
        ...line,
        mode: 'heating',
        metering: 'fixedOrifice',
        outdoorF,
        level: 0.2,
      });
    expect(at(17).lnCapacity).toEqual(at(47).lnCapacity);
    expect(at(17).beyondRange).toBe(false);
    expect(codesOf(at(17))).toContain('borrowedFromCooling');
    expect(at(17).evidence).toBe('assumption');
  });
});

describe('outside: gas that does not condense', () => {
  it('the fitted capacity rises and is not credited; power follows the power per capacity', () => {
    const effect = knownEffect({ ...INSIDE, ...AT_F, cause: 'nonCondensables', level: 0.6 });
    expect(impactRatios('packagedNonCondensables', AT, 0.6).capacityRatio).toBeCloseToWithin(1.0259, 1e-4);
    expect(effect.lnCapacity.mean).toBe(0);
    expect(Math.exp(effect.lnPower.mean)).toBeCloseToWithin(1.0636, 1e-4);
    expect(effect.clamped).toBe(true);
  });

  it.each([
    { level: 0.8, beyond: false },
    { level: 0.81, beyond: true },
  ])('level $level against the published 0.8', ({ level, beyond }) => {
    expect(knownEffect({ ...INSIDE, cause: 'nonCondensables', level }).beyondRange).toBe(beyond);
  });

  it('heating is borrowed and wider', () => {
    const cooling = knownEffect({
      ...INSIDE,
      outdoorF: 95,
      indoorWetBulbF: 67,
      cause: 'nonCondensables',
      level: 0.5,
    });
    const heating = knownEffect({ ...INSIDE_HEATING, cause: 'nonCondensables', level: 0.5 });
    expect(heating.lnPower.mean).toBeCloseToWithin(cooling.lnPower.mean, 1e-12);
    expect(heating.lnPower.sd).toBeGreaterThan(cooling.lnPower.sd);
  });
});
