import { expect, test } from 'vitest';
import { composeWallTable } from '@/lib/sheet/wall-table';
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
