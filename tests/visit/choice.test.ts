import { expect, test } from 'vitest';
import { Choice, repairs } from '@/lib/visit/choice';

const common = { id: 'a', name: 'A', priceLines: [] };

test('wiring: a promotional plan, several offers and a later replacement are read as entered', () => {
  const promotional = { kind: 'promotional', rateFracPerYear: 0.2899, promotionMonths: 18, termMonths: 60 };
  const loan = { kind: 'levelLoan', rateFracPerYear: 0.0999, termMonths: 84, firstPaymentDate: '2027-01-15' };
  const entered = {
    kind: 'repairThenReplace',
    ...common,
    actions: ['runCapacitor', 'outdoorCoilCleaning'],
    replaceAfterYears: 3,
    replaceWith: 'new',
    financing: promotional,
    financingOffers: [loan, { kind: 'cash' }],
  };
  expect(Choice.parse(entered)).toEqual(entered);
  expect(Choice.safeParse({ ...entered, financing: { ...promotional, promotionMonths: 0 } }).success).toBe(
    false,
  );
});

test('wiring: bundles and repair-then-replace repair something, leaving and replacing do not', () => {
  const kinds = [
    { kind: 'leave', ...common },
    { kind: 'repair', ...common, actions: ['runCapacitor'] },
    { kind: 'repairThenReplace', ...common, actions: ['runCapacitor'], replaceAfterYears: 2 },
    { kind: 'replace', ...common, unitKind: 'heatPump', tier: 'singleSpeed', nominalTons: 3, ratings: {} },
  ];
  expect(kinds.map((c) => repairs(Choice.parse(c)))).toEqual([false, true, true, false]);
});
