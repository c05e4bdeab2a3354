import type { Draft } from './draft-tree';

export type SendResult =
  | { readonly kind: 'saved'; readonly revision: number }
  | {
      readonly kind: 'stale';
      readonly theirs: Draft;
      readonly theirRevision: number;
      readonly savedAt?: string;
    }
  | { readonly kind: 'offline' }
  | { readonly kind: 'refused' };

/**
 * Sends a draft to the office with the revision it was made from; a newer one there is answered, not overwritten.
 *
 * @param lasting true while the page is closing: the browser finishes the request on its own
 */
export async function sendDraft(
  id: string,
  baseRevision: number,
  draft: Draft,
  lasting: boolean,
): Promise<SendResult> {
  try {
    const answer = await fetch(`/visits/${encodeURIComponent(id)}/draft`, {
      method: 'PUT',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ baseRevision, draft }),
      keepalive: lasting,
    });
    const body: unknown = await answer.json().catch(() => undefined);
    if (answer.ok && isSaved(body)) return { kind: 'saved', revision: body.revision };
    if (answer.status === 409 && isStale(body)) {
      return { kind: 'stale', theirs: body.draft, theirRevision: body.revision, savedAt: body.savedAt };
    }
    return { kind: answer.status >= 500 ? 'offline' : 'refused' };
  } catch {
    return { kind: 'offline' };
  }
}

function isSaved(body: unknown): body is { revision: number } {
  return typeof (body as { revision?: unknown } | undefined)?.revision === 'number';
}

function isStale(body: unknown): body is { revision: number; draft: Draft; savedAt: string } {
  return isSaved(body) && typeof (body as { draft?: unknown }).draft === 'object';
}
