'use client';

import { useMemo } from 'react';
import { t, tn } from '@/components/words/words';
import type { ListRow } from './digest';
import { ListFilters } from './list-filters';
import { type ListQuery, needsDigests, PAGE_ROWS, rowsFor } from './list-query';
import { useDigests } from './use-digests';
import { useQuery } from './use-query';
import { VisitRow } from './visit-row';

/** All visits, searched, filtered and in the order the address asks for. */
export function VisitList(props: { readonly rows: readonly ListRow[]; readonly address: string }) {
  const rows = useDigests(props.rows);
  const [query, change] = useQuery(props.address);
  const found = useMemo(() => rowsFor(rows, query), [rows, query]);
  const pages = Math.max(1, Math.ceil(found.length / PAGE_ROWS));
  const page = Math.min(query.page, pages);
  const missing = rows.filter((row) => row.digest === undefined).length;
  return (
    <section aria-label={t('list.title')} className="panel">
      <ListFilters rows={rows} query={query} change={change} />
      <p role="status" className="text-soft">
        {found.length === rows.length
          ? tn('list.count', rows.length)
          : t('list.found', { n: found.length, of: rows.length })}
        {missing > 0 && needsDigests(query) ? ` ${tn('list.missing', missing)}` : null}
      </p>
      {found.length === 0 ? (
        <div className="note-plain mt-3">
          <p>{t('list.nothing')}</p>
          <button type="button" className="press mt-2" onClick={() => change(NOTHING_ASKED)}>
            {t('list.showAll')}
          </button>
        </div>
      ) : (
        <ul className="rows mt-2">
          {found.slice((page - 1) * PAGE_ROWS, page * PAGE_ROWS).map((row) => (
            <VisitRow key={row.id} row={row} />
          ))}
        </ul>
      )}
      {pages > 1 ? <Pages page={page} pages={pages} onGo={(to) => change({ page: to })} /> : null}
    </section>
  );
}

const NOTHING_ASKED: Partial<ListQuery> = {
  search: '',
  year: '',
  advice: '',
  mode: '',
  cause: '',
  chosen: '',
};

function Pages(props: {
  readonly page: number;
  readonly pages: number;
  readonly onGo: (page: number) => void;
}) {
  const { page, pages } = props;
  const go = (to: number) => {
    props.onGo(to);
    window.scrollTo({ top: 0 });
  };
  return (
    <nav aria-label={t('list.pages')} className="flex flex-wrap items-center gap-3 border-t border-hair pt-3">
      {page > 1 ? (
        <button type="button" className="press" onClick={() => go(page - 1)}>
          {t('list.before')}
        </button>
      ) : null}
      <p>{t('list.page', { page, pages })}</p>
      {page < pages ? (
        <button type="button" className="press" onClick={() => go(page + 1)}>
          {t('list.next')}
        </button>
      ) : null}
    </nav>
  );
}
