import Link from 'next/link';
import { FilesFold } from '@/components/list/files-fold';
import { StartVisit } from '@/components/list/start-visit';
import { VisitList } from '@/components/list/visit-list';
import { KeptList, KeptSince } from '@/components/offline/kept-list';
import { t } from '@/components/words/words';
import { store } from '../open-store-once';
import { assumptionsFor } from '../shop/assumptions-for';
import { todayHere } from '../shop/today';
import { knownDigests } from '../visit-digests';
import { createVisit } from '../visits/create-visit';
import { listRows } from './list-rows';

export const dynamic = 'force-dynamic';

type Search = Promise<Readonly<Record<string, string | string[] | undefined>>>;

/** All visits; what is searched for stands in the address. */
export default async function VisitsPage(props: { searchParams: Search }) {
  const rows = listRows(await (await store()).listVisits(), await knownDigests());
  return (
    <div className="mx-auto max-w-4xl px-4 pb-12">
      <header className="flex flex-wrap items-end justify-between gap-4 py-6">
        <div>
          <p className="font-serif text-lg font-bold text-plum">{t('app.name')}</p>
          <h1 className="text-3xl">{t('list.title')}</h1>
        </div>
        <StartVisit onServer={createVisit} assumptions={await assumptionsFor(todayHere())} />
      </header>
      <KeptSince />
      <KeptList />
      {rows.length === 0 ? (
        <div className="panel">
          <p className="text-lg">{t('list.empty')}</p>
          <p className="mt-2 text-soft">{t('list.emptyHow')}</p>
        </div>
      ) : (
        <VisitList rows={rows} address={addressOf(await props.searchParams)} />
      )}
      <div className="mt-8">
        <FilesFold />
        <Link href="/shop" className="flex min-h-12 items-center border-t border-hair">
          {t('list.shop')}
        </Link>
        <Link href="/deleted" className="flex min-h-12 items-center border-t border-hair">
          {t('deleted.title')}
        </Link>
      </div>
    </div>
  );
}

function addressOf(search: Awaited<Search>): string {
  const texts = Object.entries(search).flatMap(([key, value]) =>
    typeof value === 'string' ? [[key, value]] : [],
  );
  return `?${new URLSearchParams(texts)}`;
}
