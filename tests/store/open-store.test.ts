import { chmodSync, mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { dataFolder } from '@/lib/store/data-folder';
import { MIGRATIONS } from '@/lib/store/migrations';
import { DATABASE_FILE, openStore } from '@/lib/store/open-store';
import { StoreError, storeErrorFrom } from '@/lib/store/store-error';
import { minute, openIn, temporaryFolder } from './temporary-folder';

const visit = { id: 'v', baseRevision: 0, savedAt: minute(0), savedBy: 'Ada', draft: { note: 'x' } };

async function openingFails(folder: string): Promise<StoreError> {
  const thrown = await openStore(folder).then(
    () => undefined,
    (e: unknown) => e,
  );
  expect(thrown).toBeInstanceOf(StoreError);
  return thrown as StoreError;
}

test('wiring: the folder is made, private to its owner, and all is inside it', async () => {
  const folder = path.join(temporaryFolder(), 'not', 'yet');
  await openIn(folder);
  expect(statSync(folder).mode & 0o077).toBe(0);
  expect(readdirSync(folder)).toContain(DATABASE_FILE);
});

test('identity: a store closed and opened again holds the same', async () => {
  const folder = temporaryFolder();
  const first = await openStore(folder);
  await first.saveVisit(visit);
  const before = await first.exportAll(minute(9));
  await first.close();
  const second = await openIn(folder);
  expect(await second.exportAll(minute(9))).toEqual(before);
  expect(before.visits).toHaveLength(1);
});

test('wiring: the file keeps a write-ahead log; a commit waits for the disk', async () => {
  const folder = temporaryFolder();
  const seen: unknown[] = [];
  const original = Database.prototype.pragma;
  Database.prototype.pragma = function (this: Database.Database, source: string, options) {
    const result: unknown = original.call(this, source, options);
    seen.push([source, original.call(this, source.split(' =')[0] ?? '', { simple: true })]);
    return result;
  } as typeof original;
  try {
    await openIn(folder);
  } finally {
    Database.prototype.pragma = original;
  }
  expect(seen).toEqual([
    ['journal_mode = WAL', 'wal'],
    ['synchronous = FULL', 2],
    ['foreign_keys = ON', 1],
  ]);
});

test('wiring: a database of a newer program is left alone', async () => {
  const folder = temporaryFolder();
  await (await openStore(folder)).close();
  const raw = new Database(path.join(folder, DATABASE_FILE));
  raw.prepare('insert into kysely_migration values (?, ?)').run('0999-from-the-future', minute(0));
  raw.close();
  const error = await openingFails(folder);
  expect(error.code).toBe('newer');
  expect(error.message).toBe(
    'The database was written by a newer Keepworth. Update this one before opening it. (0999-from-the-future)',
  );
});

test('wiring: a file that is no database, or a folder that is a file, is said in words', async () => {
  const folder = temporaryFolder();
  writeFileSync(path.join(folder, DATABASE_FILE), 'not a database, just some text '.repeat(100));
  expect((await openingFails(folder)).code).toBe('damaged');
  const file = path.join(temporaryFolder(), 'file');
  writeFileSync(file, '');
  expect((await openingFails(file)).code).toBe('folder');
  expect((await openingFails(path.join(file, 'below'))).code).toBe('folder');
  const blocked = temporaryFolder();
  mkdirSync(path.join(blocked, DATABASE_FILE));
  expect((await openingFails(blocked)).code).toBe('folder');
});

test('wiring: after close every call says so', async () => {
  const store = await openStore(temporaryFolder());
  await store.close();
  await expect(store.listVisits()).rejects.toMatchObject({ name: 'StoreError', code: 'closed' });
});

test('wiring: thrown things become one error with a code and keep their cause', () => {
  const coded = (code: string) => Object.assign(new Error('low-level words'), { code });
  const codes = ['SQLITE_BUSY_SNAPSHOT', 'SQLITE_FULL', 'SQLITE_CORRUPT_VTAB', 'EACCES', 'ENOSPC', 'EWHAT'];
  expect(codes.map((code) => storeErrorFrom(coded(code)).code)).toEqual([
    'busy',
    'full',
    'damaged',
    'folder',
    'full',
    'other',
  ]);
  const cause = coded('SQLITE_FULL');
  expect(storeErrorFrom(cause).cause).toBe(cause);
  expect(storeErrorFrom(cause).message).not.toContain('low-level');
  expect(storeErrorFrom('a text').code).toBe('other');
});

test('wiring: an unwritable database is said in words', async () => {
  const folder = temporaryFolder();
  await (await openStore(folder)).close();
  const raw = new Database(path.join(folder, DATABASE_FILE), { readonly: true });
  chmodSync(folder, 0o500);
  const thrown = (() => {
    try {
      return raw.exec('delete from visits');
    } catch (e) {
      return e;
    } finally {
      raw.close();
      chmodSync(folder, 0o700);
    }
  })();
  expect(storeErrorFrom(thrown).code).toBe('folder');
});

test('wiring: migrations are named in the order they were written', () => {
  const names = Object.keys(MIGRATIONS);
  expect(names).toEqual([...names].sort());
  expect(names.every((name, i) => name.startsWith(`${String(i + 1).padStart(4, '0')}-`))).toBe(true);
  expect(names.length).toBeGreaterThan(0);
});

test('wiring: the data folder is KEEPWORTH_DATA, else data', () => {
  expect(dataFolder({}, '/srv/app')).toBe('/srv/app/data');
  expect(dataFolder({ KEEPWORTH_DATA: ' ' }, '/srv/app')).toBe('/srv/app/data');
  expect(dataFolder({ KEEPWORTH_DATA: 'mine' }, '/srv/app')).toBe('/srv/app/mine');
  expect(dataFolder({ KEEPWORTH_DATA: '/var/keep' }, '/srv/app')).toBe('/var/keep');
});
