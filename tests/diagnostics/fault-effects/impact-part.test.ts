import { describe, expect, it } from 'vitest';
import { BETWEEN_UNITS } from '@/lib/diagnostics/fault-effects/doubt';
import { impactPart } from '@/lib/diagnostics/fault-effects/impact-part';
import '../support/matchers';

const at = { mode: 'cooling', outdoorF: 95, indoorF: 80, indoorWetBulbF: 67, ratedCop: 4.2 } as const;
const base = { set: 'packagedUndercharge', cause: 'lowCharge', level: 0.2, between: BETWEEN_UNITS } as const;

describe('identity: one set of the fault-impact correlation', () => {
  it.each([
    { what: 'wet bulb', on: { indoorWetBulbF: 55 }, off: { indoorWetBulbF: 50 }, code: 'wetBulbBeyondFit' },
    { what: 'wet bulb', on: { indoorWetBulbF: 75 }, off: { indoorWetBulbF: 80 }, code: 'wetBulbBeyondFit' },
    { what: 'outdoors', on: { outdoorF: 65 }, off: { outdoorF: 55 }, code: 'outdoorBeyondFit' },
    { what: 'outdoors', on: { outdoorF: 115 }, off: { outdoorF: 125 }, code: 'outdoorBeyondFit' },
    { what: 'rated COP', on: { ratedCop: 3.74 }, off: { ratedCop: 3 }, code: 'ratedCopBeyondFit' },
    { what: 'rated COP', on: { ratedCop: 4.69 }, off: { ratedCop: 5 }, code: 'ratedCopBeyondFit' },
  ])('$what is held on the edge, marked and widened', ({ on, off, code }) => {
    const edge = impactPart({ ...base, at: { ...at, ...on } });
    const beyond = impactPart({ ...base, at: { ...at, ...off } });
    expect(edge.beyondRange).toBe(false);
    expect(beyond.beyondRange).toBe(true);
    expect(beyond.lnCapacity.mean).toBeCloseToWithin(edge.lnCapacity.mean, 1e-12);
    expect(beyond.lnCapacity.sd).toBeGreaterThan(edge.lnCapacity.sd);
    expect(beyond.notes.map((note) => note.code)).toEqual([code]);
  });

  it('half the largest deviation is the fit error', () => {
    const part = impactPart({ ...base, at });
    const ratio = Math.exp(part.lnCapacity.mean);
    expect(part.lnCapacity.sd).toBeCloseToWithin(Math.hypot(0.02, 0.052) / ratio, 1e-12);
    const power = Math.exp(part.lnPower.mean);
    expect(part.lnPower.sd).toBeCloseToWithin(Math.hypot(0.02, 0.025, 0.038) / power, 1e-12);
  });
});
