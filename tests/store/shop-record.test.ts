import { expect, test } from 'vitest';
import type { Store } from '@/lib/store/open-store';
import { minute, openIn, temporaryFolder } from './temporary-folder';

const save = (store: Store, part: string, baseRevision: number, data: unknown) =>
  store.saveShop({ part, baseRevision, data, savedBy: ' Ada ', savedAt: minute(baseRevision) });

test('wiring: each part of the shop has its own revisions, and the newest is read after the store was closed', async () => {
  const folder = temporaryFolder();
  const first = await openIn(folder);
  expect(await first.loadShop('rules')).toBeUndefined();
  expect(await save(first, 'rules', 0, { n: 1 })).toEqual({ ok: true, revision: 1 });
  expect(await save(first, 'rules', 1, { n: 2 })).toEqual({ ok: true, revision: 2 });
  expect(await save(first, 'prices', 0, { n: 9 })).toEqual({ ok: true, revision: 1 });
  await first.close();
  const again = await openIn(folder);
  expect(await again.loadShop('rules')).toEqual({
    part: 'rules',
    revision: 2,
    savedAt: minute(1),
    savedBy: 'Ada',
    data: { n: 2 },
  });
  expect((await again.loadShop('prices'))?.data).toEqual({ n: 9 });
});

test('property: a stale or unknown base changes nothing, and of two savers with one base one gets the number', async () => {
  const folder = temporaryFolder();
  const [one, two] = [await openIn(folder), await openIn(folder)];
  await save(one, 'rules', 0, { n: 1 });
  expect(await save(two, 'rules', 0, { n: 'late' })).toEqual({ ok: false, kind: 'stale' });
  expect(await save(two, 'rules', 7, { n: 'ahead' })).toEqual({ ok: false, kind: 'stale' });
  const both = await Promise.all([save(one, 'rules', 1, { n: 'a' }), save(two, 'rules', 1, { n: 'b' })]);
  expect(both.map((done) => done.ok).sort()).toEqual([false, true]);
  expect((await one.loadShop('rules'))?.revision).toBe(2);
});

test('wiring: a save without a name, or of what JSON would change silently, is refused in words', async () => {
  const store = await openIn(temporaryFolder());
  const unnamed = await store.saveShop({
    part: 'rules',
    baseRevision: 0,
    data: {},
    savedBy: '  ',
    savedAt: minute(1),
  });
  expect(unnamed).toMatchObject({ ok: false, kind: 'refused', issues: [{ path: 'savedBy' }] });
  expect(await save(store, 'rules', 0, { n: Number.NaN })).toMatchObject({ ok: false, kind: 'refused' });
  expect(await store.loadShop('rules')).toBeUndefined();
});
