import Link from 'next/link';
import { Suspense } from 'react';
import { dateWords } from '@/components/format/time-words';
import { StartVisit } from '@/components/list/start-visit';
import { KeptList, KeptSince } from '@/components/offline/kept-list';
import { t, tCode, tn } from '@/components/words/words';
import type { VisitSummary } from '@/lib/store/revision';
import { store } from '../open-store-once';
import { visitHeadline } from '../visit-headlines';
import { createVisit } from '../visits/create-visit';

export const dynamic = 'force-dynamic';

/** All visits, the one saved last first. */
export default async function VisitsPage() {
  const visits = await (await store()).listVisits();
  return (
    <div className="mx-auto max-w-4xl px-4 pb-12">
      <header className="flex flex-wrap items-end justify-between gap-4 py-6">
        <div>
          <p className="font-serif text-lg font-bold text-plum">{t('app.name')}</p>
          <h1 className="text-3xl">{t('list.title')}</h1>
        </div>
        <StartVisit onServer={createVisit} />
      </header>
      <KeptSince />
      <KeptList />
      {visits.length === 0 ? (
        <div className="panel">
          <p className="text-lg">{t('list.empty')}</p>
          <p className="mt-2 text-soft">{t('list.emptyHow')}</p>
        </div>
      ) : (
        <section aria-label={t('list.title')} className="panel">
          <p className="text-soft">{tn('list.count', visits.length)}</p>
          <ul className="rows mt-2">
            {visits.map((visit) => (
              <Row key={visit.id} visit={visit} />
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}

function Row(props: { readonly visit: VisitSummary }) {
  const { id, revision, title } = props.visit;
  const unit = [
    title.unitKind === undefined ? undefined : tCode(`option.unitKind.${title.unitKind}`),
    title.nominalTons === undefined ? undefined : t('list.tons', { n: title.nominalTons }),
    title.refrigerant,
  ].filter((word) => word !== undefined);
  return (
    <li className="relative py-4 hover:bg-plum-wash">
      <div className="flex flex-wrap items-baseline justify-between gap-x-4">
        <h2 className="text-xl">
          <Link href={`/visits/${id}`} className="text-ink after:absolute after:inset-0">
            {title.customer ?? t('visit.unnamed')}
          </Link>
        </h2>
        <p className="text-soft">{title.visitDate === undefined ? '' : dateWords(title.visitDate)}</p>
      </div>
      <p>{[title.town, unit.join(', ')].filter((word) => word !== undefined && word !== '').join(' · ')}</p>
      <p className="font-semibold">
        <Suspense fallback={<span className="font-normal text-soft">{t('list.working')}</span>}>
          <Headline id={id} revision={revision} />
        </Suspense>
      </p>
      {title.invented === true ? <p className="text-soft">{t('list.invented')}</p> : null}
    </li>
  );
}

async function Headline(props: { readonly id: string; readonly revision: number }) {
  return await visitHeadline(props.id, props.revision);
}
