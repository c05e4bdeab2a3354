import { expect, it } from 'vitest';
import { readDraft, readVisit } from '@/lib/visit/read-visit';
import { bareVisit } from './visit-fixture';

const whole = {
  mode: 'cooling',
  outdoorF: [75, 85],
  indoorF: [59, 67],
  suctionPsig: [
    [110, 126],
    [114, 130],
  ],
};

function withTables(...chargingTables: unknown[]) {
  const visit = bareVisit();
  return { ...visit, unit: { ...visit.unit, chargingTables } };
}

it('wiring: a whole table is read as it is', () => {
  expect(readVisit(withTables(whole))).toMatchObject({
    ok: true,
    value: { unit: { chargingTables: [whole] } },
  });
});

it('wiring: blanks of a table are one issue at the first of them; the other table still counts', () => {
  const partial = {
    ...whole,
    mode: 'heating',
    outdoorF: [null, 40],
    suctionPsig: [
      [null, 60],
      [null, 70],
    ],
  };
  const { visit, issues } = readDraft(withTables(whole, partial));
  expect(issues).toEqual([
    {
      code: 'missing',
      path: 'unit.chargingTables.1.outdoorF.0',
      label: 'Heating charging table',
      fix: 'Heating charging table: still blank: 1 outdoor temperature, 2 suction pressures. Type what is blank, or remove its row or column. Until then the table is not used; what was typed is kept.',
    },
  ]);
  expect(visit?.unit.chargingTables).toEqual([whole]);
});

it('wiring: too few rows are told, and no pressure is no slip of anything else', () => {
  const { visit, issues } = readDraft(
    withTables({ mode: 'cooling', outdoorF: [75], indoorF: [67], suctionPsig: [[118]] }),
  );
  expect(issues.map(({ path, fix }) => [path, fix])).toEqual([
    [
      'unit.chargingTables.0.outdoorF',
      'Cooling charging table: it needs at least 2 outdoor temperatures. Until then the table is not used; what was typed is kept.',
    ],
  ]);
  expect(visit?.unit.kind).toBeDefined();
});

it('wiring: a slip in a cell keeps its own issue and takes the whole table with it', () => {
  const slip = {
    ...whole,
    suctionPsig: [
      [1_100, 126],
      ['x', 130],
    ],
  };
  const { visit, issues } = readDraft(withTables(slip));
  expect(issues.map(({ code, path, value }) => [code, path, value])).toEqual([
    ['outOfRange', 'unit.chargingTables.0.suctionPsig.0.0', '1100'],
    ['notNumber', 'unit.chargingTables.0.suctionPsig.1.0', 'x'],
  ]);
  expect(visit?.unit.chargingTables).toEqual([]);
});
