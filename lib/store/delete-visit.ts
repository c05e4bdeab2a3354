import type { Kysely } from 'kysely';
import type { Issue } from '../visit/issue';
import { loadVisit } from './read-visits';
import type { VisitRevision } from './revision';
import { markIssues, type SaveMark } from './save-mark';
import { claimRevision, insertRevision } from './save-visit';
import type { Tables } from './tables';

/** `baseRevision` is the one the user saw when deciding. */
export type DeleteRequest = SaveMark & { readonly baseRevision: number };

export type DeleteResult =
  | { readonly ok: true; readonly revision: number }
  /** Somebody saved in between: nothing was changed. */
  | { readonly ok: false; readonly kind: 'stale'; readonly current: VisitRevision }
  | { readonly ok: false; readonly kind: 'gone' }
  | { readonly ok: false; readonly kind: 'refused'; readonly issues: readonly Issue[] };

/**
 * Takes a visit off the list. This is one more revision: nothing is lost, and `restoreVisit` brings it back.
 *
 * Check: tests/store/delete-visit.test.ts
 */
export function deleteVisit(db: Kysely<Tables>, request: DeleteRequest): Promise<DeleteResult> {
  return markDeleted(db, request, true);
}

/**
 * Puts a deleted visit back on the list as it was, as one more revision.
 *
 * Check: tests/store/delete-visit.test.ts
 */
export function restoreVisit(db: Kysely<Tables>, request: DeleteRequest): Promise<DeleteResult> {
  return markDeleted(db, request, false);
}

async function markDeleted(
  db: Kysely<Tables>,
  request: DeleteRequest,
  deleted: boolean,
): Promise<DeleteResult> {
  const issues = markIssues(request);
  if (issues.length > 0) return { ok: false, kind: 'refused', issues };
  return db.transaction().execute(async (tx): Promise<DeleteResult> => {
    const seen = request.baseRevision > 0 ? request.baseRevision : -1;
    const revision = await claimRevision(tx, request.id, seen);
    if (revision === undefined) {
      const current = await loadVisit(tx, request.id);
      if (current === undefined) return { ok: false, kind: 'gone' };
      return current.deleted === deleted
        ? { ok: true, revision: current.revision }
        : { ok: false, kind: 'stale', current };
    }
    const base = await tx
      .selectFrom('revisions')
      .select('draft')
      .where('visit_id', '=', request.id)
      .where('revision', '=', request.baseRevision)
      .executeTakeFirstOrThrow();
    await insertRevision(tx, request, { revision, draft: JSON.parse(base.draft), deleted });
    return { ok: true, revision };
  });
}
