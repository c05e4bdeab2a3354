import type { Metadata } from 'next';
import { dateWords } from '@/components/format/time-words';
import { FittedRule } from '@/components/shop/fitted-rule';
import { PlainSections } from '@/components/shop/plain-sections';
import { ShopFrame } from '@/components/shop/shop-frame';
import { t } from '@/components/words/shop-words';
import type { VisitSummary } from '@/lib/store/revision';
import { store } from '../../open-store-once';
import { type Search, textsOf } from '../address-texts';
import { visitForWall, wallDocument } from '../wall-document';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: t('shop.wall.title') };

/** The largest repair price worth paying, for a house like that of a visit. */
export default async function WallTablePage(props: { searchParams: Search }) {
  const visits = await (await store()).listVisits();
  const chosen = visitForWall(visits, (await textsOf(props.searchParams)).visit);
  const content = chosen === undefined ? undefined : await wallDocument(chosen.id);
  return (
    <ShopFrame here="wall-table" title={t('shop.wall.title')} what={t('shop.wall.what')}>
      {chosen === undefined ? (
        <p className="panel text-lg">{t('shop.noVisits')}</p>
      ) : (
        <>
          <form method="get" className="no-print mb-4 flex flex-wrap items-end gap-3">
            <div className="min-w-0 flex-1">
              <label htmlFor="wall-visit" className="block font-medium">
                {t('shop.wall.like')}
              </label>
              <select id="wall-visit" name="visit" defaultValue={chosen.id} className="box mt-1 w-full">
                {visits.map((visit) => (
                  <option key={visit.id} value={visit.id}>
                    {nameOf(visit)}
                  </option>
                ))}
              </select>
            </div>
            <button type="submit" className="press">
              {t('shop.wall.show')}
            </button>
            {content === undefined ? null : (
              <a className="press press-main" href={`/shop/wall-table.pdf?visit=${chosen.id}`}>
                {t('shop.wall.print')}
              </a>
            )}
          </form>
          {content === undefined ? (
            <p className="note-plain">{t('shop.wall.notYet')}</p>
          ) : (
            <PlainSections content={content} />
          )}
          <FittedRule visitIds={visits.map((visit) => visit.id)} />
        </>
      )}
    </ShopFrame>
  );
}

function nameOf({ title }: VisitSummary): string {
  const date = title.visitDate === undefined ? undefined : dateWords(title.visitDate);
  return [title.customer ?? t('visit.unnamed'), title.town, date].filter(Boolean).join(', ');
}
