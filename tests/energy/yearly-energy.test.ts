import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cities } from '@/lib/energy/city-list';
import { climateFor } from '@/lib/energy/climate';
import words from '@/lib/energy/wording/en.json';
import type { Choice } from '@/lib/visit/choice';
import { Visit } from '@/lib/visit/visit';
import { energyOf, exampleLoss, exampleVisit, leave, scenarioNamed } from './example-visit';

const phrases: Readonly<Record<string, string>> = words;
const clean: Choice = {
  kind: 'repair',
  id: 'clean',
  name: 'Clean the orifice',
  priceLines: [],
  actions: ['meteringOrificeCleaning'],
};
const perfect: Choice = { ...clean, id: 'perfect', lossRecoveredFrac: { low: 1, likely: 1, high: 1 } };
const wrong: Choice = { ...clean, id: 'wrong', actions: ['outdoorCoilCleaning'] };
const replace: Choice = {
  kind: 'replace',
  id: 'new',
  name: 'New heat pump',
  priceLines: [],
  unitKind: 'heatPump',
  tier: 'singleSpeed',
  nominalTons: 3,
  ratings: { seer2BtuPerWh: 14.3, hspf2BtuPerWh: 7.5 },
};
const visit = exampleVisit({
  suspectedCause: { cause: 'meteringRestriction' },
  choices: [leave, clean, perfect, wrong, replace],
});
const result = energyOf(visit);

describe('wiring: scenarios', () => {
  it('the example is a visit the schema takes', () => {
    expect(Visit.safeParse(visit).success).toBe(true);
  });

  it('healthy, as found and one per choice, in this order', () => {
    expect(result.scenarios.map((s) => s.id)).toEqual([
      'healthy',
      'asFound',
      'leave',
      'clean',
      'perfect',
      'wrong',
      'new',
    ]);
  });

  it('leaving it is the unit as found', () => {
    expect({ ...scenarioNamed(result, 'leave'), id: 'asFound' }).toEqual(scenarioNamed(result, 'asFound'));
  });

  it('a perfect repair is the healthy unit, at every end of the loss', () => {
    const healthy = scenarioNamed(result, 'healthy');
    const repaired = scenarioNamed(result, 'perfect');
    expect(repaired.likely).toEqual(healthy.likely);
    expect(repaired.severe).toEqual(healthy.severe);
    expect(repaired.severe.costUsd).toBeCloseTo(healthy.likely.costUsd, 9);
    expect(repaired.costUsd.high).toBeCloseTo(healthy.costUsd.high, 9);
    expect(repaired.balancePointF).toBe(healthy.balancePointF);
  });

  it('a repair that misses the cause gives nothing back, and says so', () => {
    expect(scenarioNamed(result, 'wrong').likely).toEqual(scenarioNamed(result, 'asFound').likely);
    expect(result.notes.map((n) => n.code)).toContain('repairMissesCause');
  });

  it('costs stand in order: healthy, repaired, as found', () => {
    const cost = (id: string) => scenarioNamed(result, id).costUsd.likely;
    expect(cost('healthy')).toBeLessThan(cost('clean'));
    expect(cost('clean')).toBeLessThan(cost('asFound'));
    expect(cost('new')).toBeLessThan(cost('healthy'));
  });

  it('the ailing unit needs strips at milder temperatures, and more of them', () => {
    const healthy = scenarioNamed(result, 'healthy');
    const asFound = scenarioNamed(result, 'asFound');
    expect(asFound.balancePointF).toBeGreaterThan((healthy.balancePointF ?? 99) + 3);
    expect(asFound.likely.stripHeatKwh).toBeGreaterThan(2 * healthy.likely.stripHeatKwh);
  });

  it('fixed monthly charges change nothing', () => {
    const charged = energyOf({
      ...visit,
      tariff: { kind: 'flat', energyUsdPerKwh: 0.15, fixedUsdPerMonth: 30 },
    });
    expect(charged.scenarios).toEqual(result.scenarios);
  });
});

