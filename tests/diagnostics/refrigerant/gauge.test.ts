import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  altitudeFtAtBaro,
  baroPsiaAtAltitude,
  psiaToPsig,
  psigToPsia,
} from '@/lib/diagnostics/refrigerant/gauge';
import cycle from '../../reference/refrigerants-cycle-checks.json';
import { expectWithin } from './within';

describe('gauge and barometer', () => {
  test('outside: standard atmosphere [U.S. Standard Atmosphere 1976, table of geopotential altitude; status memory]', () => {
    // printed in Pa at round metres; the fitted formula is stated as good to 0.01 psi over the troposphere
    const rows = [
      [-500, 107_478],
      [0, 101_325],
      [500, 95_461],
      [1000, 89_876],
      [1500, 84_560],
      [2000, 79_501],
      [3000, 70_121],
    ] as const;
    for (const [metres, pa] of rows) {
      expectWithin(`${metres} m`, baroPsiaAtAltitude(metres / 0.3048), pa / 6894.757293168, 0.003);
    }
    expect.assertions(7);
  });

  test('outside: atmospheres of the cycle checks, 0 and 5,000 ft [refrigerants-cycle-checks.json]', () => {
    for (const { input } of cycle.points) {
      const baro = baroPsiaAtAltitude(input.elevation_ft);
      expectWithin(`${input.elevation_ft} ft`, baro, input.atmosphere_psia, 0.0005);
    }
    expect.assertions(14);
  });

  test('property: altitude and back, falling with height', () => {
    const altitude = fc.double({ min: -1000, max: 30_000, noNaN: true });
    fc.assert(
      fc.property(altitude, altitude, (a, b) => {
        expect(altitudeFtAtBaro(baroPsiaAtAltitude(a))).toBeCloseTo(a, 5);
        expect(baroPsiaAtAltitude(Math.max(a, b))).toBeLessThanOrEqual(baroPsiaAtAltitude(Math.min(a, b)));
      }),
    );
  });

  test('property: gauge and absolute undo each other', () => {
    const pressure = fc.double({ min: -14, max: 800, noNaN: true });
    fc.assert(
      fc.property(pressure, fc.double({ min: 8, max: 15, noNaN: true }), (psig, baro) => {
        expect(psiaToPsig(psigToPsia(psig, baro), baro)).toBeCloseTo(psig, 10);
        expect(psigToPsia(psig, baro)).toBeCloseTo(psig + baro, 12);
      }),
    );
  });

  test('wiring: just inside, on and just outside the formula', () => {
    for (const inside of [-16_500, -16_499, 35_999, 36_000]) {
      expect(baroPsiaAtAltitude(inside)).toBeGreaterThan(3);
    }
    expect(() => baroPsiaAtAltitude(-16_501)).toThrow('altitude');
    expect(() => baroPsiaAtAltitude(36_001)).toThrow('altitude');
    expect(() => baroPsiaAtAltitude(Number.NaN)).toThrow('altitude');
    expect(() => altitudeFtAtBaro(0)).toThrow('pressure');
    expect(() => altitudeFtAtBaro(2)).toThrow('pressure');
    expect.assertions(9);
  });
});
