import { expect, test } from 'vitest';
import type { Store } from '@/lib/store/open-store';
import { minute, openIn, temporaryFolder } from './temporary-folder';

const save = (store: Store, id: string, baseRevision: number) =>
  store.saveVisit({
    id,
    baseRevision,
    savedBy: 'Ada',
    savedAt: minute(baseRevision),
    draft: { n: baseRevision },
  });

test('wiring: a digest counts for its revision and its maker only', async () => {
  const folder = temporaryFolder();
  const store = await openIn(folder);
  await save(store, 'a', 0);
  await save(store, 'b', 0);
  await store.keepDigest({ id: 'a', revision: 1, digest: { headline: 'a1' } }, '1.0.0');
  expect(await store.listDigests('1.0.0')).toEqual([{ id: 'a', revision: 1, digest: { headline: 'a1' } }]);
  expect(await store.listDigests('1.0.1')).toEqual([]);
  await save(store, 'a', 1);
  expect(await store.listDigests('1.0.0')).toEqual([]);
  await store.keepDigest({ id: 'a', revision: 2, digest: { headline: 'a2' } }, '1.0.1');
  // Worked out before the newer revision was saved, finished after it.
  await store.keepDigest({ id: 'a', revision: 1, digest: { headline: 'late' } }, '1.0.1');
  expect(await store.listDigests('1.0.1')).toEqual([{ id: 'a', revision: 2, digest: { headline: 'a2' } }]);
  await store.keepDigest({ id: 'a', revision: 2, digest: { headline: 'again' } }, '1.0.2');
  expect(await store.listDigests('1.0.2')).toEqual([{ id: 'a', revision: 2, digest: { headline: 'again' } }]);
});

test('wiring: an export holds no digests, since they can be made again', async () => {
  const store = await openIn(temporaryFolder());
  await save(store, 'a', 0);
  const before = await store.exportAll(minute(9));
  await store.keepDigest({ id: 'a', revision: 1, digest: 'x' }, '1.0.0');
  expect(await store.exportAll(minute(9))).toEqual(before);
});
