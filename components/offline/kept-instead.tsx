'use client';

import { useEffect, useState } from 'react';
import { readLocalCopy } from '@/components/draft/local-copy';
import { sendKept } from '@/components/draft/send-kept';
import { t } from '@/components/words/words';

/**
 * On the page that says there is no such visit: one that this device started without a signal is sent now and then
 * opened; what the office will not take opens from this device's copy.
 */
export function KeptInstead() {
  const [kept, setKept] = useState<string | undefined>(undefined);
  useEffect(() => {
    const id = /^\/visits\/([a-z0-9-]+)/.exec(window.location.pathname)?.[1];
    if (id === undefined || readLocalCopy(id)?.unsent !== true) return;
    setKept(id);
    void sendKept(id).then((state) => {
      if (state === 'sent') window.location.reload();
    });
  }, []);
  if (kept === undefined) return null;
  return (
    <p className="note-plain mt-4">
      {t('kept.onThisDevice')}{' '}
      <a className="inline-flex min-h-12 items-center" href={`/kept/visit?visit=${kept}`}>
        {t('kept.open')}
      </a>
    </p>
  );
}
