import type { Kysely } from 'kysely';
import {
  MARK_COLUMNS,
  type RevisionMark,
  revisionOf,
  summaryOf,
  type VisitRevision,
  type VisitSummary,
} from './revision';
import type { Tables } from './tables';

/**
 * Latest revision of every visit, the one saved last first.
 *
 * @param which those on the list, or those deleted (to bring one back)
 * Check: tests/store/read-visits.test.ts
 */
export async function listVisits(
  db: Kysely<Tables>,
  which: 'present' | 'deleted' = 'present',
): Promise<VisitSummary[]> {
  const rows = await latestRevisions(db)
    .select([...MARK_COLUMNS, 'title'])
    .where('deleted', '=', which === 'deleted' ? 1 : 0)
    .orderBy('saved_at', 'desc')
    .orderBy('visit_id')
    .execute();
  return rows.map(summaryOf);
}

/**
 * Latest revision of one visit, also when it is deleted (`deleted` says so).
 *
 * @returns the revision, or `undefined` when there is no such visit
 * Check: tests/store/read-visits.test.ts
 */
export async function loadVisit(db: Kysely<Tables>, id: string): Promise<VisitRevision | undefined> {
  const row = await latestRevisions(db)
    .select([...MARK_COLUMNS, 'draft'])
    .where('visits.id', '=', id)
    .executeTakeFirst();
  return row === undefined ? undefined : revisionOf(row);
}

/**
 * Every save of one visit, newest first, without the drafts; empty when there is no such visit.
 *
 * Check: tests/store/read-visits.test.ts
 */
export async function listRevisions(db: Kysely<Tables>, id: string): Promise<VisitSummary[]> {
  const rows = await db
    .selectFrom('revisions')
    .select([...MARK_COLUMNS, 'title'])
    .where('visit_id', '=', id)
    .orderBy('revision', 'desc')
    .execute();
  return rows.map(summaryOf);
}

/**
 * One earlier state of a visit.
 *
 * @returns the revision, or `undefined` when there is none of that number
 * Check: tests/store/read-visits.test.ts
 */
export async function loadRevision(
  db: Kysely<Tables>,
  id: string,
  revision: RevisionMark['revision'],
): Promise<VisitRevision | undefined> {
  const row = await db
    .selectFrom('revisions')
    .select([...MARK_COLUMNS, 'draft'])
    .where('visit_id', '=', id)
    .where('revision', '=', revision)
    .executeTakeFirst();
  return row === undefined ? undefined : revisionOf(row);
}

/** Every visit joined with its newest revision. */
function latestRevisions(db: Kysely<Tables>) {
  return db
    .selectFrom('visits')
    .innerJoin('revisions', (join) =>
      join
        .onRef('revisions.visit_id', '=', 'visits.id')
        .onRef('revisions.revision', '=', 'visits.head_revision'),
    );
}
