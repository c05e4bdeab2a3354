import type { Kysely, Migration, MigrationProvider } from 'kysely';

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
};

/** The list in the form the migrator reads. */
export const migrationProvider: MigrationProvider = {
  getMigrations: () => Promise.resolve({ ...MIGRATIONS }),
};
