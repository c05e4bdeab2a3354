import type { Kysely, Transaction } from 'kysely';
import type { Issue } from '../visit/issue';
import { draftFromText, draftToText } from './draft-text';
import type { Json } from './json';
import { loadVisit } from './read-visits';
import type { VisitRevision } from './revision';
import { markIssues, type SaveMark } from './save-mark';
import type { Tables } from './tables';
import { visitTitle } from './visit-title';

/** `baseRevision` of a visit never saved before. */
export const NEW_VISIT = 0;

export type SaveRequest = SaveMark & {
  /** The form as typed; it need not be a valid visit. */
  readonly draft: unknown;
  /** The revision the draft was made from; `NEW_VISIT` when there was none. */
  readonly baseRevision: number;
};

export type SaveResult =
  | { readonly ok: true; readonly revision: number }
  /** Somebody saved in between: both versions, and nothing was changed. `current.deleted` when it was deleted. */
  | { readonly ok: false; readonly kind: 'stale'; readonly current: VisitRevision; readonly yours: Json }
  /** The store has no such visit: save it as `NEW_VISIT` to keep it. */
  | { readonly ok: false; readonly kind: 'gone'; readonly yours: Json }
  | { readonly ok: false; readonly kind: 'refused'; readonly issues: readonly Issue[] };

/**
 * Saves a draft as the next revision, if the base revision is still the latest one.
 *
 * A save repeated because its answer was lost is not a conflict: when the latest revision already holds the same
 * draft, that revision is the answer.
 *
 * Check: tests/store/save-visit.test.ts, tests/store/racing-saves.test.ts
 */
export async function saveVisit(db: Kysely<Tables>, request: SaveRequest): Promise<SaveResult> {
  const text = draftToText(request.draft);
  const issues = [...markIssues(request), ...(text.ok ? [] : text.issues)];
  if (!text.ok || issues.length > 0) return { ok: false, kind: 'refused', issues };
  const draft = draftFromText(text.value);
  return db.transaction().execute(async (tx): Promise<SaveResult> => {
    const revision = await claimRevision(tx, request.id, request.baseRevision);
    if (revision !== undefined) {
      await insertRevision(tx, request, { revision, draft, deleted: false });
      return { ok: true, revision };
    }
    const current = await loadVisit(tx, request.id);
    if (current === undefined) return { ok: false, kind: 'gone', yours: draft };
    if (!current.deleted && JSON.stringify(current.draft) === text.value) {
      return { ok: true, revision: current.revision };
    }
    return { ok: false, kind: 'stale', current, yours: draft };
  });
}

/**
 * Takes the number of the next revision, or nothing when the base is no longer the latest.
 * The transaction's first statement must be this write: it takes the lock before anything is read, on SQLite and on
 * PostgreSQL alike, so of two savers with one base exactly one gets the number.
 */
export async function claimRevision(
  tx: Transaction<Tables>,
  id: string,
  baseRevision: number,
): Promise<number | undefined> {
  if (baseRevision === NEW_VISIT) {
    const made = await tx
      .insertInto('visits')
      .values({ id, head_revision: 1 })
      .onConflict((conflict) => conflict.column('id').doNothing())
      .executeTakeFirst();
    return made.numInsertedOrUpdatedRows === 1n ? 1 : undefined;
  }
  const moved = await tx
    .updateTable('visits')
    .set({ head_revision: baseRevision + 1 })
    .where('id', '=', id)
    .where('head_revision', '=', baseRevision)
    .executeTakeFirst();
  return moved.numUpdatedRows === 1n ? baseRevision + 1 : undefined;
}

/** Writes the row of a revision whose number was claimed. */
export async function insertRevision(
  tx: Transaction<Tables>,
  mark: SaveMark,
  state: { readonly revision: number; readonly draft: Json; readonly deleted: boolean },
): Promise<void> {
  await tx
    .insertInto('revisions')
    .values({
      visit_id: mark.id,
      revision: state.revision,
      draft: JSON.stringify(state.draft),
      title: JSON.stringify(visitTitle(state.draft)),
      saved_at: mark.savedAt,
      saved_by: mark.savedBy.trim(),
      deleted: state.deleted ? 1 : 0,
    })
    .execute();
}
