import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readTyped } from '@/components/appraisal/read-typed';
import { fieldBook } from '@/components/draft/build-field-book';
import type { Draft } from '@/components/draft/draft-tree';
import { copiedDraft } from '@/components/list/copy-visit';

const from: Draft = {
  ...(JSON.parse(readFileSync('data-demo/restricted-orifice.json', 'utf8')) as Draft),
  chosen: { choiceId: 'leave', date: '2026-01-05' },
  observations: [{ id: 'dirtyFilter', photoIds: ['p-1'] }],
};

test('wiring: a new visit at the same house keeps house, unit and prices, and nothing read or seen that day', () => {
  const copy = copiedDraft(from, 'visit-2', '2026-11-25', false);
  expect(copy).toMatchObject({ id: 'visit-2', visitDate: '2026-11-25', site: from.site, unit: from.unit });
  expect(copy.choices).toEqual(from.choices);
  expect(copy.runs).toEqual([]);
  expect(copy.observations).toEqual([]);
  expect(Object.keys(copy)).not.toContain('chosen');
  expect(copy.invented).toBe(true);
});

test('wiring: readings copied along say from which visit they come, and the copy can be read', () => {
  const before = JSON.stringify(from);
  const copy = copiedDraft(from, 'visit-2', '2026-11-25', true);
  const runs = copy.runs as { note: string; suctionPsig?: number }[];
  expect(runs.length).toBeGreaterThan(0);
  expect(
    runs.filter(({ note }) => !/^Copied from the visit of [A-Z][a-z]{2} \d+, \d{4}\./.test(note)),
  ).toEqual([]);
  expect(copy.observations).toEqual([{ id: 'dirtyFilter' }]);
  expect(readTyped(copy, fieldBook()).visit?.id).toBe('visit-2');
  expect(JSON.stringify(from)).toBe(before);
});
