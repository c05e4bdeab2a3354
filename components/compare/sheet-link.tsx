'use client';

import { useState } from 'react';
import { useVisitId } from '@/components/draft/draft-context';
import { flushDrafts } from '@/components/draft/use-keep-draft';
import { t } from '@/components/words/words';

/** Downloads of the sheet and of the whole record; what was just typed is sent first, so that they hold it. */
export function SheetLink() {
  const id = useVisitId();
  const [waiting, setWaiting] = useState(false);
  const download = (file: string) => (event: { preventDefault: () => void }) => {
    event.preventDefault();
    setWaiting(true);
    void flushDrafts().finally(() => {
      setWaiting(false);
      window.location.assign(`/visits/${id}/${file}`);
    });
  };
  return (
    <>
      <a href={`/visits/${id}/appraisal.json`} className="press" onClick={download('appraisal.json')}>
        {t('compare.json')}
      </a>
      <a href={`/visits/${id}/sheet.pdf`} className="press press-main" onClick={download('sheet.pdf')}>
        {waiting ? t('compare.sending') : t('compare.sheet')}
      </a>
    </>
  );
}
