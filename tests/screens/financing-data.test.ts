import { expect, test } from 'vitest';
import { fieldBook } from '@/components/draft/build-field-book';
import type { Draft } from '@/components/draft/draft-tree';
import { isFinishedFurnace, isFinishedPlan, planData } from '@/components/draft/financing-data';
import { dataFromDraft, formPath } from '@/components/draft/typed-data';
import { readDraft } from '@/lib/visit/read-visit';
import { SCHEMA_VERSION } from '@/lib/visit/visit';

const promotion: Draft = {
  kind: 'promotional',
  rateFracPerYear: '26.99',
  promotionMonths: '18',
  termMonths: '60',
  expectedEnding: 'notPaidInTime',
};

const typed = (choice: Draft): Draft => ({
  schemaVersion: SCHEMA_VERSION,
  id: 'paying',
  visitDate: '2026-11-25',
  site: {},
  unit: { kind: 'heatPump', nominalTons: '3' },
  runs: [],
  observations: [],
  assumptions: [],
  choices: [
    { kind: 'leave', id: 'leave', name: 'Leave', priceLines: [] },
    {
      kind: 'replace',
      id: 'new',
      name: 'New',
      unitKind: 'heatPump',
      tier: 'twoSpeed',
      nominalTons: '3',
      ratings: {},
      priceLines: [],
      ...choice,
    },
  ],
});
const made = (choice: Draft) => dataFromDraft(typed(choice), fieldBook(), (kind) => kind);

test('wiring: what was typed for one way to pay stays out of the data while another is looked at', () => {
  const loan = { ...promotion, kind: 'levelLoan', firstPaymentDate: '2027-01-15' };
  expect(planData(loan)).toEqual({
    kind: 'levelLoan',
    rateFracPerYear: '26.99',
    termMonths: '60',
    firstPaymentDate: '2027-01-15',
  });
  expect(planData({ ...loan, kind: 'cash' })).toEqual({ kind: 'cash' });
});

test('wiring: a way to pay without what it needs is left out; spaces are nothing', () => {
  expect(isFinishedPlan(promotion)).toBe(true);
  expect(isFinishedPlan({ ...promotion, promotionMonths: ' ' })).toBe(false);
  expect(isFinishedPlan({ kind: 'cash' })).toBe(true);
  expect(isFinishedPlan({ kind: 'levelLoan', rateFracPerYear: '8' })).toBe(false);
  expect(planData({ kind: 'levelLoan', termMonths: '60' })).toBeUndefined();
});

test('wiring: finished ways to pay and a furnace are read; an issue finds its own row of the form', () => {
  const { data, rows } = made({
    financing: promotion,
    financingOffers: [
      { kind: 'levelLoan', rateFracPerYear: '8' },
      { kind: 'levelLoan', rateFracPerYear: '700', termMonths: '60' },
    ],
    furnace: { fuel: 'naturalGas', afueFrac: '92', switchOverF: '35' },
  });
  const reading = readDraft(data);
  expect(reading.issues.map((issue) => formPath(issue.path, rows))).toEqual([
    'choices.1.financingOffers.1.rateFracPerYear',
  ]);
  const good = readDraft(
    made({ financing: promotion, financingOffers: [{ kind: 'cash' }], furnace: {} }).data,
  );
  expect(good.issues).toEqual([]);
  expect(good.visit?.choices[1]).toMatchObject({
    financing: { kind: 'promotional', rateFracPerYear: 0.2699, promotionMonths: 18, termMonths: 60 },
    financingOffers: [{ kind: 'cash' }],
  });
  expect(good.visit?.choices[1]).not.toHaveProperty('furnace');
});

test('wiring: a furnace needs fuel, efficiency and switch-over', () => {
  const furnace = { fuel: 'oil', afueFrac: '85', switchOverF: '30' };
  expect(isFinishedFurnace(furnace)).toBe(true);
  for (const key of Object.keys(furnace)) expect(isFinishedFurnace({ ...furnace, [key]: '' })).toBe(false);
});
