import { expect, test } from 'vitest';
import { moneyBasis } from '@/lib/finance/money-basis';
import { deviations, likelyDraw } from '@/lib/finance/money-draw';
import table from '@/lib/visit/data/assumptions.json';
import { near } from './checks';
import { drier, energyOf, exampleCosts, exampleVisit, findingsOf, hotDischarge } from './fixtures';

const energy = energyOf(exampleCosts);
/** With what the need of the house and the power of a new unit leave open. */
const open = energyOf(
  Object.fromEntries(
    Object.entries(exampleCosts).map(([id, c]) => [
      id,
      {
        ...c,
        loadLow: c.likely * 0.8,
        loadHigh: c.likely * 1.3,
        ...(id === 'single' ? { ratedLow: c.likely * 0.95, ratedHigh: c.likely * 1.06 } : {}),
      },
    ]),
  ),
);
const repairs = ['drier', 'orifice'];
const quoted = { quotedUsd: 9000, scenarioId: 'single' };
const basis = (over = {}, findings = findingsOf('lowCharge')) =>
  moneyBasis(exampleVisit(over), findings, energy);
const inputs = (...args: Parameters<typeof deviations>) => deviations(...args).map((d) => d.input);

test('property: the likely draw holds the likely value of everything', () => {
  const draw = likelyDraw(basis(), energy, quoted, repairs);
  expect(draw).toMatchObject({ ageYears: 15, hotRatio: 1, replacementUsd: 9000 });
  expect(draw.energyUsd).toEqual(
    Object.fromEntries(Object.entries(exampleCosts).map(([id, c]) => [id, c.likely])),
  );
  expect(draw.values.medianLifeYears).toBe(table.values.medianLifeYears.likely);
  expect(likelyDraw(basis(), energy, { scenarioId: 'healthy' }, repairs).replacementUsd).toBe(3 * 2900);
  const hot = basis({}, findingsOf('lowCharge', [hotDischarge]));
  expect(likelyDraw(hot, energy, quoted, repairs).hotRatio).toBe(1.5);
});

test('property: only what is uncertain here varies', () => {
  const always = [
    'loss',
    'lossRecovered',
    'inflationFracPerYear',
    'electricityEscalationFracPerYear',
    'survivalShape',
  ];
  always.push(
    'daysWithoutPerFailure',
    'medianLifeYears',
    'outOfHoursPremiumFrac',
    'upkeepUsdPerYear',
    'smallRepairsOldUsdPerYear',
  );
  always.push('smallRepairsNewUsdPerYear', 'repairSuccessFrac', 'valueLeft', 'discountFracPerYear');
  expect(inputs(basis(), energy, quoted, repairs).sort()).toEqual([...always, 'ailingHazardRatio'].sort());
  expect(inputs(basis({}, findingsOf()), energy, { scenarioId: 'healthy' }, repairs).sort()).toEqual(
    [...always, 'replacementUsdPerTon'].sort(),
  );
  const unknownAge = basis({ unit: { kind: 'heatPump', nominalTons: 3 } }, findingsOf());
  expect(inputs(unknownAge, energy, quoted, repairs)).toContain('ageYears');
  const assumed = { ...basis(), priceAssumed: true };
  expect(inputs(assumed, open, quoted, repairs).sort()).toEqual(
    [...always, 'ailingHazardRatio', 'electricityUsdPerKwh', 'sizingFactorFrac', 'newUnit'].sort(),
  );
  const compressor = { ...drier, actions: [...drier.actions, 'compressor' as const] };
  expect(inputs(basis({ choices: [compressor] }), energy, quoted, repairs).sort()).toEqual(
    [...always, 'ailingHazardRatio', 'newCompressorHazardRatio'].sort(),
  );
  const stances = deviations(basis(), energy, quoted, repairs)
    .filter((d) => d.stance)
    .map((d) => d.input);
  expect(stances).toEqual(['discountFracPerYear', 'valueLeft']);
});

test('property: loss and need move every scenario together, recovery only repairs, power new units, price all in proportion', () => {
  const all = deviations({ ...basis(), priceAssumed: true }, open, quoted, repairs);
  const of = (input: string) => {
    const found = all.find((d) => d.input === input);
    if (found === undefined) throw new Error(input);
    return found;
  };
  expect(of('loss').low.energyUsd).toMatchObject({ asFound: 1640, drier: 1490, single: 1180 });
  expect(of('loss').high.energyUsd).toMatchObject({ asFound: 2180, drier: 1600, single: 1180 });
  expect(of('lossRecovered').low.energyUsd).toMatchObject({ asFound: 1890, drier: 1650, orifice: 1700 });
  expect(of('electricityUsdPerKwh').high.energyUsd.asFound).toBeCloseTo((1890 * 0.22) / 0.16, 9);
  expect(of('sizingFactorFrac').low.energyUsd.single).toBeCloseTo(1180 * 0.8, 9);
  expect(of('sizingFactorFrac').high.energyUsd.asFound).toBeCloseTo(1890 * 1.3, 9);
  expect(of('newUnit').low.energyUsd).toMatchObject({ asFound: 1890, drier: 1520, single: 1180 * 0.95 });
  expect(of('newUnit').high.energyUsd.single).toBeCloseTo(1180 * 1.06, 9);
  expect(of('ailingHazardRatio').high.values.ailingHazardRatio).toBe(1.6);
  expect(of('upkeepUsdPerYear').low.values.upkeepUsdPerYear).toBe(100);
});

test('property: an energy cost that is no cost is our own mistake', () => {
  const broken = energyOf({ ...exampleCosts, asFound: { likely: Number.NaN } });
  expect(() => likelyDraw(basis(), broken, quoted, repairs)).toThrow('energy cost');
});

test('property: no value left is a stance only where it counts at all', () => {
  const none = basis({ convention: { residual: 'none' } });
  expect(inputs(none, energy, quoted, repairs)).not.toContain('valueLeft');
  expect(likelyDraw(none, energy, quoted, repairs).valueLeftFrac).toBe(0);
  const counted = deviations(basis(), energy, quoted, repairs).find((d) => d.input === 'valueLeft');
  expect([counted?.low.valueLeftFrac, counted?.high.valueLeftFrac]).toEqual([0, 1]);
});

test('property: a repair never makes the unit use more than as found', () => {
  // at the mild end a unit may be better than its healthy reference; moving it back to the reference is no repair
  const better = energyOf({ ...exampleCosts, asFound: { likely: 1890, mild: 1400, severe: 2180 } });
  const loss = deviations(basis(), better, quoted, repairs).find((d) => d.input === 'loss');
  near(loss?.low.energyUsd.drier ?? 0, 1400, 1e-9, 'not 1,490');
  near(loss?.low.energyUsd.single ?? 0, 1180, 1e-9, 'a new unit is another matter');
});