describe('wiring: who heats the house', () => {
  const airConditioner = { kind: 'airConditioner' as const, nominalTons: 3, manufactureYear: 1998 };

  it('an air conditioner is asked for cooling only, and so is the heat pump that replaces it', () => {
    const r = energyOf(exampleVisit({ unit: airConditioner, choices: [replace] }), {});
    expect(scenarioNamed(r, 'healthy').likely.heatDeliveredBtu).toBe(0);
    expect(scenarioNamed(r, 'new').likely.heatDeliveredBtu).toBe(0);
    expect(scenarioNamed(r, 'new').balance).toEqual([]);
    expect(r.notes.map((n) => n.code)).toContain('heatingNotCounted');
  });

  it('with electric heat recorded, that heats the house, and a heat pump saves most of it', () => {
    const r = energyOf(
      exampleVisit({ unit: { ...airConditioner, electricHeatKw: 15 }, choices: [replace] }),
      {},
    );
    const strips = scenarioNamed(r, 'healthy').likely;
    const pump = scenarioNamed(r, 'new').likely;
    expect(strips.heatingCompressorKwh).toBe(0);
    expect(strips.stripHeatKwh).toBeGreaterThan(5_000);
    expect(pump.heatDeliveredBtu).toBeCloseTo(strips.heatDeliveredBtu, 0);
    expect(pump.stripHeatKwh + pump.heatingCompressorKwh).toBeLessThan(0.5 * strips.stripHeatKwh);
    expect(r.notes.map((n) => n.code)).toContain('stripsHeatHouse');
  });

  it('an air conditioner in a heat pump’s place leaves heating to the strips', () => {
    const cooling: Choice = { ...replace, unitKind: 'airConditioner', ratings: { seer2BtuPerWh: 14.3 } };
    const r = energyOf(exampleVisit({ choices: [cooling] }));
    expect(scenarioNamed(r, 'new').likely.heatingCompressorKwh).toBe(0);
    expect(scenarioNamed(r, 'new').likely.stripHeatKwh).toBeGreaterThan(5_000);
    expect(r.notes.map((n) => n.code)).toContain('replacementStripsHeat');
  });

  it('another system heating the house takes heating out of every scenario', () => {
    const r = energyOf({ ...visit, site: { ...visit.site, otherHeat: true } });
    expect(r.scenarios.filter((s) => s.likely.heatDeliveredBtu > 0)).toEqual([]);
    expect(r.notes.map((n) => n.code)).toContain('otherHeat');
  });

  it('a missing loss counts as healthy, and says so', () => {
    const r = energyOf(visit, { heating: exampleLoss.heating as NonNullable<typeof exampleLoss.heating> });
    expect(scenarioNamed(r, 'asFound').likely.coolingKwh).toBe(scenarioNamed(r, 'healthy').likely.coolingKwh);
    expect(r.notes).toContainEqual({ code: 'lossMissing', values: { mode: 'cooling' } });
  });
});

describe('property: every city and climate', () => {
  it('gives finite, ordered figures, words for every note, and survives JSON', () => {
    expect(cities).toHaveLength(29);
    expect.assertions(1 + 35 * 4);
    const climates = [
      ...cities.map((c) => climateFor({ kind: 'city', city: c.slug })),
      ...(['I', 'II', 'III', 'IV', 'V', 'VI'] as const).map((region) =>
        climateFor({ kind: 'region', region }),
      ),
    ];
    for (const climate of climates) {
      const r = energyOf(visit, exampleLoss, climate);
      expect(JSON.parse(JSON.stringify(r))).toEqual(r);
      const figures = r.scenarios.flatMap((s) => [s.costUsd, s.totalKwh]);
      expect(figures.filter((e) => !(e.low >= 0 && e.low <= e.likely && e.likely <= e.high))).toEqual([]);
      expect(r.notes.filter((n) => phrases[n.code] === undefined)).toEqual([]);
      expect(r.assumptions.filter((a) => phrases[`assumption.${a.name}`] === undefined)).toEqual([]);
    }
  });

  it('a colder city never heats for less', () => {
    // from mild to cold, each colder in every month
    const costs = [
      'miami-fl',
      'tampa-fl',
      'houston-tx',
      'atlanta-ga',
      'wilmington-de',
      'burlington-vt',
      'duluth-mn',
    ].map((slug) => {
      const year = scenarioNamed(
        energyOf(exampleVisit(), exampleLoss, climateFor({ kind: 'city', city: slug })),
        'asFound',
      ).likely;
      return year.heatingCompressorKwh + year.stripHeatKwh;
    });
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
  });

  it('more loss never costs less', () => {
    const share = fc.double({ min: 0.4, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, (a, b) => {
        const at = (ratio: number) => {
          const band = { low: ratio, likely: ratio, high: ratio };
          const one = { low: 1, likely: 1, high: 1 };
          const loss = {
            cooling: { ...exampleLoss.cooling, capacityRatioToHealthy: band, powerRatioToHealthy: one },
            heating: { ...exampleLoss.heating, capacityRatioToHealthy: band, powerRatioToHealthy: one },
          } as typeof exampleLoss;
          return scenarioNamed(energyOf(exampleVisit(), loss), 'asFound').costUsd.likely;
        };
        expect(at(Math.min(a, b))).toBeGreaterThanOrEqual(at(Math.max(a, b)) - 1e-9);
      }),
      { numRuns: 40 },
    );
  });
});
