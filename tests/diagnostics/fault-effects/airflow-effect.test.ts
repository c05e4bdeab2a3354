import { describe, expect, it } from 'vitest';
import { impactRatios } from '@/lib/diagnostics/fault-effects/fault-impact';
import { Z_10_90 } from '@/lib/math/estimate';
import '../support/matchers';
import { codesOf, INSIDE, INSIDE_HEATING, knownEffect } from './known-effect';

const air = { ...INSIDE, cause: 'lowIndoorAirflow' } as const;
const coil = { ...INSIDE, cause: 'outdoorCoilFouled' } as const;

describe('outside: missing indoor airflow', () => {
  it('20 % less: 3.4 % capacity and 2.9 % COP in cooling, 10 % COP in heating', () => {
    const cooling = knownEffect({ ...air, level: 0.2 });
    const heating = knownEffect({ ...INSIDE_HEATING, cause: 'lowIndoorAirflow', level: 0.2 });
    expect(Math.exp(cooling.lnCapacity.mean)).toBeCloseToWithin(0.9656, 1e-4);
    expect(Math.exp(cooling.lnCapacity.mean - cooling.lnPower.mean)).toBeCloseToWithin(0.9715, 1e-4);
    expect(Math.exp(heating.lnCapacity.mean - heating.lnPower.mean)).toBeCloseToWithin(0.8961, 1e-4);
  });

  it('two sets differ fourfold: the difference alone would put the far end halfway to the packaged set', () => {
    const at = { ...air, indoorWetBulbF: 66.92, outdoorF: 95, ratedCop: 4.2, level: 0.2 };
    const packaged = impactRatios(
      'packagedIndoorAirflow',
      { wetBulbC: 19.4, outdoorC: 35, ratedCop: 4.2 },
      0.2,
    );
    expect(packaged.capacityRatio).toBeCloseToWithin(0.8472, 1e-4);
    const { lnCapacity, notes } = knownEffect(at);
    const halfway = (Math.log(0.9656) + Math.log(0.8472)) / 2;
    const apart = (lnCapacity.mean - halfway) / Z_10_90;
    const rest = Math.hypot(0.02, 0.052) / 0.9656;
    expect(lnCapacity.sd).toBeCloseToWithin(Math.hypot(apart, rest), 1e-4);
    expect(lnCapacity.mean - Z_10_90 * lnCapacity.sd).toBeLessThan(halfway);
    expect(notes.map(({ code }) => code)).toEqual(['airflowSetsDiffer']);
  });

  it.each([
    { level: 0.29, beyond: false },
    { level: 0.3, beyond: false },
    { level: 0.31, beyond: true },
    { level: 0.6, beyond: true },
  ])('level $level is held at 0.3', ({ level, beyond }) => {
    const effect = knownEffect({ ...air, level });
    const edge = knownEffect({ ...air, level: Math.min(level, 0.3) });
    expect(effect.beyondRange).toBe(beyond);
    expect(effect.lnCapacity.mean).toBe(edge.lnCapacity.mean);
    expect(effect.lnCapacity.sd > edge.lnCapacity.sd).toBe(beyond);
  });

  it('half the air costs at most 4 % of the power (Rodriguez and others 1996), both devices alike', () => {
    const power = (['txv', 'fixedOrifice'] as const).map((metering) =>
      Math.exp(knownEffect({ ...air, metering, level: 0.5 }).lnPower.mean),
    );
    expect(power[0]).toBe(power[1]);
    expect(power[0]).toBeCloseToWithin(0.98, 0.02);
  });
});

describe('outside: missing outdoor airflow', () => {
  it('cooling: the split-unit set, rated COP of an ordinary unit held at 5.11 and marked', () => {
    const effect = knownEffect({ ...coil, outdoorF: 95, indoorWetBulbF: 66.92, level: 0.3 });
    const at = { wetBulbC: 19.4, outdoorC: 35, ratedCop: 5.11 };
    const published = impactRatios('splitOutdoorAirflow', at, 0.3);
    expect(Math.exp(effect.lnCapacity.mean)).toBeCloseToWithin(published.capacityRatio, 1e-9);
    expect(Math.exp(effect.lnPower.mean - effect.lnCapacity.mean)).toBeCloseToWithin(
      published.eirRatio,
      1e-9,
    );
    expect(effect.beyondRange).toBe(true);
    expect(codesOf(effect)).toEqual(['ratedCopBeyondFit']);
  });

  it.each([
    { ratedCop: 5.1, beyond: true },
    { ratedCop: 5.11, beyond: false },
    { ratedCop: 6, beyond: false },
    { ratedCop: 7.06, beyond: false },
    { ratedCop: 7.07, beyond: true },
  ])('rated COP $ratedCop', ({ ratedCop, beyond }) => {
    expect(knownEffect({ ...coil, ratedCop, level: 0.3 }).beyondRange).toBe(beyond);
  });

  it('heating: nothing published, so as an evaporator, an assumption, and wider than indoor airflow', () => {
    const heating = knownEffect({ ...INSIDE_HEATING, cause: 'outdoorCoilFouled', level: 0.2 });
    expect(Math.exp(heating.lnCapacity.mean)).toBeCloseToWithin(0.9656, 1e-4);
    expect(heating.lnCapacity.sd).toBeGreaterThan(knownEffect({ ...air, level: 0.2 }).lnCapacity.sd);
    expect(heating.evidence).toBe('assumption');
    expect(codesOf(heating)).toContain('outdoorCoilAsEvaporator');
  });
});
