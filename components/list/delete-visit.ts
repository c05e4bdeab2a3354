import { type Changed, putChange } from '@/components/shell/put-change';

/** Takes a visit off the list, if it still is as it was seen; it can be put back. */
export function deleteVisit(id: string, revision: number): Promise<Changed> {
  return putChange(deletionOf(id), { deleted: true, baseRevision: revision });
}

/** Puts a deleted visit back on the list. */
export function restoreVisit(id: string, revision: number): Promise<Changed> {
  return putChange(deletionOf(id), { deleted: false, baseRevision: revision });
}

function deletionOf(id: string): string {
  return `/visits/${encodeURIComponent(id)}/deletion`;
}
