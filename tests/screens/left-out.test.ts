import { describe, expect, test } from 'vitest';
import { buildView } from '@/components/appraisal/build-view';
import { fieldBook } from '@/components/draft/build-field-book';
import type { Draft } from '@/components/draft/draft-tree';

const choice = (id: string, name: string, termMonths: string, unitPriceUsd = '9000'): Draft => ({
  id,
  kind: 'replace',
  name,
  priceLines: [{ kind: 'equipment', label: 'Unit', amount: '1', unitPriceUsd }],
  rebates: [],
  financing: { kind: 'levelLoan', rateFracPerYear: '8', termMonths },
  unitKind: 'airConditioner',
  tier: 'singleSpeed',
  nominalTons: '3.5',
  ratings: { seer2BtuPerWh: '15.2' },
});

const draft = (choices: Draft[]): Draft => ({
  schemaVersion: 1,
  id: 'left-out',
  visitDate: '2026-11-25',
  site: { stayYears: '7' },
  unit: { kind: 'airConditioner', nominalTons: '3.5' },
  runs: [],
  observations: [],
  assumptions: [],
  choices: [
    {
      id: 'leave',
      kind: 'leave',
      name: 'Leave as is',
      priceLines: [],
      rebates: [],
      financing: { kind: 'cash' },
    },
    ...choices,
  ],
});

const pageOneOf = (choices: Draft[]) => {
  const view = buildView(draft(choices), fieldBook());
  if (view.answer === undefined) throw new Error(view.failure ?? JSON.stringify(view.issues));
  return view.answer;
};

describe('choices left out of the comparison', () => {
  test('wiring: a loan term out of its limits names the choice and the reason', () => {
    const answer = pageOneOf([choice('new', 'New 3.5-ton air conditioner', '900')]);
    expect(answer.table.columns.map((column) => column.id)).toEqual(['leave']);
    expect(answer.sheet.pageOne.leftOut).toBe(
      'Not counted: New 3.5-ton air conditioner (loan term must be between 1 and 240 months).',
    );
  });

  test('wiring: a choice without a name is told by its place; one that is right is not named', () => {
    const answer = pageOneOf([choice('a', 'Right one', '60'), choice('b', '', '60', 'lots')]);
    expect(answer.table.columns.map((column) => column.id)).toEqual(['leave', 'a']);
    expect(answer.sheet.pageOne.leftOut).toMatch(/^Not counted: Choice 3 \(.*must be between \$/);
    expect(answer.sheet.pageOne.leftOut).not.toContain('Right one');
  });

  test('wiring: two reasons are told, further ones are counted', () => {
    const wrong = { ...choice('a', 'Wrong all over', '900', 'lots'), nominalTons: '90', tier: 'many' };
    expect(pageOneOf([wrong]).sheet.pageOne.leftOut).toBe(
      'Not counted: Wrong all over (price each must be between $0 and $100,000, loan term must be between 1 and 240 months, and 2 more).',
    );
  });

  test('wiring: nothing is said when all are counted', () => {
    expect(pageOneOf([choice('a', 'Right one', '60')]).sheet.pageOne.leftOut).toBeUndefined();
  });
});
