'use client';

import { useDraftState, useDraftStore } from '@/components/draft/draft-context';
import { t } from '@/components/words/words';

/** Takes back the last change, as often as wanted. */
export function UndoButton() {
  const store = useDraftStore();
  const what = useDraftState((s) => s.past.at(-1)?.what);
  if (what === undefined) return null;
  return (
    <button type="button" className="press px-3" onClick={store.undo} aria-label={t('undo.what', { what })}>
      {t('undo.undo')}
    </button>
  );
}
