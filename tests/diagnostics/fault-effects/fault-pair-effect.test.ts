import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airflowAfterCharge } from '@/lib/diagnostics/fault-effects/equivalent-airflow';
import { faultEffect, type KnownEffect } from '@/lib/diagnostics/fault-effects/fault-effect';
import { faultPairEffect } from '@/lib/diagnostics/fault-effects/fault-pair-effect';
import { CauseId } from '@/lib/visit/cause';
import '../support/matchers';
import { codesOf, INSIDE, INSIDE_HEATING, knownEffect, mustBeKnown } from './known-effect';

const eir = (e: KnownEffect): number => e.lnPower.mean - e.lnCapacity.mean;
const hot = { ...INSIDE, indoorF: 80, outdoorF: 95 };

describe('outside: charge with airflow', () => {
  it('capacity by the equivalent-airflow method (published vector: 0.8604 at 20 % and 20 %)', () => {
    const pair = mustBeKnown(
      faultPairEffect(hot, [
        { cause: 'lowCharge', level: 0.2 },
        { cause: 'lowIndoorAirflow', level: 0.2 },
      ]),
    );
    expect(Math.exp(pair.lnCapacity.mean)).toBeCloseToWithin(0.8604, 0.0005); // 80 F is 26.67 degC
    expect(codesOf(pair)).toContain('equivalentAirflow');
  });

  it('cooling efficiency, where the method is harsher than both added, is kept at their sum and marked', () => {
    const faults = [
      { cause: 'lowCharge', level: 0.2 },
      { cause: 'lowIndoorAirflow', level: 0.2 },
    ] as const;
    const [charge, air] = faults.map((fault) => knownEffect({ ...hot, ...fault }));
    const method = airflowAfterCharge('cooling', -0.2, 0.8);
    const pair = mustBeKnown(faultPairEffect(hot, [...faults]));
    expect(charge === undefined || air === undefined).toBe(false);
    const sum = eir(charge as KnownEffect) + eir(air as KnownEffect);
    expect(eir(charge as KnownEffect) + Math.log(method.eirRatio)).toBeGreaterThan(sum);
    expect(eir(pair)).toBeCloseToWithin(sum, 1e-12);
    expect(pair.clamped).toBe(true);
    expect(codesOf(pair)).toContain('interactionKept');
  });

  it('heating: method as it stands (published vector: 0.8434 and COP 0.8211 at 47 F)', () => {
    const pair = mustBeKnown(
      faultPairEffect({ ...INSIDE_HEATING, outdoorF: 47 }, [
        { cause: 'lowIndoorAirflow', level: 0.2 },
        { cause: 'lowCharge', level: 0.2 },
      ]),
    );
    expect(Math.exp(pair.lnCapacity.mean)).toBeCloseToWithin(0.8434, 0.0005);
    expect(Math.exp(-eir(pair))).toBeCloseToWithin(0.8211, 0.0005);
    expect(codesOf(pair)).not.toContain('interactionKept');
  });
});

describe('property: two faults', () => {
  const level = fc.double({ min: 0, max: 0.6, noNaN: true });
  const conditions = fc.record({
    mode: fc.constantFrom('cooling' as const, 'heating' as const),
    metering: fc.constantFrom('txv' as const, 'fixedOrifice' as const, undefined),
    outdoorF: fc.double({ min: -10, max: 115, noNaN: true }),
    indoorF: fc.option(fc.double({ min: 60, max: 85, noNaN: true }), { nil: undefined }),
  });

  it('charge with airflow lies between the worse of the two alone and both added', () => {
    fc.assert(
      fc.property(
        conditions,
        fc.constantFrom('lowCharge' as const, 'overcharge' as const),
        level,
        level,
        (at, cause, a, b) => {
          const one = knownEffect({ ...at, cause, level: a });
          const two = knownEffect({ ...at, cause: 'lowIndoorAirflow', level: b });
          const pair = mustBeKnown(
            faultPairEffect(at, [
              { cause, level: a },
              { cause: 'lowIndoorAirflow', level: b },
            ]),
          );
          const sum = one.lnCapacity.mean + two.lnCapacity.mean;
          expect(pair.lnCapacity.mean).toBeGreaterThanOrEqual(sum - 1e-12);
          expect(pair.lnCapacity.mean).toBeLessThanOrEqual(
            Math.min(one.lnCapacity.mean, two.lnCapacity.mean) + 1e-12,
          );
          expect(eir(pair)).toBeLessThanOrEqual(eir(one) + eir(two) + 1e-12);
          expect(eir(pair)).toBeGreaterThanOrEqual(Math.max(eir(one), eir(two)) - 1e-12);
          expect(pair.lnCapacity.sd).toBeCloseToWithin(
            Math.hypot(one.lnCapacity.sd, two.lnCapacity.sd),
            1e-12,
          );
        },
      ),
      { seed: 11, numRuns: 300 },
    );
  });

  it('the order does not matter, and other pairs add', () => {
    const causes = fc.constantFrom(...CauseId.options);
    const pairs = fc.tuple(causes, causes).filter(([a, b]) => a !== b);
    const joined = new Set(['lowIndoorAirflow,lowCharge', 'lowIndoorAirflow,overcharge']);
    fc.assert(
      fc.property(conditions, pairs, level, level, (at, [a, b], x, y) => {
        const one = { cause: a, level: x };
        const two = { cause: b, level: y };
        const ab = mustBeKnown(faultPairEffect(at, [one, two]));
        const ba = mustBeKnown(faultPairEffect(at, [two, one]));
        expect(ab.lnCapacity.mean).toBeCloseToWithin(ba.lnCapacity.mean, 1e-12);
        expect(ab.lnPower.mean).toBeCloseToWithin(ba.lnPower.mean, 1e-12);
        const alone = [one, two].map((fault) => knownEffect({ ...at, ...fault }).lnCapacity.mean);
        const sum = alone.reduce((s, value) => s + value, 0);
        const special = joined.has(`${a},${b}`) || joined.has(`${b},${a}`);
        const least = special ? Math.min(...alone) : sum;
        expect(ab.lnCapacity.mean).toBeLessThanOrEqual(least + 1e-12);
        expect(ab.lnCapacity.mean).toBeGreaterThanOrEqual(sum - 1e-12);
      }),
      { seed: 12, numRuns: 300 },
    );
  });

  it('refuses one cause twice; has no answer where one of the two has none', () => {
    const twice = { cause: 'lowCharge', level: 0.1 } as const;
    expect(() => faultPairEffect(INSIDE, [twice, twice])).toThrow('twice');
    const conditions = { ...INSIDE, unitKind: 'airConditioner' } as const;
    const valve = { cause: 'reversingValveLeaking', level: 0.1 } as const;
    expect(faultPairEffect(conditions, [twice, valve])).toEqual(faultEffect({ ...conditions, ...valve }));
    expect(faultPairEffect(conditions, [valve, twice]).kind).toBe('none');
  });
});
