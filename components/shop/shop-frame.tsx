import Link from 'next/link';
import type { ReactNode } from 'react';
import { t, tCode } from '@/components/words/shop-words';

/** Pages of the shop, in the order an owner needs them. */
export const SHOP_PAGES = ['rules', 'prices', 'defaults', 'wall-table', 'outcomes'] as const;
export type ShopPage = (typeof SHOP_PAGES)[number];

/** One page of the shop, with the way to its others and back to the visits. */
export function ShopFrame(props: {
  readonly here: ShopPage | undefined;
  readonly title: string;
  readonly what: string;
  readonly children: ReactNode;
}) {
  return (
    <div className="mx-auto max-w-5xl px-4 pb-12">
      <header className="pt-4 pb-4">
        <div className="no-print">
          <Link href="/" className="inline-flex min-h-12 items-center">
            {t('visit.all')}
          </Link>
          <nav aria-label={t('shop.title')} className="-mx-2 flex flex-wrap">
            {SHOP_PAGES.map((page) => (
              <Link
                key={page}
                href={`/shop/${page}`}
                aria-current={page === props.here ? 'page' : undefined}
                className={`inline-flex min-h-12 items-center px-2 ${page === props.here ? 'border-b-4 border-plum font-semibold text-ink no-underline' : ''}`}
              >
                {tCode(`shop.page.${page}`)}
              </Link>
            ))}
          </nav>
        </div>
        <h1 className="mt-3 text-3xl">{props.title}</h1>
        <p className="mt-1 max-w-prose">{props.what}</p>
      </header>
      {props.children}
    </div>
  );
}
