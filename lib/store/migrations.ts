import type { Kysely, Migration, MigrationProvider } from 'kysely';
import { draftFromText } from './draft-text';
import type { Tables } from './tables';
import { visitTitle } from './visit-title';

/**
 * Every change of the tables, oldest first; run in order of name. Entries are only ever added.
 * Column types are those SQLite and PostgreSQL share.
 * Check: tests/store/open-store.test.ts
 */
export const MIGRATIONS: Readonly<Record<string, Migration>> = {
  '0001-visits-and-revisions': {
    async up(db: Kysely<unknown>): Promise<void> {
      await db.schema
        .createTable('visits')
        .addColumn('id', 'text', (col) => col.primaryKey())
        .addColumn('head_revision', 'integer', (col) => col.notNull())
        .execute();
      await db.schema
        .createTable('revisions')
        .addColumn('visit_id', 'text', (col) => col.notNull().references('visits.id'))
        .addColumn('revision', 'integer', (col) => col.notNull())
        .addColumn('draft', 'text', (col) => col.notNull())
        .addColumn('title', 'text', (col) => col.notNull())
        .addColumn('saved_at', 'text', (col) => col.notNull())
        .addColumn('saved_by', 'text', (col) => col.notNull())
        .addColumn('deleted', 'integer', (col) => col.notNull())
        .addPrimaryKeyConstraint('revisions_pk', ['visit_id', 'revision'])
        .execute();
      await db.schema
        .createTable('settings')
        .addColumn('key', 'text', (col) => col.primaryKey())
        .addColumn('value', 'text', (col) => col.notNull())
        .execute();
    },
  },
  '0002-digests-and-fuller-titles': {
    async up(db: Kysely<unknown>): Promise<void> {
      await db.schema
        .createTable('digests')
        .addColumn('visit_id', 'text', (col) => col.primaryKey().references('visits.id'))
        .addColumn('revision', 'integer', (col) => col.notNull())
        .addColumn('maker', 'text', (col) => col.notNull())
        .addColumn('digest', 'text', (col) => col.notNull())
        .execute();
      await renewTitles(db.withTables<Tables>());
    },
  },
  '0003-shop': {
    async up(db: Kysely<unknown>): Promise<void> {
      await db.schema
        .createTable('shop')
        .addColumn('part', 'text', (col) => col.notNull())
        .addColumn('revision', 'integer', (col) => col.notNull())
        .addColumn('data', 'text', (col) => col.notNull())
        .addColumn('saved_at', 'text', (col) => col.notNull())
        .addColumn('saved_by', 'text', (col) => col.notNull())
        .addPrimaryKeyConstraint('shop_pk', ['part', 'revision'])
        .execute();
    },
  },
};

/** Titles are made from the drafts; those of newest revisions are what lists show. */
async function renewTitles(db: Kysely<Tables>): Promise<void> {
  const rows = await db
    .selectFrom('visits')
    .innerJoin('revisions', (join) =>
      join
        .onRef('revisions.visit_id', '=', 'visits.id')
        .onRef('revisions.revision', '=', 'visits.head_revision'),
    )
    .select(['revisions.visit_id', 'revisions.revision', 'revisions.draft'])
    .execute();
  for (const { visit_id, revision, draft } of rows) {
    await db
      .updateTable('revisions')
      .set({ title: JSON.stringify(visitTitle(draftFromText(draft))) })
      .where('visit_id', '=', visit_id)
      .where('revision', '=', revision)
      .execute();
  }
}

/** The list in the form the migrator reads. */
export const migrationProvider: MigrationProvider = {
  getMigrations: () => Promise.resolve({ ...MIGRATIONS }),
};
