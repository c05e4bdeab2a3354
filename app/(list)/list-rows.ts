import type { ListRow, VisitDigest } from '@/components/list/digest';
import type { VisitSummary } from '@/lib/store/revision';

/** Rows of the list from what the store has of each visit. */
export function listRows(
  visits: readonly VisitSummary[],
  digests: ReadonlyMap<string, VisitDigest>,
): readonly ListRow[] {
  return visits.map(({ id, revision, savedAt, title }) => {
    const digest = digests.get(`${id} ${revision}`);
    return { id, revision, savedAt, ...title, ...(digest === undefined ? {} : { digest }) };
  });
}
