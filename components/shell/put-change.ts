import { t } from '@/components/words/words';

/** What a request to the office came to: its answer's revision, or why not, in words. */
export type Changed =
  | { readonly ok: true; readonly revision: number }
  | { readonly ok: false; readonly words: string };

/** Sends one change that rests on a revision; a refusal is told in the office's own words. */
export async function putChange(address: string, body: object): Promise<Changed> {
  try {
    const answer = await fetch(address, {
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
