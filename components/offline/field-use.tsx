'use client';

import { useEffect, useState } from 'react';
import { flushDrafts } from '@/components/draft/use-keep-draft';
import { t } from '@/components/words/words';
import { sendWaiting } from './kept-visits';
import { type Offer, registerWorker } from './register-worker';

const AGAIN_MS = 60_000;

/** On every page: keeps the app for times without a signal, sends what waited, and offers a new version. */
export function FieldUse() {
  const [offer, setOffer] = useState<Offer | undefined>(undefined);
  useEffect(() => {
    const stop = registerWorker(setOffer);
    const send = () => void sendWaiting();
    send();
    const timer = setInterval(send, AGAIN_MS);
    window.addEventListener('online', send);
    return () => {
      stop();
      clearInterval(timer);
      window.removeEventListener('online', send);
    };
  }, []);
  return (
    <div role="status" className="no-print">
      {offer === undefined ? null : (
        <div className="note-plain mx-auto flex max-w-7xl flex-wrap items-center gap-3">
          <p className="flex-1">{t('update.ready')}</p>
          <button
            type="button"
            className="press"
            onClick={() => void flushDrafts().finally(() => offer.take())}
          >
            {t('update.take')}
          </button>
        </div>
      )}
    </div>
  );
}
