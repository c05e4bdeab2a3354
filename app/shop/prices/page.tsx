import type { Metadata } from 'next';
import { PriceBookPage } from '@/components/shop/price-book';
import { ShopFrame } from '@/components/shop/shop-frame';
import { t } from '@/components/words/shop-words';
import { type Search, textsOf } from '../address-texts';
import { loadShop } from '../load-shop';
import { todayHere } from '../today';
import { itemOptions, itemRows, jobRows, priceEntries, taxOf } from './rows-of-book';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: t('shop.prices.title') };

/** What the shop charges. */
export default async function PricesPage(props: { searchParams: Search }) {
  const { shop, revisions } = await loadShop();
  const today = todayHere();
  const entries = priceEntries();
  const items = itemRows(shop.prices, entries, today);
  return (
    <ShopFrame here="prices" title={t('shop.prices.title')} what={t('shop.prices.what')}>
      {items.some((item) => item.invented) ? <p className="note-plain">{t('shop.prices.invented')}</p> : null}
      <PriceBookPage
        items={items}
        jobs={jobRows(shop.prices, today)}
        options={itemOptions(shop.prices)}
        entries={entries}
        tax={taxOf(shop.prices, entries, today)}
        revision={revisions.prices}
        today={today}
        open={(await textsOf(props.searchParams)).open ?? ''}
      />
    </ShopFrame>
  );
}
