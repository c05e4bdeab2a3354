'use client';

import { useState } from 'react';
import { dateWords } from '@/components/format/time-words';
import { t } from '@/components/words/words';
import { restoreVisit } from './delete-visit';
import type { ListRow } from './digest';
import { unitWords } from './list-query';

/** A deleted visit, with the way to put it back. */
export function DeletedRow(row: ListRow) {
  const [isBack, setIsBack] = useState(false);
  const [words, setWords] = useState('');
  const name = row.customer ?? t('visit.unnamed');
  const restore = async () => {
    const answer = await restoreVisit(row.id, row.revision);
    setIsBack(answer.ok);
    setWords(answer.ok ? t('deleted.back') : answer.words);
  };
  return (
    <li className="flex flex-wrap items-center gap-3 py-3">
      <div className="min-w-0 flex-1">
        <h2 className="text-xl">{isBack ? <a href={`/visits/${row.id}`}>{name}</a> : name}</h2>
        <p>
          {[row.town, row.visitDate === undefined ? undefined : dateWords(row.visitDate), unitWords(row)]
            .filter((word) => word !== undefined && word !== '')
            .join(' · ')}
        </p>
        <p role="status" className="font-semibold">
          {words}
        </p>
      </div>
      {isBack ? null : (
        <button
          type="button"
          className="press"
          aria-label={t('deleted.restoreOne', { name })}
          onClick={() => void restore()}
        >
          {t('deleted.restore')}
        </button>
      )}
    </li>
  );
}
