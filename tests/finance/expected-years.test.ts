import fc from 'fast-check';
import { expect, test } from 'vitest';
import { causeChances } from '@/lib/energy/recovery';
import { expectedYears, firstYearEnergyUsd } from '@/lib/finance/expected-years';
import { moneyBasis } from '@/lib/finance/money-basis';
import { likelyDraw, type MoneyDraw } from '@/lib/finance/money-draw';
import { lifeCurve, survivesFrac } from '@/lib/finance/survival';
import { near } from './checks';
import { drier, energyOf, exampleCosts, exampleVisit, findingsOf, leave, orifice, single } from './fixtures';

const energy = energyOf(exampleCosts);
const cause = 'meteringRestriction';
const sure = causeChances(findingsOf(cause));
const draw = likelyDraw(
  moneyBasis(exampleVisit(), findingsOf(cause), energy),
  energy,
  {
    quotedUsd: 9000,
    scenarioId: 'single',
  },
  [],
);
const withValues = (values: Partial<MoneyDraw['values']>): MoneyDraw => ({
  ...draw,
  values: { ...draw.values, ...values },
});
const curve = lifeCurve(draw.values.medianLifeYears, draw.values.survivalShape);

test('outside: leave as is, first two years by hand', () => {
  const years = expectedYears(leave, draw, 10, sure, 'single');
  const alive = survivesFrac(curve, 15, 1, 1.2);
  expect(years).toHaveLength(10);
  near(years[0]?.energyUsd ?? 0, 1890, 1e-9, 'year 1 runs the unit as found');
  near(years[0]?.smallRepairsUsd ?? 0, 140, 1e-9, 'an old unit');
  near(years[0]?.failsFrac ?? 0, 1 - alive, 1e-12, 'chance in year 1');
  near(years[1]?.energyUsd ?? 0, alive * 1890 + (1 - alive) * 1180, 1e-9, 'year 2');
  near(years[1]?.smallRepairsUsd ?? 0, alive * 140 + (1 - alive) * 40, 1e-9, 'year 2');
  near(years[1]?.failedByFrac ?? 0, 1 - survivesFrac(curve, 15, 2, 1.2), 1e-12, 'by the end of year 2');
  near(years[0]?.laterLeftFrac ?? 0, 1 - alive, 1e-12, 'a new unit is worth all of its price');
});

test('identity: a repair is the mixture of cured and not cured', () => {
  const at = (repairSuccessFrac: number) =>
    expectedYears(orifice, withValues({ repairSuccessFrac }), 8, sure, 'single');
  const [none, half, all] = [at(0), at(0.5), at(1)];
  expect(none).toEqual(expectedYears(leave, draw, 8, sure, 'single'));
  for (const [k, year] of half.entries())
    near(year.energyUsd, ((none[k]?.energyUsd ?? 0) + (all[k]?.energyUsd ?? 0)) / 2, 1e-9, `${k}`);
  near(
    firstYearEnergyUsd(orifice, withValues({ repairSuccessFrac: 0.85 }), sure),
    0.85 * 1510 + 0.15 * 1890,
    1e-9,
    'year 1',
  );
  near(all[7]?.failedByFrac ?? 0, 1 - survivesFrac(curve, 15, 8), 1e-12, 'a cure takes the raised risk back');
});

test('property: a repair whose actions do not treat the suspected cause leaves the risk as it is', () => {
  const certain = withValues({ repairSuccessFrac: 1 });
  const by = (choice: typeof drier) =>
    expectedYears(choice, certain, 8, sure, 'single')[7]?.failedByFrac ?? 0;
  near(by({ ...drier, actions: ['runCapacitor'] }), 1 - survivesFrac(curve, 15, 8, 1.2), 1e-12, 'raised');
  near(
    by({ ...drier, actions: ['meteringOrificeCleaning'] }),
    1 - survivesFrac(curve, 15, 8),
    1e-12,
    'taken back',
  );
});

test('outside: a new compressor takes part of the risk of age, whether or not it meets the cause', () => {
  const choice = { ...orifice, actions: [...orifice.actions, 'compressor' as const] };
  const by = (actions: typeof orifice.actions, repairSuccessFrac: number) =>
    expectedYears({ ...choice, actions }, withValues({ repairSuccessFrac }), 8, sure, 'single')[7]
      ?.failedByFrac ?? 0;
  // by hand: exp(-0.55 H) with H the cumulative hazard from 15 to 23 years
  const hazard = Math.LN2 * ((23 / 18) ** curve.shape - (15 / 18) ** curve.shape);
  near(by(choice.actions, 1), 1 - Math.exp(-0.55 * hazard), 1e-12, 'aimed at the cause');
  near(by(['compressor'], 1), 1 - Math.exp(-0.55 * 1.2 * hazard), 1e-12, 'the raised risk stays');
  near(by(choice.actions, 0), 1 - Math.exp(-0.55 * 1.2 * hazard), 1e-12, 'not cured, but new all the same');
  near(by(orifice.actions, 1), 1 - Math.exp(-hazard), 1e-12, 'the old compressor');
});

test('property: a bought unit starts new and keeps part of its price', () => {
  const years = expectedYears(single, draw, 9, sure, 'single');
  near(years[8]?.failedByFrac ?? 0, 1 - survivesFrac(curve, 0, 9), 1e-12, 'from age 0');
  near(
    years[8]?.boughtLeftFrac ?? 0,
    survivesFrac(curve, 0, 9) * (1 - 9 / 18),
    1e-12,
    'half of its life left',
  );
  near(years[0]?.smallRepairsUsd ?? 0, 40, 1e-9, 'a new unit');
});

test('property: the first years do not depend on how many follow', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 25 }), fc.constantFrom(leave, orifice, single), (n, choice) => {
      const short = expectedYears(choice, draw, n, sure, 'single');
      expect(expectedYears(choice, draw, 25, sure, 'single').slice(0, n)).toEqual(short);
    }),
  );
});

test('property: a choice without an energy scenario is our own mistake', () => {
  expect(() => expectedYears({ ...orifice, id: 'unknown' }, draw, 3, sure, 'single')).toThrow(
    'no energy scenario',
  );
  expect(() => expectedYears(leave, draw, 3, sure, 'unknown')).toThrow('no energy scenario');
});
