import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MAX_DRAFT_BYTES } from '@/lib/store/draft-text';
import { NEW_VISIT } from '@/lib/store/save-visit';
import { minute, openIn, temporaryFolder } from './temporary-folder';

test('wiring: a stale save changes nothing and shows both versions', async () => {
  const store = await openIn(temporaryFolder());
  const first = { id: 'v', savedAt: minute(0), savedBy: 'Ada', draft: { note: 'first' } };
  await store.saveVisit({ ...first, baseRevision: NEW_VISIT });
  await store.saveVisit({ ...first, baseRevision: 1, savedAt: minute(1), draft: { note: 'office' } });

  const late = { ...first, baseRevision: 1, savedAt: minute(2), savedBy: 'Ben', draft: { note: 'field' } };
  const current = {
    id: 'v',
    revision: 2,
    savedAt: minute(1),
    savedBy: 'Ada',
    deleted: false,
    draft: { note: 'office' },
  };
  expect(await store.saveVisit(late)).toEqual({
    ok: false,
    kind: 'stale',
    current,
    yours: { note: 'field' },
  });
  expect(await store.loadVisit('v')).toEqual(current);
  expect(await store.listRevisions('v')).toHaveLength(2);
  // Having seen both, the second saver may save on top of the first.
  expect(await store.saveVisit({ ...late, baseRevision: 2 })).toEqual({ ok: true, revision: 3 });
});

test('wiring: a new visit never replaces one of the same id', async () => {
  const store = await openIn(temporaryFolder());
  const one = { id: 'v', baseRevision: NEW_VISIT, savedAt: minute(0), savedBy: 'Ada', draft: { n: 1 } };
  await store.saveVisit(one);
  expect(await store.saveVisit({ ...one, draft: { n: 2 } })).toMatchObject({
    ok: false,
    kind: 'stale',
    current: { revision: 1, draft: { n: 1 } },
    yours: { n: 2 },
  });
});

test('wiring: a save repeated because its answer was lost is answered again, not doubled', async () => {
  const store = await openIn(temporaryFolder());
  const one = { id: 'v', baseRevision: NEW_VISIT, savedAt: minute(0), savedBy: 'Ada', draft: { n: 1 } };
  expect(await store.saveVisit(one)).toEqual({ ok: true, revision: 1 });
  expect(await store.saveVisit(one)).toEqual({ ok: true, revision: 1 });
  expect(await store.listRevisions('v')).toHaveLength(1);
});

test('wiring: a base of a visit the store does not have is "gone", the draft handed back', async () => {
  const store = await openIn(temporaryFolder());
  const draft = { note: 'kept' };
  expect(
    await store.saveVisit({ id: 'v', baseRevision: 4, savedAt: minute(0), savedBy: 'Ada', draft }),
  ).toEqual({ ok: false, kind: 'gone', yours: draft });
  expect(await store.listVisits()).toEqual([]);
});

test('wiring: a base from the future is stale, not a jump in the numbering', async () => {
  const store = await openIn(temporaryFolder());
  const one = { id: 'v', baseRevision: NEW_VISIT, savedAt: minute(0), savedBy: 'Ada', draft: { n: 1 } };
  await store.saveVisit(one);
  expect(await store.saveVisit({ ...one, baseRevision: 7, draft: {} })).toMatchObject({ kind: 'stale' });
  expect(await store.saveVisit({ ...one, baseRevision: -1, draft: {} })).toMatchObject({ kind: 'stale' });
});

test('wiring: every fault of the request is named at once and nothing is saved', async () => {
  const store = await openIn(temporaryFolder());
  const result = await store.saveVisit({
    id: '../etc',
    baseRevision: NEW_VISIT,
    savedBy: '  ',
    savedAt: 'yesterday',
    draft: { note: 'x'.repeat(MAX_DRAFT_BYTES) },
  });
  expect(result).toMatchObject({ ok: false, kind: 'refused' });
  const issues = 'issues' in result ? result.issues : [];
  expect(issues.map((i) => i.path)).toEqual(['id', 'savedBy', 'savedAt', '']);
  expect(issues.map((i) => i.limit)).toEqual([
    '1 to 60 of a-z, 0-9 and "-"',
    '1 to 80 characters',
    'an instant like 2026-11-25T09:30:00Z',
    'JSON of at most 1,048,576 bytes',
  ]);
  expect(await store.listVisits()).toEqual([]);
});

test('property: any JSON is kept exactly, however odd its keys and texts', async () => {
  const store = await openIn(temporaryFolder());
  let n = 0;
  await fc.assert(
    fc.asyncProperty(fc.jsonValue({ noUnicodeString: false }), async (draft) => {
      n += 1;
      const id = `v-${n}`;
      const saved = await store.saveVisit({ id, baseRevision: 0, savedAt: minute(0), savedBy: 'Ada', draft });
      expect(saved).toEqual({ ok: true, revision: 1 });
      expect(JSON.stringify((await store.loadVisit(id))?.draft)).toBe(JSON.stringify(draft));
    }),
    { seed: 11, numRuns: 150 },
  );
  expect(n).toBe(150);
});
