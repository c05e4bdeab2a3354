import type { Metadata } from 'next';
import Link from 'next/link';
import { SHOP_PAGES, ShopFrame } from '@/components/shop/shop-frame';
import { t, tCode } from '@/components/words/shop-words';

export const metadata: Metadata = { title: t('shop.title') };

/** What an owner sets, and what came of it. */
export default function ShopPage() {
  return (
    <ShopFrame here={undefined} title={t('shop.title')} what={t('shop.what')}>
      <ul className="panel rows">
        {SHOP_PAGES.map((page) => (
          <li key={page} className="py-2">
            <Link href={`/shop/${page}`} className="inline-flex min-h-12 items-center text-xl font-semibold">
              {tCode(`shop.page.${page}`)}
            </Link>
            <p>{tCode(`shop.pageWhat.${page}`)}</p>
          </li>
        ))}
      </ul>
    </ShopFrame>
  );
}
