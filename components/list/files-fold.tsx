'use client';

import { useState } from 'react';
import { Fold } from '@/components/visit/fold';
import { t } from '@/components/words/words';
import { type ImportAnswer, importFile } from './import-file';

/** Everything as one file, and back. */
export function FilesFold() {
  const [answer, setAnswer] = useState<ImportAnswer | undefined>(undefined);
  const [isBusy, setIsBusy] = useState(false);
  const take = async (file: File | undefined) => {
    if (file === undefined || isBusy) return;
    setIsBusy(true);
    setAnswer(await importFile(file));
    setIsBusy(false);
  };
  return (
    <Fold title={t('files.title')}>
      <p>{t('files.exportWhat')}</p>
      <a href="/everything.json" download className="press mt-2">
        {t('files.export')}
      </a>
      <p className="mt-6">{t('files.importWhat')}</p>
      <label htmlFor="import-file" className="mt-2 block font-medium">
        {t('files.import')}
      </label>
      <input
        id="import-file"
        type="file"
        accept="application/json,.json"
        className="box mt-1 w-full"
        onChange={(event) => {
          const { files } = event.target;
          void take(files?.[0]);
        }}
      />
      <div role="status" className="mt-3">
        {isBusy ? <p>{t('files.reading')}</p> : null}
        {isBusy || answer === undefined ? null : (
          <div className={answer.ok ? 'note-plain' : 'note-danger'}>
            <p className="font-semibold">{answer.title}</p>
            <ul className="list-disc pl-5">
              {answer.lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
            {answer.ok ? (
              <button type="button" className="press mt-2" onClick={() => window.location.reload()}>
                {t('files.show')}
              </button>
            ) : null}
          </div>
        )}
      </div>
    </Fold>
  );
}
