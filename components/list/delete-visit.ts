import { t } from '@/components/words/words';

/** What a request to the office came to: its answer's revision, or why not, in words. */
export type Changed =
  | { readonly ok: true; readonly revision: number }
  | { readonly ok: false; readonly words: string };

/** Takes a visit off the list, if it still is as it was seen; it can be put back. */
export function deleteVisit(id: string, revision: number): Promise<Changed> {
  return change(id, { deleted: true, baseRevision: revision });
}

/** Puts a deleted visit back on the list. */
export function restoreVisit(id: string, revision: number): Promise<Changed> {
  return change(id, { deleted: false, baseRevision: revision });
}

async function change(id: string, body: { deleted: boolean; baseRevision: number }): Promise<Changed> {
  try {
    const answer = await fetch(`/visits/${encodeURIComponent(id)}/deletion`, {
      method: 'PUT',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    const told = (await answer.json().catch(() => undefined)) as
      | { revision?: unknown; error?: unknown }
      | undefined;
    if (answer.ok && typeof told?.revision === 'number') return { ok: true, revision: told.revision };
    return { ok: false, words: typeof told?.error === 'string' ? told.error : t('list.notDone') };
  } catch {
    return { ok: false, words: t('list.noSignal') };
  }
}
