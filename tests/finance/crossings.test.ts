import { expect, test } from 'vitest';
import { overtakes } from '@/lib/finance/crossings';

test('outside: the year is that of the first lasting lead, worked by hand', () => {
  const leave = [0, 100, 200, 300, 400];
  expect(overtakes([150, 200, 210, 260, 310], leave)).toEqual({ kind: 'from', year: 3 });
  expect(overtakes([50, 90, 250, 260, 310], leave)).toEqual({ kind: 'from', year: 3 });
  expect(overtakes([-10, 90, 150, 260, 310], leave)).toEqual({ kind: 'always' });
});

test('identity: a lead that only the value left at the end gives is told apart, and none is none', () => {
  const leave = [0, 100, 200, 300];
  expect(overtakes([500, 520, 540, 200], leave)).toEqual({ kind: 'atEnd' });
  expect(overtakes([500, 520, 540, 560], leave)).toEqual({ kind: 'never' });
  expect(overtakes([500, 90, 190, 310], leave)).toEqual({ kind: 'between', year: 1, until: 2 });
  expect(overtakes(leave, leave)).toEqual({ kind: 'never' });
});
