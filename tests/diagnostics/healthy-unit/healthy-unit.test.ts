import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import words from '@/lib/diagnostics/healthy-unit/wording/en.json';
import type { Ratings, Unit } from '@/lib/visit/unit';

const visitDate = '2026-11-01';
const build = (unit: Unit, more: Partial<Parameters<typeof healthyUnit>[0]> = {}) =>
  healthyUnit({ unit, visitDate, ...more });
const fact = (unit: ReturnType<typeof healthyUnit>, name: string) => unit.facts.find((f) => f.name === name);

describe('wiring: what the model is built from', () => {
  it('size and kind alone are enough: minimum of the assumed year, all marked assumed', () => {
    const unit = build({ kind: 'heatPump', nominalTons: 3 });
    // 2026 less the assumed age of 12 years falls under the rule of 2006
    expect(fact(unit, 'manufactureYear')?.value).toBe(2014);
    expect(unit.cooling.seasonalBtuPerWh).toBe(13);
    expect(unit.heating?.seasonalBtuPerWh).toBe(7.7);
    expect(unit.cooling.basis).toBe('assumed');
    expect(unit.notes.map((n) => n.code)).toEqual(['minimumOfYear', 'minimumOfYear', 'stripKwAssumed']);
  });

  it('the assumed age can be set in the visit', () => {
    const age = { key: 'ageYears' as const, low: 18, likely: 22, high: 26, source: 'neighbour' };
    expect(build({ kind: 'heatPump', nominalTons: 3 }, { assumptions: [age] }).cooling.seasonalBtuPerWh).toBe(
      10,
    );
  });

  it('each mode keeps the procedure of its own rating; the newer wins where both are given', () => {
    const unit = build({
      kind: 'heatPump',
      nominalTons: 3,
      manufactureYear: 2024,
      ratings: { seerBtuPerWh: 16, seer2BtuPerWh: 15.2, hspfBtuPerWh: 9 },
    });
    expect(unit.cooling).toMatchObject({ procedure: 'newer', seasonalBtuPerWh: 15.2, basis: 'nameplate' });
    expect(unit.heating).toMatchObject({ procedure: 'older', seasonalBtuPerWh: 9 });
    expect(unit.notes).toContainEqual({ code: 'bothRatings', values: { mode: 'cooling' } });
  });

  it('an EER of the other procedure is not used', () => {
    const base: Ratings = { seer2BtuPerWh: 15.2 };
    const plain = build({ kind: 'airConditioner', nominalTons: 3, ratings: base });
    const other = build({ kind: 'airConditioner', nominalTons: 3, ratings: { ...base, eerBtuPerWh: 12.5 } });
    const same = build({ kind: 'airConditioner', nominalTons: 3, ratings: { ...base, eer2BtuPerWh: 11.5 } });
    expect(other.cooling).toEqual(plain.cooling);
    expect(same.cooling.outdoorUnitW).not.toBeCloseTo(plain.cooling.outdoorUnitW, 0);
  });

  it('cyclic coefficients follow the published limits', () => {
    const cd = (ratings: Ratings) => {
      const unit = build({ kind: 'heatPump', nominalTons: 3, ratings });
      return [unit.cooling.cyclicFrac, unit.heating?.cyclicFrac];
    };
    expect(cd({ seerBtuPerWh: 12.99, hspfBtuPerWh: 6.99 })).toEqual([0.2, 0.2]);
    expect(cd({ seerBtuPerWh: 13, hspfBtuPerWh: 7 })).toEqual([0.07, 0.11]);
    expect(cd({ seer2BtuPerWh: 12.34, hspf2BtuPerWh: 5.94 })).toEqual([0.2, 0.2]);
    expect(cd({ seer2BtuPerWh: 12.35, hspf2BtuPerWh: 5.95 })).toEqual([0.07, 0.11]);
  });

  it('blower watts follow the motor: 0.5 and 0.375 W per cfm at 400 cfm per ton', () => {
    expect(build({ kind: 'airConditioner', nominalTons: 2, blower: 'psc' }).blowerW).toBe(400);
    expect(build({ kind: 'airConditioner', nominalTons: 2, blower: 'ecm' }).blowerW).toBe(300);
    expect(build({ kind: 'airConditioner', nominalTons: 2, manufactureYear: 2019 }).blower).toBe('psc');
    expect(build({ kind: 'airConditioner', nominalTons: 2, manufactureYear: 2020 }).blower).toBe('ecm');
  });

  it('electric heat: recorded, assumed for heat pumps in 5 kW steps, none for air conditioners', () => {
    expect(build({ kind: 'heatPump', nominalTons: 3, electricHeatKw: 7.5 }).stripKw).toBe(7.5);
    expect(build({ kind: 'heatPump', nominalTons: 1.5 }).stripKw).toBe(5);
    expect(build({ kind: 'heatPump', nominalTons: 4 }).stripKw).toBe(15);
    expect(build({ kind: 'airConditioner', nominalTons: 4 }).stripKw).toBe(0);
  });

  it('an air conditioner has no heating', () => {
    expect(build({ kind: 'airConditioner', nominalTons: 3 }).heating).toBeUndefined();
  });

  it('units of several speeds follow published points, and say so', () => {
    const ratings: Ratings = { seer2BtuPerWh: 18, hspf2BtuPerWh: 9 };
    const unit = build({ kind: 'heatPump', nominalTons: 3, ratings }, { tier: 'variableSpeed' });
    expect(unit.cooling.speeds?.speeds).toHaveLength(3);
    expect(unit.cutOutF).toBe(-20);
    expect(unit.notes.map((n) => n.code)).toContain('speedsInterpolated');
    // EER2 by the published regression: 0.31 x 18 + 6.45
    expect(fact(unit, 'coolingRatingAt95')?.value).toBeCloseTo(12.03, 9);
    const two = build({ kind: 'heatPump', nominalTons: 3, ratings }, { tier: 'twoSpeed' });
    expect(two.heating?.speeds?.speeds).toHaveLength(2);
    expect(two.cutOutF).toBe(0);
    expect(build({ kind: 'heatPump', nominalTons: 3, ratings }).cooling.speeds).toBeUndefined();
  });

  it('an older rating of such a unit is converted, and said to be', () => {
    const older = build(
      { kind: 'airConditioner', nominalTons: 3, ratings: { seerBtuPerWh: 20 } },
      { tier: 'variableSpeed' },
    );
    const newer = build(
      { kind: 'airConditioner', nominalTons: 3, ratings: { seer2BtuPerWh: 19 } },
      { tier: 'variableSpeed' },
    );
    expect(older.cooling.speeds).toEqual(newer.cooling.speeds);
    expect(older.notes).toContainEqual({ code: 'olderRatingConverted', values: { mode: 'cooling' } });
  });
});

