import { mkdirSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { Kysely, Migrator, SqliteDialect } from 'kysely';
import type { Archive } from './archive';
import { type DeleteRequest, type DeleteResult, deleteVisit, restoreVisit } from './delete-visit';
import { type Digest, keepDigest, listDigests } from './digests';
import { exportAll } from './export-all';
import { type ImportResult, importAll } from './import-all';
import { type DemoRequest, type DemoResult, loadDemo } from './load-demo';
import { MIGRATIONS, migrationProvider } from './migrations';
import { listRevisions, listVisits, loadRevision, loadVisit } from './read-visits';
import { retryWhenBusy, STATEMENT_WAIT_MS } from './retry-when-busy';
import type { VisitRevision, VisitSummary } from './revision';
import { type SaveRequest, type SaveResult, saveVisit } from './save-visit';
import { loadShop, type ShopRecord, type ShopSave, type ShopSaved, saveShop } from './shop-record';
import { StoreError } from './store-error';
import type { Tables } from './tables';

/** Everything the program keeps. Each call either did its work durably or threw a StoreError and changed nothing. */
export type Store = {
  readonly listVisits: (which?: 'present' | 'deleted') => Promise<VisitSummary[]>;
  readonly loadVisit: (id: string) => Promise<VisitRevision | undefined>;
  readonly saveVisit: (request: SaveRequest) => Promise<SaveResult>;
  readonly listRevisions: (id: string) => Promise<VisitSummary[]>;
  readonly loadRevision: (id: string, revision: number) => Promise<VisitRevision | undefined>;
  readonly deleteVisit: (request: DeleteRequest) => Promise<DeleteResult>;
  readonly restoreVisit: (request: DeleteRequest) => Promise<DeleteResult>;
  readonly loadDemo: (request: DemoRequest) => Promise<DemoResult>;
  readonly listDigests: (maker: string) => Promise<Digest[]>;
  readonly keepDigest: (digest: Digest, maker: string) => Promise<void>;
  readonly loadShop: (part: string) => Promise<ShopRecord | undefined>;
  readonly saveShop: (save: ShopSave) => Promise<ShopSaved>;
  readonly exportAll: (exportedAt: string) => Promise<Archive>;
  readonly importAll: (data: unknown) => Promise<ImportResult>;
  readonly close: () => Promise<void>;
};

/** Name of the database inside the data folder. */
export const DATABASE_FILE = 'keepworth.db';

/**
 * Opens the store in a folder, making folder and tables when they are not there.
 *
 * @param folder the data folder; see `dataFolder`
 * @throws StoreError when the folder cannot be written, or the file is damaged or newer than this program
 * Check: tests/store/open-store.test.ts
 */
export async function openStore(folder: string): Promise<Store> {
  const sqlite = await retryWhenBusy(() => openFile(folder), folder);
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: sqlite }) });
  try {
    await retryWhenBusy(() => migrate(db, sqlite), folder);
  } catch (thrown) {
    sqlite.close();
    throw thrown;
  }
  return {
    listVisits: (which) => retryWhenBusy(() => listVisits(db, which)),
    loadVisit: (id) => retryWhenBusy(() => loadVisit(db, id)),
    saveVisit: (request) => retryWhenBusy(() => saveVisit(db, request)),
    listRevisions: (id) => retryWhenBusy(() => listRevisions(db, id)),
    loadRevision: (id, revision) => retryWhenBusy(() => loadRevision(db, id, revision)),
    deleteVisit: (request) => retryWhenBusy(() => deleteVisit(db, request)),
    restoreVisit: (request) => retryWhenBusy(() => restoreVisit(db, request)),
    loadDemo: (request) => retryWhenBusy(() => loadDemo(db, request)),
    listDigests: (maker) => retryWhenBusy(() => listDigests(db, maker)),
    keepDigest: (digest, maker) => retryWhenBusy(() => keepDigest(db, digest, maker)),
    loadShop: (part) => retryWhenBusy(() => loadShop(db, part)),
    saveShop: (save) => retryWhenBusy(() => saveShop(db, save)),
    exportAll: (exportedAt) => retryWhenBusy(() => exportAll(db, exportedAt)),
    importAll: (data) => retryWhenBusy(() => importAll(db, data)),
    close: () => db.destroy(),
  };
}

function openFile(folder: string): Database.Database {
  let sqlite: Database.Database | undefined;
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    sqlite = new Database(path.join(folder, DATABASE_FILE), { timeout: STATEMENT_WAIT_MS });
    sqlite.pragma('journal_mode = WAL');
    // FULL: a commit has reached the disk before the save is answered.
    sqlite.pragma('synchronous = FULL');
    sqlite.pragma('foreign_keys = ON');
    return sqlite;
  } catch (thrown) {
    sqlite?.close();
    throw thrown;
  }
}

/** Brings the tables up to date. The lock lets several programs open a fresh folder at once. */
async function migrate(db: Kysely<Tables>, sqlite: Database.Database): Promise<void> {
  sqlite.exec('BEGIN IMMEDIATE');
  try {
    const migrator = new Migrator({ db, provider: migrationProvider, disableTransactions: true });
    const done = (await appliedMigrations(db)).filter((name) => !Object.hasOwn(MIGRATIONS, name));
    if (done.length > 0) throw new StoreError('newer', done.join(', '));
    const { error } = await migrator.migrateToLatest();
    if (error !== undefined) throw error;
    sqlite.exec('COMMIT');
  } catch (thrown) {
    if (sqlite.inTransaction) sqlite.exec('ROLLBACK');
    throw thrown;
  }
}

async function appliedMigrations(db: Kysely<Tables>): Promise<string[]> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true });
  if (!tables.some((table) => table.name === 'kysely_migration')) return [];
  const rows = await db
    .withTables<{ kysely_migration: { name: string } }>()
    .selectFrom('kysely_migration')
    .select('name')
    .execute();
  return rows.map((row) => row.name);
}
