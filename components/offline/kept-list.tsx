'use client';

import { useEffect, useState } from 'react';
import type { SentState } from '@/components/draft/send-kept';
import { timeWords } from '@/components/format/time-words';
import { t, type WordCode } from '@/components/words/words';
import { useKeptVisits } from './kept-visits';
import { keptSince } from './register-worker';

const STATE_WORDS: Readonly<Record<SentState, WordCode>> = {
  sent: 'kept.waiting',
  waiting: 'kept.waiting',
  open: 'kept.openElsewhere',
  conflict: 'kept.conflict',
  refused: 'kept.refused',
};

/** What waits on this device, above the list; nothing when nothing waits. */
export function KeptList() {
  const kept = useKeptVisits();
  const [mayVanish, setMayVanish] = useState(false);
  useEffect(() => {
    void navigator.storage?.persisted?.().then((safe) => setMayVanish(!safe));
  }, []);
  if (kept.length === 0) return null;
  return (
    <section aria-labelledby="kept" className="note-doubt mb-6">
      <h2 id="kept" className="text-xl">
        {t('kept.title')}
      </h2>
      <p>
        {t('kept.what')} {mayVanish ? t('kept.mayVanish') : null}
      </p>
      <ul className="rows mt-2">
        {kept.map(({ id, name, at, state }) => (
          <li key={id} className="py-2">
            <a href={`/visits/${id}`} className="inline-flex min-h-12 items-center font-semibold">
              {name === '' ? t('visit.unnamed') : name}
            </a>
            <p>
              {t('kept.since', { time: timeWords(at) })}, {t(STATE_WORDS[state])}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Says so when the page is one this device kept, not one the office just sent. */
export function KeptSince() {
  const [since, setSince] = useState<number | undefined>(undefined);
  useEffect(() => {
    void keptSince().then(setSince);
  }, []);
  return (
    <div role="status">
      {since === undefined ? null : (
        <p className="note-doubt mb-6">{t('kept.listSince', { time: timeWords(since) })}</p>
      )}
    </div>
  );
}
