import { expect, test } from 'vitest';
import { appraise } from '@/lib/appraise/appraise';
import { wallTable } from '@/lib/finance/shop-rules/wall-table';
import { composeWallTable, wallTableOf } from '@/lib/sheet/wall-table';
import { demoFiles } from '../appraise/demo-files';
import { wallInput } from './fixtures/documents';

test('wiring: ages down, losses across, prices rounded down; nothing and unknown are told apart', () => {
  const table = composeWallTable(wallInput).sections[0]?.tables?.[0];
  expect(table?.columns.map((column) => column.label)).toEqual([
    'Age of the unit',
    '10\u00a0% more to run',
    '30\u00a0% more to run',
  ]);
  expect(table?.rows.map((row) => row.cells)).toEqual([
    ['1 year old', '$1,200', '$5,650'],
    ['10 years old', '$640', 'not known'],
    ['15 years old', 'not even for nothing', '$90'],
  ]);
  expect(table?.columns.reduce((sum, column) => sum + column.share, 0)).toBeCloseTo(1, 9);
});

test('identity: a grid that does not fit its ages and losses is refused', () => {
  expect(() => composeWallTable({ ...wallInput, agesYears: [1] })).toThrow(/one row for each age/);
  expect(() => composeWallTable({ ...wallInput, lossFrac: [0.1] })).toThrow(/one row for each age/);
});

test('wiring: made from a visit, its grid is the one that was computed, and says what it was made for', () => {
  const [visit] = demoFiles;
  if (visit === undefined) throw new Error('no demo visit');
  const appraisal = appraise(visit);
  const table = wallTable(appraisal);
  const input = wallTableOf(appraisal, table, 'en');
  expect(input.largestPriceUsd).toEqual(table.largestPriceUsd);
  expect(input.basis.map((fact) => fact.text)).toContain(appraisal.energy.climateName);
  const rows = composeWallTable(input).sections[0]?.tables?.[0]?.rows ?? [];
  expect(rows.map((row) => row.cells.length)).toEqual(table.agesYears.map(() => 1 + table.lossFrac.length));
});
