import type { Metadata } from 'next';
import { Titled } from '@/components/results/titled';
import { DefaultEditor } from '@/components/shop/default-editor';
import { DEFAULT_GROUPS } from '@/components/shop/default-groups';
import { ShopFold } from '@/components/shop/shop-fold';
import { ShopFrame } from '@/components/shop/shop-frame';
import { t, tCode } from '@/components/words/shop-words';
import { type Search, textsOf } from '../address-texts';
import { loadShop } from '../load-shop';
import { todayHere } from '../today';
import { defaultRow } from './rows-of-defaults';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: t('shop.defaults.title') };

/** What new visits assume where nobody measured. */
export default async function DefaultsPage(props: { searchParams: Search }) {
  const { shop, revisions } = await loadShop();
  const today = todayHere();
  const { open } = await textsOf(props.searchParams);
  return (
    <ShopFrame here="defaults" title={t('shop.defaults.title')} what={t('shop.defaults.what')}>
      {DEFAULT_GROUPS.map(({ id, keys }) => (
        <Titled key={id} title={tCode(`shop.defaults.group.${id}`)} level={2} className="panel mt-8">
          <div className="rows mt-2">
            {keys.map((key) => {
              const row = defaultRow(shop.defaults, key, today);
              return (
                <ShopFold key={key} id={key} title={row.entry.label} aside={row.words} open={open === key}>
                  <DefaultEditor row={row} revision={revisions.defaults} today={today} />
                </ShopFold>
              );
            })}
          </div>
        </Titled>
      ))}
    </ShopFrame>
  );
}
