import { expect, test } from 'vitest';
import { longTexts } from '@/components/draft/long-texts';

test('wiring: the longest texts of a draft are named, longest first, short ones and numbers not', () => {
  const draft = {
    note: 'x'.repeat(3_000),
    site: { customer: 'Example', altitudeFt: 700 },
    runs: [{ id: 'a' }, { id: 'b', note: 'y'.repeat(9_000) }],
    invented: true,
  };
  expect(longTexts(draft)).toEqual([
    { path: 'runs.1.note', length: 9_000 },
    { path: 'note', length: 3_000 },
  ]);
  expect(longTexts({ note: 'x'.repeat(2_000) })).toEqual([]);
});

test('wiring: at most five are named', () => {
  const draft = Object.fromEntries([1, 2, 3, 4, 5, 6, 7].map((n) => [`k${n}`, 'x'.repeat(2_000 + n)]));
  expect(longTexts(draft).map(({ path }) => path)).toEqual(['k7', 'k6', 'k5', 'k4', 'k3']);
});
