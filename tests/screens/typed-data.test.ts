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

test('wiring: blank points of a traverse are left out, and an issue finds its point', () => {
  const { data, rows } = named({
    ...base,
    runs: [{ id: 'a', mode: 'cooling', grilleFacePointsFpm: ['320', ' ', '3x', '410'] }],
  });
  const { visit, issues } = readDraft(data);
  expect(issues.map((issue) => formPath(issue.path, rows))).toEqual(['runs.0.grilleFacePointsFpm.2']);
  expect(visit?.runs[0]?.grilleFacePointsFpm).toEqual([320, 410]);
  const blank = named({ ...base, runs: [{ id: 'a', mode: 'cooling', grilleFacePointsFpm: ['', ''] }] });
  expect(blank.data.runs).toEqual([{ id: 'a', mode: 'cooling' }]);
});

test('wiring: a charging table typed in any order is read in rising order, without its blank rows and columns', () => {
  const { data } = named({
    ...base,
    unit: {
      kind: 'heatPump',
      nominalTons: '3',
      chargingTables: [
        {
          mode: 'cooling',
          outdoorF: ['95', '', '75 F'],
          indoorF: ['67', '59', ''],
          suctionPsig: [
            ['136', '120', ''],
            ['', '', ''],
            ['126', '110 psig', ''],
          ],
          dischargePsig: [['', '', '']],
        },
        { mode: 'heating', outdoorF: ['', ''], indoorF: [''] },
      ],
    },
  });
  const { visit, issues } = readDraft(data);
  expect(issues).toEqual([]);
  expect(visit?.unit.chargingTables).toEqual([
    {
      mode: 'cooling',
      outdoorF: [75, 95],
      indoorF: [59, 67],
      suctionPsig: [
        [110, 126],
        [120, 136],
      ],
    },
  ]);
});

test('wiring: an unfinished table is one issue at its field of the form; the rest of the visit counts', () => {
  const { data, rows } = named({
    ...base,
    unit: {
      kind: 'heatPump',
      nominalTons: '3',
      chargingTables: [
        { mode: 'cooling', outdoorF: ['', ''], indoorF: [''] },
        {
          mode: 'heating',
          outdoorF: ['60', '', '20'],
          indoorF: ['', '70'],
          dischargePsig: [['', '400'], [], ['', '']],
        },
      ],
    },
  });
  const { visit, issues } = readDraft(data);
  expect(issues.map((issue) => [issue.code, formPath(issue.path, rows)])).toEqual([
    ['missing', 'unit.chargingTables.1.dischargePsig.2.1'],
  ]);
  expect(visit?.unit).toEqual({ kind: 'heatPump', nominalTons: 3, chargingTables: [] });
});
