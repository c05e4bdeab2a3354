import { describe, expect, it } from 'vitest';
import { typicalConditions } from '@/lib/diagnostics/fault-effects/fault-conditions';
import '../support/matchers';
import { codesOf, knownEffect } from './known-effect';

const bare = { mode: 'cooling', metering: 'txv', outdoorF: 90, level: 0.2 } as const;

describe('identity: what is not known is assumed, named, and widens', () => {
  it('return air for charge: 75 F, give or take 3 F', () => {
    const unknown = knownEffect({ ...bare, cause: 'lowCharge' });
    const at = (indoorF: number) => knownEffect({ ...bare, cause: 'lowCharge', indoorF });
    const moved = at(75).lnCapacity.mean - at(78).lnCapacity.mean;
    expect(unknown.lnCapacity.mean).toBe(at(75).lnCapacity.mean);
    expect(moved).toBeGreaterThan(0.01);
    expect(unknown.lnCapacity.sd).toBeCloseToWithin(Math.hypot(at(75).lnCapacity.sd, moved), 1e-12);
    expect(unknown.notes).toEqual([{ code: 'indoorFAssumed', values: { value: 75 } }]);
  });

  it('wet bulb and rated COP for a restriction, but not return air, which has no part in it', () => {
    const unknown = knownEffect({ ...bare, cause: 'liquidLineRestriction', metering: 'fixedOrifice' });
    expect(codesOf(unknown)).toEqual(['indoorWetBulbFAssumed', 'ratedCopAssumed']);
    const known = knownEffect({
      ...bare,
      cause: 'liquidLineRestriction',
      metering: 'fixedOrifice',
      indoorWetBulbF: 63,
      ratedCop: 4,
    });
    expect(unknown.lnCapacity.mean).toBe(known.lnCapacity.mean);
    expect(unknown.lnCapacity.sd).toBeGreaterThan(known.lnCapacity.sd);
  });

  it('typical conditions of a mode are inside the laboratory range', () => {
    for (const mode of ['cooling', 'heating'] as const) {
      const effect = knownEffect({
        ...typicalConditions(mode),
        metering: 'txv',
        cause: 'lowCharge',
        level: 0.2,
      });
      expect(typicalConditions(mode).mode).toBe(mode);
      expect(effect.beyondRange).toBe(false);
    }
  });
});
