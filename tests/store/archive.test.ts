import { expect, test } from 'vitest';
import type { Store } from '@/lib/store/open-store';
import { minute, openIn, temporaryFolder } from './temporary-folder';

const save = (store: Store, id: string, baseRevision: number, note: string) =>
  store.saveVisit({ id, baseRevision, savedBy: 'Ada', savedAt: minute(baseRevision), draft: { note } });

async function filledStore(): Promise<Store> {
  const store = await openIn(temporaryFolder());
  await save(store, 'a', 0, 'a1');
  await save(store, 'a', 1, 'a2');
  await save(store, 'b', 0, 'b1');
  await store.deleteVisit({ id: 'b', baseRevision: 1, savedBy: 'Ben', savedAt: minute(5) });
  return store;
}

/** Through text, as a file would go. */
const throughFile = (archive: unknown): unknown => JSON.parse(JSON.stringify(archive));

test('identity: an export read into an empty store exports the same again', async () => {
  const archive = await (await filledStore()).exportAll(minute(9));
  expect(archive.visits.map((v) => [v.id, v.revisions.length])).toEqual([
    ['a', 2],
    ['b', 2],
  ]);
  const copy = await openIn(temporaryFolder());
  expect(await copy.importAll(throughFile(archive))).toEqual({
    ok: true,
    added: ['a', 'b'],
    extended: [],
    unchanged: [],
    conflicts: [],
  });
  expect(await copy.exportAll(minute(9))).toEqual(archive);
  expect((await copy.listVisits()).map((v) => v.id)).toEqual(['a']);
  expect(await copy.loadVisit('b')).toMatchObject({ revision: 2, deleted: true });
  // The copy goes on where the original stood.
  expect(await save(copy, 'a', 2, 'a3')).toEqual({ ok: true, revision: 3 });
});

test('wiring: importing again changes nothing, a longer history extends, a shorter one is already here', async () => {
  const store = await filledStore();
  const before = throughFile(await store.exportAll(minute(9)));
  expect(await store.importAll(before)).toMatchObject({ added: [], unchanged: ['a', 'b'] });
  const copy = await openIn(temporaryFolder());
  await copy.importAll(before);
  await save(copy, 'a', 2, 'a3');
  const longer = throughFile(await copy.exportAll(minute(9)));
  expect(await store.importAll(longer)).toMatchObject({ extended: ['a'], unchanged: ['b'], conflicts: [] });
  expect(await store.loadVisit('a')).toMatchObject({ revision: 3, draft: { note: 'a3' } });
  expect(await store.importAll(before)).toMatchObject({ unchanged: ['a', 'b'], extended: [] });
  expect(await store.loadVisit('a')).toMatchObject({ revision: 3 });
});

test('wiring: histories that parted are left as they are here, the others come over', async () => {
  const store = await filledStore();
  const other = await openIn(temporaryFolder());
  await save(other, 'a', 0, 'elsewhere');
  await save(other, 'c', 0, 'c1');
  const archive = throughFile(await other.exportAll(minute(9)));
  expect(await store.importAll(archive)).toEqual({
    ok: true,
    added: ['c'],
    extended: [],
    unchanged: [],
    conflicts: ['a'],
  });
  expect(await store.loadVisit('a')).toMatchObject({ revision: 2, draft: { note: 'a2' } });
});

test('wiring: a faulty file is refused whole, in words', async () => {
  const source = await filledStore();
  const good = JSON.stringify(await source.exportAll(minute(9)));
  const cases: readonly (readonly [name: string, data: unknown, code: string])[] = [
    ['not an object', 'hello', 'notReadable'],
    ['nothing', null, 'notReadable'],
    ['a visit, not an export', { schemaVersion: 1, id: 'a' }, 'notReadable'],
    ['another version', { ...JSON.parse(good), archiveVersion: 2 }, 'wrongVersion'],
    ['a gap in the numbering', JSON.parse(good.replace('"revision":2', '"revision":3')), 'notReadable'],
    ['an id twice', JSON.parse(good.replace('"id":"b"', '"id":"a"')), 'notReadable'],
    ['an id with a slash', JSON.parse(good.replace('"id":"b"', '"id":"../b"')), 'notReadable'],
    ['no date', JSON.parse(good.replace(minute(5), 'soon')), 'notReadable'],
    ['a draft missing', JSON.parse(good.replace('"draft":{"note":"a1"}', '"x":1')), 'notReadable'],
    ['a draft too big', JSON.parse(good.replace('"a1"', `"${'x'.repeat(1_100_000)}"`)), 'outOfRange'],
  ];
  const store = await openIn(temporaryFolder());
  const codes: unknown[] = [];
  for (const [name, data] of cases) {
    const result = await store.importAll(data);
    codes.push([name, result.ok ? 'taken' : result.issues[0]?.code]);
  }
  expect(codes).toEqual(cases.map(([name, , code]) => [name, code]));
  expect(codes).toHaveLength(10);
  expect((await store.exportAll(minute(9))).visits).toEqual([]);
});
