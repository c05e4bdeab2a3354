import type { Kysely } from 'kysely';
import { ARCHIVE_VERSION, type Archive, type ArchivedVisit } from './archive';
import { draftFromText } from './draft-text';
import type { RevisionTable, Tables } from './tables';

/**
 * Everything in the store, deleted visits and old revisions included.
 *
 * @param exportedAt now, by the caller's clock
 * Check: tests/store/archive.test.ts
 */
export async function exportAll(db: Kysely<Tables>, exportedAt: string): Promise<Archive> {
  // One statement, so that no save can fall between two reads.
  const rows = await db.selectFrom('revisions').selectAll().orderBy('visit_id').orderBy('revision').execute();
  return { archiveVersion: ARCHIVE_VERSION, exportedAt, visits: archivedVisits(rows) };
}

/** Rows sorted by visit and revision, as visits. */
export function archivedVisits(rows: readonly RevisionTable[]): ArchivedVisit[] {
  const byId = new Map<string, ArchivedVisit>();
  for (const row of rows) {
    const visit = byId.get(row.visit_id) ?? { id: row.visit_id, revisions: [] };
    byId.set(row.visit_id, visit);
    visit.revisions.push({
      revision: row.revision,
      savedAt: row.saved_at,
      savedBy: row.saved_by,
      deleted: row.deleted === 1,
      draft: draftFromText(row.draft),
    });
  }
  return [...byId.values()];
}
