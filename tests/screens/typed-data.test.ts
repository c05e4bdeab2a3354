import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fieldBook } from '@/components/draft/build-field-book';
import type { Draft } from '@/components/draft/draft-tree';
import { shownNumber } from '@/components/draft/field-book';
import { dataFromDraft, formPath } from '@/components/draft/typed-data';
import { readDraft } from '@/lib/visit/read-visit';
import { SCHEMA_VERSION } from '@/lib/visit/visit';

const named = (draft: Draft) => dataFromDraft(draft, fieldBook(), (kind) => `a ${kind}`);

const base: Draft = {
  schemaVersion: SCHEMA_VERSION,
  id: 'typed',
  visitDate: '2026-11-25',
  site: {},
  unit: { kind: 'heatPump', nominalTons: '3' },
  runs: [],
  observations: [],
  assumptions: [],
  choices: [{ kind: 'leave', id: 'leave', name: 'Leave', priceLines: [] }],
};

test('wiring: typed text becomes numbers, with the unit typed along and in the unit of the visit', () => {
  const { data } = named({
    ...base,
    runs: [
      {
        id: 'a',
        mode: 'cooling',
        suctionPsig: ' 118 psig',
        returnHumidityFrac: '45 %',
        powerFactorFrac: '0.95',
      },
    ],
  });
  expect(data.runs).toEqual([
    { id: 'a', mode: 'cooling', suctionPsig: 118, returnHumidityFrac: 0.45, powerFactorFrac: 0.95 },
  ]);
});

test('wiring: what is no number stays as typed, so that the reader names it and keeps the rest', () => {
  const { data } = named({
    ...base,
    runs: [{ id: 'a', mode: 'cooling', suctionPsig: '11b', dischargePsig: '280' }],
  });
  const reading = readDraft(data);
  expect(reading.issues.map(({ code, path, value }) => ({ code, path, value }))).toEqual([
    { code: 'notNumber', path: 'runs.0.suctionPsig', value: '11b' },
  ]);
  expect(reading.visit?.runs[0]).toEqual({ id: 'a', mode: 'cooling', dischargePsig: 280 });
});

test('wiring: unpriced rows and loans without rate or term are left out, and issues find their row of the form', () => {
  const { data, rows } = named({
    ...base,
    choices: [
      {
        kind: 'repair',
        id: 'r',
        name: 'Repair',
        actions: ['runCapacitor'],
        financing: { kind: 'levelLoan', rateFracPerYear: '8' },
        priceLines: [
          { kind: 'labour', amount: '1' },
          { kind: 'part', amount: '1', unitPriceUsd: '-20' },
        ],
      },
    ],
  });
  expect(data.choices).toEqual([
    {
      kind: 'repair',
      id: 'r',
      name: 'Repair',
      actions: ['runCapacitor'],
      priceLines: [{ kind: 'part', label: 'a part', amount: 1, unitPriceUsd: -20 }],
    },
  ]);
  const paths = readDraft(data).issues.map((issue) => formPath(issue.path, rows));
  expect(paths).toEqual(['choices.0.priceLines.1.unitPriceUsd']);
});

test('property: a stored number shown in the form and typed again is the same number', () => {
  const percent = { perFormUnit: 0.01 };
  fc.assert(
    fc.property(fc.integer({ min: 50, max: 1_000 }), (thousandths) => {
      const frac = thousandths / 1_000;
      const typed = shownNumber(frac, percent);
      const { data } = named({ ...base, runs: [{ id: 'a', mode: 'cooling', returnHumidityFrac: typed }] });
      expect(data.runs).toEqual([{ id: 'a', mode: 'cooling', returnHumidityFrac: frac }]);
    }),
  );
});

test('wiring: a draft of stored numbers is read as it is', () => {
  const run = { id: 'a', mode: 'heating', suctionPsig: 41.5, returnHumidityFrac: 0.4 };
  const { data } = named({ ...base, runs: [run] });
  expect(data.runs).toEqual([run]);
});
