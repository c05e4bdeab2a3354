'use client';

import { useEffect } from 'react';
import { useAppraisal } from '@/components/appraisal/appraisal-context';
import type { ChanceRow } from '@/components/appraisal/chance-view';
import { KindMark } from '@/components/compare/choice-table';
import { Titled } from '@/components/results/titled';
import { t } from '@/components/words/words';

/** How often each choice costs least, as so many of ten equal signs; the room is kept while it is worked out. */
export function ChancePanel() {
  const { simulated, simulate } = useAppraisal();
  useEffect(() => simulate(), [simulate]);
  const chances = simulated?.chances;
  return (
    <Titled title={t('odds.title')} level={2} className="panel min-h-72 min-w-0">
      <p role="status" className="min-h-6 text-soft">
        {simulated === undefined ? t('odds.waiting') : simulated.stale ? t('odds.stale') : ''}
      </p>
      {chances === undefined ? (
        simulated === undefined ? null : (
          <p>{t('odds.nothing')}</p>
        )
      ) : (
        <>
          <p className="text-lg font-semibold">{chances.sentence}</p>
          <ul className="mt-3 grid gap-4">
            {chances.rows.map((row) => (
              <Row key={row.id} row={row} />
            ))}
          </ul>
          <p className="mt-3 text-soft">{chances.how}</p>
        </>
      )}
    </Titled>
  );
}

function Row(props: { readonly row: ChanceRow }) {
  const { row } = props;
  return (
    <li className="grid gap-x-6 sm:grid-cols-[minmax(0,1fr)_15rem]">
      <div>
        <span className="font-semibold">
          <KindMark kind={row.kind} /> {row.name}
        </span>
        <span className="block text-soft">{t('odds.range', { range: row.range })}</span>
        <span className="block text-soft">{row.regret}</span>
      </div>
      <div>
        <span aria-hidden="true" className="block text-2xl tracking-wider">
          {'●'.repeat(row.count)}
          {'○'.repeat(row.of - row.count)}
        </span>
        <span className="block font-semibold">{row.chance}</span>
      </div>
    </li>
  );
}
