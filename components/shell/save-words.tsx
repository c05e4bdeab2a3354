'use client';

import { useDraftState } from '@/components/draft/draft-context';
import type { SaveState } from '@/components/draft/draft-store';
import { timeWords } from '@/components/format/time-words';
import { t } from '@/components/words/words';

/** Where the newest change is kept, in words. */
export function SaveWords() {
  const save = useDraftState((s) => s.save);
  return (
    <p role="status" className="text-soft">
      {saveWords(save)}
    </p>
  );
}

function saveWords(save: SaveState): string {
  if (save.kind === 'untouched') return t('save.untouched');
  const time = timeWords(save.at);
  if (save.kind === 'nowhere') return t('save.nowhere');
  if (save.kind === 'sent') return t('save.sent', { time });
  if (save.why === 'offline') return t('save.offline', { time });
  if (save.why === 'refused') return t('save.refused', { time });
  return t('save.onDevice', { time });
}
