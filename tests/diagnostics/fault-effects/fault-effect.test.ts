import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FaultEffectInput, faultEffect } from '@/lib/diagnostics/fault-effects/fault-effect';
import { severityScale } from '@/lib/diagnostics/fault-effects/severity';
import en from '@/lib/diagnostics/fault-effects/wording/en.json';
import { CauseId } from '@/lib/visit/cause';
import { say } from '@/lib/visit/wording';
import { INSIDE, INSIDE_HEATING, knownEffect, mustBeKnown } from './known-effect';

const maybe = (min: number, max: number) =>
  fc.option(fc.double({ min, max, noNaN: true }), { nil: undefined });

const inputs: fc.Arbitrary<FaultEffectInput> = fc.record({
  cause: fc.constantFrom(...CauseId.options),
  mode: fc.constantFrom('cooling' as const, 'heating' as const),
  metering: fc.constantFrom('txv' as const, 'fixedOrifice' as const, undefined),
  outdoorF: fc.double({ min: -40, max: 130, noNaN: true }),
  indoorF: maybe(40, 110),
  indoorWetBulbF: maybe(30, 90),
  ratedCop: maybe(1, 12),
  level: fc.double({ min: 0, max: 3, noNaN: true }),
});

const RUNS = { seed: 5, numRuns: 600 };

describe('property: any fault under any conditions', () => {
  it('all numbers are finite, sd is not negative, nothing is a gain', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const { lnCapacity, lnPower } = mustBeKnown(faultEffect(input));
        expect([lnCapacity.mean, lnCapacity.sd, lnPower.mean, lnPower.sd].every(Number.isFinite)).toBe(true);
        expect(Math.min(lnCapacity.sd, lnPower.sd)).toBeGreaterThanOrEqual(0);
        expect(lnCapacity.mean).toBeLessThanOrEqual(0);
        expect(lnPower.mean - lnCapacity.mean).toBeGreaterThanOrEqual(-1e-12);
      }),
      RUNS,
    );
  });

  it('level 0 is exactly no effect, without doubt or mark', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        expect(faultEffect({ ...input, level: 0 })).toMatchObject({
          lnCapacity: { mean: 0, sd: 0 },
          lnPower: { mean: 0, sd: 0 },
          clamped: false,
          beyondRange: false,
          notes: [],
        });
      }),
      RUNS,
    );
  });

  it('a higher level never gives more capacity nor better efficiency', () => {
    fc.assert(
      fc.property(inputs, fc.double({ min: 0, max: 1, noNaN: true }), (input, share) => {
        const more = mustBeKnown(faultEffect(input));
        const less = mustBeKnown(faultEffect({ ...input, level: share * input.level }));
        expect(more.lnCapacity.mean).toBeLessThanOrEqual(less.lnCapacity.mean + 1e-12);
        expect(more.lnPower.mean - more.lnCapacity.mean).toBeGreaterThanOrEqual(
          less.lnPower.mean - less.lnCapacity.mean - 1e-12,
        );
      }),
      RUNS,
    );
  });

  it('a small step of the level is a small step of the effect', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const here = mustBeKnown(faultEffect(input));
        const there = mustBeKnown(faultEffect({ ...input, level: input.level + 1e-6 }));
        expect(Math.abs(here.lnCapacity.mean - there.lnCapacity.mean)).toBeLessThan(1e-4);
        expect(Math.abs(here.lnPower.sd - there.lnPower.sd)).toBeLessThan(1e-4);
      }),
      RUNS,
    );
  });

  it('further beyond the published level is wider, and so is weather further out', () => {
    const faults = CauseId.options.filter((cause) => cause !== 'none' && cause !== 'supplementaryHeatFault');
    expect(faults).toHaveLength(10);
    for (const cause of faults) {
      for (const at of [INSIDE, INSIDE_HEATING]) {
        const sds = [1, 1.5, 2].map((level) => knownEffect({ ...at, cause, level }).lnPower.sd);
        expect(sds[1]).toBeGreaterThan(sds[0] ?? Number.NaN);
        expect(sds[2]).toBeGreaterThan(sds[1] ?? Number.NaN);
      }
    }
    const weather = [100, 106, 112].map(
      (outdoorF) => knownEffect({ ...INSIDE, cause: 'lowCharge', outdoorF, level: 0.2 }).lnCapacity.sd,
    );
    expect(weather[1]).toBeGreaterThan(weather[0] ?? Number.NaN);
    expect(weather[2]).toBeGreaterThan(weather[1] ?? Number.NaN);
  });

  it('what is outside a range is always said: a mark comes with a note', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const { beyondRange, clamped, notes } = mustBeKnown(faultEffect(input));
        const codes = notes.map(({ code }) => code);
        expect(codes.some((code) => code.endsWith('BeyondFit'))).toBe(beyondRange);
        expect(codes.some((code) => code.endsWith('NotCredited'))).toBe(clamped);
        expect(new Set(notes.map((note) => JSON.stringify(note))).size).toBe(notes.length);
      }),
      RUNS,
    );
  });
});

describe('wiring: words and sources', () => {
  it('every code has its words, with nothing left unfilled', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(inputs, (input) => {
        for (const note of mustBeKnown(faultEffect(input)).notes) {
          seen.add(note.code);
          const words = say(en, note);
          expect(words).not.toBe(note.code);
          expect(words).not.toMatch(/[{}]/);
        }
      }),
      RUNS,
    );
    expect(seen.size).toBeGreaterThan(18);
    const spoken = new Set([
      ...seen,
      ...CauseId.options.map((cause) => severityScale(cause).meaning.code),
      'equivalentAirflow',
      'interactionKept',
      'noHeating',
      'noReversingValve',
    ]);
    expect(Object.keys(en).filter((code) => !spoken.has(code))).toEqual([]);
  });

  it.each(CauseId.options)('%s names a source and status in both modes', (cause) => {
    for (const mode of ['cooling', 'heating'] as const) {
      for (const metering of ['txv', 'fixedOrifice', undefined] as const) {
        const effect = knownEffect({ ...INSIDE, mode, metering, cause, level: 0.1 });
        expect(effect.source.length).toBeGreaterThan(20);
        expect(['laboratory', 'simulation', 'assumption']).toContain(effect.evidence);
        expect(effect.status.length).toBeGreaterThan(3);
      }
    }
  });

  it('an air conditioner neither heats nor has a reversing valve', () => {
    const unit = { unitKind: 'airConditioner', level: 0.2 } as const;
    expect(faultEffect({ ...INSIDE_HEATING, ...unit, cause: 'lowCharge' })).toEqual({
      kind: 'none',
      why: { code: 'noHeating' },
    });
    expect(faultEffect({ ...INSIDE, ...unit, cause: 'reversingValveLeaking' })).toEqual({
      kind: 'none',
      why: { code: 'noReversingValve' },
    });
    expect(faultEffect({ ...INSIDE, ...unit, cause: 'lowCharge' }).kind).toBe('effect');
  });

  it('refuses a level below 0 and what is no number', () => {
    const at = { ...INSIDE, cause: 'lowCharge' } as const;
    expect(() => faultEffect({ ...at, level: -0.1 })).toThrow('level');
    expect(() => faultEffect({ ...at, level: Number.NaN })).toThrow('level');
    expect(() => faultEffect({ ...at, outdoorF: Number.NaN, level: 0.1 })).toThrow('not finite');
  });
});
