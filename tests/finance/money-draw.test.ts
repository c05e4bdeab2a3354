import { expect, test } from 'vitest';
import { moneyBasis } from '@/lib/finance/money-basis';
import { deviations, likelyDraw } from '@/lib/finance/money-draw';
import table from '@/lib/visit/data/assumptions.json';
import { energyOf, exampleCosts, exampleVisit, findingsOf, hotDischarge } from './fixtures';

const energy = energyOf(exampleCosts);
const quoted = { quotedUsd: 9000, scenarioId: 'single' };
const basis = (over = {}, findings = findingsOf('lowCharge')) =>
  moneyBasis(exampleVisit(over), findings, energy);
const inputs = (...args: Parameters<typeof deviations>) => deviations(...args).map((d) => d.input);

test('property: the likely draw holds the likely value of everything', () => {
  const draw = likelyDraw(basis(), energy, quoted);
  expect(draw).toMatchObject({ ageYears: 15, foundHazardRatio: 1.2, replacementUsd: 9000 });
  expect(draw.energyUsd).toEqual(
    Object.fromEntries(Object.entries(exampleCosts).map(([id, c]) => [id, c.likely])),
  );
  expect(draw.values.medianLifeYears).toBe(table.values.medianLifeYears.likely);
  expect(likelyDraw(basis(), energy, { scenarioId: 'healthy' }).replacementUsd).toBe(3 * 2900);
  const hot = basis({}, findingsOf('lowCharge', [hotDischarge]));
  expect(likelyDraw(hot, energy, quoted).foundHazardRatio).toBe(1.5);
});

test('property: only what is uncertain here varies', () => {
  const always = [
    'loss',
    'lossRecovered',
    'inflationFracPerYear',
    'electricityEscalationFracPerYear',
    'survivalShape',
  ];
  always.push('medianLifeYears', 'outOfHoursPremiumFrac', 'upkeepUsdPerYear', 'smallRepairsOldUsdPerYear');
  always.push('smallRepairsNewUsdPerYear', 'repairSuccessFrac');
  expect(inputs(basis(), energy, quoted).sort()).toEqual([...always, 'ailingHazardRatio'].sort());
  expect(inputs(basis({}, findingsOf()), energy, { scenarioId: 'healthy' }).sort()).toEqual(
    [...always, 'replacementUsdPerTon'].sort(),
  );
  const unknownAge = basis({ unit: { kind: 'heatPump', nominalTons: 3 } }, findingsOf());
  expect(inputs(unknownAge, energy, quoted)).toContain('ageYears');
  const assumed = { ...basis(), priceAssumed: true, needAssumed: true };
  expect(inputs(assumed, energy, quoted)).toEqual(
    expect.arrayContaining(['electricityUsdPerKwh', 'sizingFactorFrac']),
  );
  expect(inputs(assumed, energy, quoted)).not.toContain('discountFracPerYear');
});

test('property: loss moves every scenario together, recovery only repairs, price and need all in proportion', () => {
  const all = deviations({ ...basis(), priceAssumed: true, needAssumed: true }, energy, quoted);
  const of = (input: string) => {
    const found = all.find((d) => d.input === input);
    if (found === undefined) throw new Error(input);
    return found;
  };
  expect(of('loss').low.energyUsd).toMatchObject({ asFound: 1640, drier: 1490, single: 1180 });
  expect(of('loss').high.energyUsd).toMatchObject({ asFound: 2180, drier: 1600, single: 1180 });
  expect(of('lossRecovered').low.energyUsd).toMatchObject({ asFound: 1890, drier: 1650, orifice: 1700 });
  expect(of('electricityUsdPerKwh').high.energyUsd.asFound).toBeCloseTo((1890 * 0.22) / 0.16, 9);
  expect(of('sizingFactorFrac').low.energyUsd.single).toBeCloseTo(1180 * 1.15, 9);
  expect(of('ailingHazardRatio').high.foundHazardRatio).toBe(1.6);
  expect(of('upkeepUsdPerYear').low.values.upkeepUsdPerYear).toBe(100);
});

test('property: an energy cost that is no cost is our own mistake', () => {
  const broken = energyOf({ ...exampleCosts, asFound: { likely: Number.NaN } });
  expect(() => likelyDraw(basis(), broken, quoted)).toThrow('energy cost');
});