const unitArbitrary: fc.Arbitrary<Unit> = fc
  .record({
    kind: fc.constantFrom('heatPump' as const, 'airConditioner' as const),
    nominalTons: fc.double({ min: 0.75, max: 6, noNaN: true }),
    manufactureYear: fc.integer({ min: 1970, max: 2030 }),
    ratings: fc.record(
      {
        seerBtuPerWh: fc.double({ min: 5, max: 30, noNaN: true }),
        eerBtuPerWh: fc.double({ min: 4, max: 20, noNaN: true }),
        hspfBtuPerWh: fc.double({ min: 4, max: 16, noNaN: true }),
        seer2BtuPerWh: fc.double({ min: 5, max: 30, noNaN: true }),
        eer2BtuPerWh: fc.double({ min: 4, max: 20, noNaN: true }),
        hspf2BtuPerWh: fc.double({ min: 4, max: 14, noNaN: true }),
        cooling95Btuh: fc.double({ min: 6_000, max: 80_000, noNaN: true }),
        heating47Btuh: fc.double({ min: 6_000, max: 80_000, noNaN: true }),
        heating17Btuh: fc.double({ min: 3_000, max: 60_000, noNaN: true }),
      },
      { requiredKeys: [] },
    ),
  })
  .map((unit) => unit as Unit);

describe('property: every unit the schema allows', () => {
  it('gives finite, positive performance, words for every note and fact, and survives JSON', () => {
    const phrases: Readonly<Record<string, string>> = words;
    fc.assert(
      fc.property(
        unitArbitrary,
        fc.constantFrom('singleSpeed' as const, 'twoSpeed' as const, 'variableSpeed' as const),
        (unit, tier) => {
          const healthy = build(unit, { tier });
          const modes = [healthy.cooling, ...(healthy.heating === undefined ? [] : [healthy.heating])];
          const figures = modes.flatMap((m) => [
            m.grossCapacityBtuh,
            m.outdoorUnitW,
            m.sdLnCapacity,
            m.sdLnPower,
            m.seasonalBtuPerWh,
          ]);
          expect(figures.every((v) => Number.isFinite(v) && v > 0)).toBe(true);
          expect(healthy.notes.filter((n) => phrases[n.code] === undefined)).toEqual([]);
          expect(healthy.facts.filter((f) => phrases[`fact.${f.name}`] === undefined)).toEqual([]);
          expect(JSON.parse(JSON.stringify(healthy))).toEqual(healthy);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('a better seasonal rating never draws more power', () => {
    fc.assert(
      fc.property(fc.integer({ min: 13, max: 24 }), fc.integer({ min: 7, max: 9 }), (seer, hspf) => {
        const at = (s: number, h: number) =>
          build({ kind: 'heatPump', nominalTons: 3, ratings: { seerBtuPerWh: s, hspfBtuPerWh: h } });
        expect(at(seer + 1, hspf).cooling.outdoorUnitW).toBeLessThan(at(seer, hspf).cooling.outdoorUnitW);
        expect(at(seer, hspf + 1).heating?.outdoorUnitW ?? 0).toBeLessThan(
          at(seer, hspf).heating?.outdoorUnitW ?? 0,
        );
      }),
    );
  });

  it('less is known, wider it gets', () => {
    const rated = build({
      kind: 'airConditioner',
      nominalTons: 3,
      manufactureYear: 2010,
      ratings: { seerBtuPerWh: 14, cooling95Btuh: 35_000 },
    });
    const dated = build({ kind: 'airConditioner', nominalTons: 3, manufactureYear: 2010 });
    const guessed = build({ kind: 'airConditioner', nominalTons: 3 });
    expect(rated.cooling.sdLnPower).toBeLessThan(dated.cooling.sdLnPower);
    expect(dated.cooling.sdLnPower).toBeLessThan(guessed.cooling.sdLnPower);
    expect(rated.cooling.sdLnCapacity).toBeLessThan(dated.cooling.sdLnCapacity);
  });
});
