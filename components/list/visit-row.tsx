'use client';

import Link from 'next/link';
import { useState } from 'react';
import { dateWords } from '@/components/format/time-words';
import { t } from '@/components/words/words';
import { copyVisit } from './copy-visit';
import { deleteVisit, restoreVisit } from './delete-visit';
import type { ListRow } from './digest';
import { unitWords } from './list-query';

/** A visit in the list; its whole upper part opens it. */
export function VisitRow(props: { readonly row: ListRow }) {
  const { row } = props;
  const [deletedAs, setDeletedAs] = useState<number | undefined>(undefined);
  const [words, setWords] = useState('');
  const name = row.customer ?? t('visit.unnamed');
  if (deletedAs !== undefined) {
    return (
      <li className="flex flex-wrap items-center gap-3 py-3">
        <p role="status" className="min-w-0 flex-1">
          {t('list.deleted', { name })} {words}
        </p>
        <button
          type="button"
          className="press"
          onClick={async () => {
            const answer = await restoreVisit(row.id, deletedAs);
            if (answer.ok) setDeletedAs(undefined);
            setWords(answer.ok ? '' : answer.words);
          }}
        >
          {t('undo.undo')}
        </button>
      </li>
    );
  }
  const remove = async () => {
    const answer = await deleteVisit(row.id, row.revision);
    setWords(answer.ok ? '' : answer.words);
    if (answer.ok) setDeletedAs(answer.revision);
  };
  const copy = async (withReadings: boolean) => {
    const answer = await copyVisit(row.id, withReadings);
    if (answer.ok) window.location.assign(`/visits/${answer.id}`);
    else setWords(answer.words);
  };
  return (
    <li className="py-3 [contain-intrinsic-size:auto_9rem] [content-visibility:auto]">
      <div className="relative hover:bg-plum-wash">
        <div className="flex flex-wrap items-baseline justify-between gap-x-4">
          <h2 className="text-xl">
            <Link
              href={`/visits/${row.id}`}
              prefetch={false}
              className="text-ink after:absolute after:inset-0"
            >
              {name}
            </Link>
          </h2>
          <p className="text-soft">{row.visitDate === undefined ? '' : dateWords(row.visitDate)}</p>
        </div>
        <p>
          {[row.street, row.town, unitWords(row)]
            .filter((word) => word !== undefined && word !== '')
            .join(' · ')}
        </p>
        <p className="font-semibold">
          {row.digest?.headline ?? <span className="font-normal text-soft">{t('list.working')}</span>}
        </p>
        {row.chosen === undefined ? null : (
          <p>{t('list.chosenOn', { name: row.chosen.name, date: dateWords(row.chosen.date) })}</p>
        )}
        {row.invented === true ? <p className="text-soft">{t('list.invented')}</p> : null}
      </div>
      <details>
        <summary
          aria-label={t('list.moreFor', { name })}
          className="inline-flex min-h-12 list-none items-center gap-1 text-plum [&::-webkit-details-marker]:hidden"
        >
          <span aria-hidden="true" className="fold-mark">
            ▸
          </span>
          {t('list.more')}
        </summary>
        <div className="flex flex-wrap gap-2 pb-2">
          <button type="button" className="press" onClick={() => void copy(false)}>
            {t('list.copyHouse')}
          </button>
          <button type="button" className="press" onClick={() => void copy(true)}>
            {t('list.copyAll')}
          </button>
          <button type="button" className="press" onClick={() => void remove()}>
            {t('list.delete')}
          </button>
        </div>
      </details>
      <p role="status" className="font-semibold text-danger">
        {words}
      </p>
    </li>
  );
}
