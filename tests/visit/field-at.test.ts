import { expect, it } from 'vitest';
import { fieldAt } from '@/lib/visit/field-at';
import { Run } from '@/lib/visit/run';

it('wiring: a reading knows its label, unit, limits and an example inside them', () => {
  expect(fieldAt(['runs', '0', 'suctionPsig'])).toMatchObject({
    label: 'Suction pressure',
    unit: 'psig',
    min: 0,
    max: 300,
    range: 'between 0 and 300 psig',
  });
});

it('wiring: every reading of a run has a label of its own', () => {
  const labels = Object.keys(Run.shape).map((key) => fieldAt(['runs', '0', key]).label);
  expect(labels.length).toBeGreaterThan(40);
  expect(new Set(labels).size).toBe(labels.length);
});

it('wiring: fields inside choices are found', () => {
  expect(fieldAt(['choices', '2', 'financing', 'termMonths']).label).toBe('Loan term');
  expect(fieldAt(['choices', '0', 'priceLines', '1', 'unitPriceUsd']).unit).toBe('USD');
});

it('wiring: a range without unit words ends without a space', () => {
  expect(fieldAt(['unit', 'manufactureYear']).range).toBe('between 1970 and 2100');
  expect(fieldAt(['choices', '0', 'priceLines', '0', 'amount']).range).toBe('between 0 and 10000');
});
