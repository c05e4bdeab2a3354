import type { Issue } from '@/lib/visit/issue';
import type { Refusal } from './draft-store';
import type { Draft } from './draft-tree';

export type SendResult =
  | { readonly kind: 'saved'; readonly revision: number }
  | {
      readonly kind: 'stale';
      readonly theirs: Draft;
      readonly theirRevision: number;
      readonly savedAt?: string;
      readonly deleted?: boolean;
    }
  | { readonly kind: 'offline' }
  /** The office has no such visit. */
  | { readonly kind: 'gone' }
  | { readonly kind: 'refused'; readonly refusal: Refusal };

/** Longer than this a weak signal is no signal; the draft is kept and tried again. */
const PATIENCE_MS = 20_000;

/**
 * Sends a draft to the office with the revision it was made from; a newer one there is answered, not overwritten.
 *
 * @param lasting true while the page is closing: the browser finishes the request on its own
 * @param patienceMs how long to wait for an answer
 */
export async function sendDraft(
  id: string,
  baseRevision: number,
  draft: Draft,
  lasting: boolean,
  patienceMs = PATIENCE_MS,
): Promise<SendResult> {
  try {
    const answer = await fetch(`/visits/${encodeURIComponent(id)}/draft`, {
      method: 'PUT',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ baseRevision, draft }),
      keepalive: lasting,
      ...(lasting ? {} : { signal: AbortSignal.timeout(patienceMs) }),
    });
    const body: unknown = await answer.json().catch(() => undefined);
    if (answer.ok && isSaved(body)) return { kind: 'saved', revision: body.revision };
    if (answer.status === 409 && isStale(body)) {
      const { draft: theirs, revision: theirRevision, savedAt, deleted } = body;
      return { kind: 'stale', theirs, theirRevision, savedAt, ...(deleted === true ? { deleted } : {}) };
    }
    if (answer.status >= 500) return { kind: 'offline' };
    return answer.status === 404 ? { kind: 'gone' } : { kind: 'refused', refusal: refusalOf(body) };
  } catch {
    return { kind: 'offline' };
  }
}

function isSaved(body: unknown): body is { revision: number } {
  return typeof (body as { revision?: unknown } | undefined)?.revision === 'number';
}

function isStale(body: unknown): body is {
  revision: number;
  draft: Draft;
  savedAt: string;
  deleted?: boolean;
} {
  return isSaved(body) && typeof (body as { draft?: unknown }).draft === 'object';
}

function refusalOf(body: unknown): Refusal {
  const { issues, error } = (body ?? {}) as { issues?: unknown; error?: unknown };
  return {
    issues: Array.isArray(issues) ? (issues as readonly Issue[]) : [],
    ...(typeof error === 'string' ? { sentence: error } : {}),
  };
}
