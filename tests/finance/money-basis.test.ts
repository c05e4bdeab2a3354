import { expect, test } from 'vitest';
import { moneyBasis } from '@/lib/finance/money-basis';
import { energyOf, exampleCosts, exampleVisit, findingsOf, hotDischarge } from './fixtures';

const energy = energyOf(exampleCosts);
const basisOf = (over: Parameters<typeof exampleVisit>[0], findings = findingsOf()) =>
  moneyBasis(exampleVisit(over), findings, energy);
const codes = (b: ReturnType<typeof basisOf>) => b.notes.map((n) => n.code);

test('property: a stay is counted in whole years, said so when rounded or assumed', () => {
  const stay = (stayYears?: number) => basisOf({ site: stayYears === undefined ? {} : { stayYears } });
  expect([stay(1), stay(7.2), stay(10), stay(24.5), stay(25)].map((b) => b.stayYears)).toEqual([
    1, 8, 10, 25, 25,
  ]);
  expect(stay(7.2).notes).toEqual([{ code: 'stayRoundedUp', values: { given: 7.2, years: 8 } }]);
  expect(stay(10).notes).toEqual([]);
  expect([stay().stayYears, codes(stay())]).toEqual([10, ['stayAssumed']]);
});

test('property: age from the year of manufacture, else assumed with its range', () => {
  const unit = (manufactureYear?: number) =>
    basisOf({
      unit: {
        kind: 'heatPump',
        nominalTons: 3,
        ...(manufactureYear === undefined ? {} : { manufactureYear }),
      },
    });
  expect(unit(2011).ageYears).toEqual({ low: 15, likely: 15, high: 15 });
  expect(unit(2026).ageYears.likely).toBe(0);
  expect(unit(2027).ageYears.likely).toBe(0);
  expect([unit().ageYears, codes(unit())]).toEqual([{ low: 8, likely: 12, high: 16 }, ['ageAssumed']]);
});

test('property: what raises the risk, and what does not', () => {
  const risk = (findings: ReturnType<typeof findingsOf>) => basisOf({}, findings).riskKeys;
  expect(risk(findingsOf('lowCharge', [hotDischarge]))).toEqual([
    'hotDischargeHazardRatio',
    'ailingHazardRatio',
  ]);
  expect(risk(findingsOf('lowIndoorAirflow'))).toEqual([]);
  expect(risk(findingsOf('runCapacitorWeak'))).toEqual(['ailingHazardRatio']);
  expect(risk(findingsOf('none'))).toEqual([]);
  expect(risk(findingsOf(undefined, [{ ...hotDischarge, severity: 'conflict' }]))).toEqual([]);
  expect(risk(findingsOf(undefined, [{ ...hotDischarge, readings: ['suctionPsig'] }]))).toEqual([]);
});

test('property: conventions of the visit win over the defaults', () => {
  expect(basisOf({})).toMatchObject({ timing: 'endOfYear', residual: 'linear' });
  expect(basisOf({ convention: { timing: 'midYear', residual: 'none' } })).toMatchObject({
    timing: 'midYear',
    residual: 'none',
  });
});
