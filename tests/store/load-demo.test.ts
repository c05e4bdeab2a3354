import { expect, test } from 'vitest';
import { minute, openIn, temporaryFolder } from './temporary-folder';

const demo = {
  savedBy: 'Demo',
  savedAt: minute(0),
  visits: [
    { id: 'demo-a', draft: { note: 'a' } },
    { id: 'demo-b', draft: { note: 'b' } },
  ],
};

test('wiring: the demo is loaded once, and stays away once deleted', async () => {
  const store = await openIn(temporaryFolder());
  expect(await store.loadDemo(demo)).toEqual({ ok: true, loaded: 2 });
  await store.deleteVisit({ id: 'demo-a', baseRevision: 1, savedBy: 'Ada', savedAt: minute(1) });
  const later = { ...demo, visits: [...demo.visits, { id: 'demo-c', draft: {} }] };
  expect(await store.loadDemo(later)).toEqual({ ok: true, loaded: 0 });
  expect((await store.listVisits()).map((v) => v.id)).toEqual(['demo-b']);
});

test('wiring: two programs starting together load it once', async () => {
  const folder = temporaryFolder();
  const [one, two] = await Promise.all([openIn(folder), openIn(folder)]);
  const loaded = await Promise.all([one.loadDemo(demo), two.loadDemo(demo)]);
  expect(loaded.map((r) => (r.ok ? r.loaded : -1)).sort()).toEqual([0, 2]);
  expect(await one.listVisits()).toHaveLength(2);
});

test("wiring: a user's visit of the same id is left alone", async () => {
  const store = await openIn(temporaryFolder());
  await store.saveVisit({ id: 'demo-a', baseRevision: 0, savedBy: 'Ada', savedAt: minute(0), draft: 'mine' });
  expect(await store.loadDemo(demo)).toEqual({ ok: true, loaded: 1 });
  expect((await store.loadVisit('demo-a'))?.draft).toBe('mine');
});

test('wiring: a faulty demo loads nothing and can be loaded when mended', async () => {
  const store = await openIn(temporaryFolder());
  const faulty = { ...demo, visits: [...demo.visits, { id: 'Demo C', draft: {} }] };
  expect(await store.loadDemo(faulty)).toMatchObject({
    ok: false,
    issues: [{ path: 'id', value: 'Demo C' }],
  });
  expect(await store.listVisits()).toEqual([]);
  expect(await store.loadDemo(demo)).toEqual({ ok: true, loaded: 2 });
});
