'use client';

import { useEffect, useState } from 'react';
import { useVisitId } from '@/components/draft/draft-context';
import { flushDrafts } from '@/components/draft/use-keep-draft';
import { t } from '@/components/words/words';

/** Prints this page, or hands the sheet to whatever the device sends files with; without that, download it. */
export function PrintAndSend() {
  const id = useVisitId();
  const [canSend, setCanSend] = useState(false);
  const [said, setSaid] = useState('');
  useEffect(() => {
    const probe = new File([''], 'sheet.pdf', { type: 'application/pdf' });
    setCanSend(typeof navigator.canShare === 'function' && navigator.canShare({ files: [probe] }));
  }, []);
  const send = async () => {
    setSaid(t('compare.sending'));
    try {
      await flushDrafts();
      const answer = await fetch(`/visits/${id}/sheet.pdf`);
      if (!answer.ok) throw new Error(String(answer.status));
      const file = new File([await answer.blob()], `keepworth-${id}.pdf`, { type: 'application/pdf' });
      setSaid('');
      await navigator.share({ files: [file], title: t('compare.shareTitle') });
    } catch (thrown) {
      // Closing the device's own list of receivers is no failure.
      const closed = thrown instanceof DOMException && thrown.name === 'AbortError';
      setSaid(closed ? '' : t('compare.shareFailed'));
    }
  };
  return (
    <div className="no-print flex flex-wrap items-center gap-2">
      <button type="button" className="press" onClick={() => window.print()}>
        {t('compare.print')}
      </button>
      {canSend ? (
        <button type="button" className="press" onClick={() => void send()}>
          {t('compare.share')}
        </button>
      ) : null}
      <span role="status">{said}</span>
    </div>
  );
}
