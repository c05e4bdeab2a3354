import { t } from '@/components/words/shop-words';
import type { ShopChange } from '@/lib/visit/shop-change';

export type ChangeSaved =
  | { readonly ok: true; readonly revision: number }
  | { readonly ok: false; readonly words: string };

/** Puts one thing in force, if the shop still is as it was seen. */
export async function saveChange(baseRevision: number, change: ShopChange): Promise<ChangeSaved> {
  try {
    const answer = await fetch('/shop/changes', {
      method: 'PUT',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ baseRevision, change }),
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
