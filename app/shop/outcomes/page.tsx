import type { Metadata } from 'next';
import { OutcomesPage } from '@/components/shop/outcomes-page';
import { ShopFrame } from '@/components/shop/shop-frame';
import { t } from '@/components/words/shop-words';
import { store } from '../../open-store-once';
import { loadShop } from '../load-shop';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: t('shop.outcomes.title') };

/** What came of repairs. */
export default async function Page() {
  const { revisions } = await loadShop();
  const visits = await (await store()).listVisits();
  return (
    <ShopFrame here="outcomes" title={t('shop.outcomes.title')} what={t('shop.outcomes.what')}>
      <OutcomesPage visitIds={visits.map((visit) => visit.id)} revision={revisions.defaults} />
    </ShopFrame>
  );
}
