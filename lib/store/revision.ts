import { draftFromText } from './draft-text';
import type { Json } from './json';
import type { RevisionTable } from './tables';
import type { VisitTitle } from './visit-title';

/** Who saved which revision, when. */
export type RevisionMark = {
  readonly id: string;
  readonly revision: number;
  /** ISO 8601 instant, UTC. */
  readonly savedAt: string;
  readonly savedBy: string;
  /** This revision took the visit off the list; its draft is the one before. */
  readonly deleted: boolean;
};

/** What a list shows. */
export type VisitSummary = RevisionMark & { readonly title: VisitTitle };

/** One saved state of a visit, whole. */
export type VisitRevision = RevisionMark & { readonly draft: Json };

type MarkRow = Omit<RevisionTable, 'draft' | 'title'>;

export const MARK_COLUMNS = ['visit_id', 'revision', 'saved_at', 'saved_by', 'deleted'] as const;

export function markOf(row: MarkRow): RevisionMark {
  return {
    id: row.visit_id,
    revision: row.revision,
    savedAt: row.saved_at,
    savedBy: row.saved_by,
    deleted: row.deleted === 1,
  };
}

export function summaryOf(row: MarkRow & { title: string }): VisitSummary {
  return { ...markOf(row), title: JSON.parse(row.title) as VisitTitle };
}

export function revisionOf(row: MarkRow & { draft: string }): VisitRevision {
  return { ...markOf(row), draft: draftFromText(row.draft) };
}
