import { expect, test } from 'vitest';
import { minute, openIn, temporaryFolder } from './temporary-folder';

const draft = { note: 'worth keeping' };

async function storeWithVisit() {
  const store = await openIn(temporaryFolder());
  await store.saveVisit({ id: 'v', baseRevision: 0, savedAt: minute(0), savedBy: 'Ada', draft });
  return store;
}

test('wiring: a deleted visit leaves the list, keeps its draft and comes back', async () => {
  const store = await storeWithVisit();
  const by = { id: 'v', savedBy: 'Ben' };
  expect(await store.deleteVisit({ ...by, baseRevision: 1, savedAt: minute(1) })).toEqual({
    ok: true,
    revision: 2,
  });
  expect(await store.listVisits()).toEqual([]);
  expect((await store.listVisits('deleted')).map((v) => [v.id, v.savedBy, v.deleted])).toEqual([
    ['v', 'Ben', true],
  ]);
  expect(await store.loadVisit('v')).toMatchObject({ revision: 2, deleted: true, draft });

  expect(await store.restoreVisit({ ...by, baseRevision: 2, savedAt: minute(2) })).toEqual({
    ok: true,
    revision: 3,
  });
  expect((await store.listVisits()).map((v) => v.id)).toEqual(['v']);
  expect(await store.loadVisit('v')).toMatchObject({ revision: 3, deleted: false, draft });
  expect(await store.listRevisions('v')).toHaveLength(3);
});

test('wiring: nobody deletes what they have not seen', async () => {
  const store = await storeWithVisit();
  await store.saveVisit({
    id: 'v',
    baseRevision: 1,
    savedAt: minute(1),
    savedBy: 'Ada',
    draft: { note: 'more' },
  });
  expect(
    await store.deleteVisit({ id: 'v', baseRevision: 1, savedAt: minute(2), savedBy: 'Ben' }),
  ).toMatchObject({ ok: false, kind: 'stale', current: { revision: 2, draft: { note: 'more' } } });
  expect(await store.listVisits()).toHaveLength(1);
});

test('wiring: a save onto a visit deleted meanwhile is stale and says so', async () => {
  const store = await storeWithVisit();
  await store.deleteVisit({ id: 'v', baseRevision: 1, savedAt: minute(1), savedBy: 'Ben' });
  expect(
    await store.saveVisit({
      id: 'v',
      baseRevision: 1,
      savedAt: minute(2),
      savedBy: 'Ada',
      draft: { note: 'field' },
    }),
  ).toMatchObject({ ok: false, kind: 'stale', current: { deleted: true, draft }, yours: { note: 'field' } });
  // The same draft is no exception: the visit would look saved and be off the list.
  expect(
    await store.saveVisit({ id: 'v', baseRevision: 1, savedAt: minute(2), savedBy: 'Ada', draft }),
  ).toMatchObject({ ok: false, kind: 'stale' });
});

test('wiring: deleting twice, or what never was', async () => {
  const store = await storeWithVisit();
  const by = { id: 'v', baseRevision: 1, savedAt: minute(1), savedBy: 'Ben' };
  await store.deleteVisit(by);
  expect(await store.deleteVisit(by)).toEqual({ ok: true, revision: 2 });
  expect(await store.listRevisions('v')).toHaveLength(2);
  expect(await store.deleteVisit({ ...by, id: 'w' })).toEqual({ ok: false, kind: 'gone' });
  expect(await store.deleteVisit({ ...by, id: 'w', baseRevision: 0 })).toEqual({ ok: false, kind: 'gone' });
  expect(await store.listVisits()).toEqual([]);
  expect(await store.deleteVisit({ ...by, savedBy: '' })).toMatchObject({ ok: false, kind: 'refused' });
});
