'use client';

import { Titled } from '@/components/results/titled';
import { t, tCode } from '@/components/words/shop-words';
import { type HistoryLine, HistoryList } from './history-list';
import { ItemEditor, TaxEditor } from './item-editor';
import { JobEditor } from './job-editor';
import type { ItemOption, ItemRow, JobRow, PriceEntries } from './price-rows';
import { ShopFold } from './shop-fold';

const GROUPS = ['repair', 'replace', 'test'] as const;
const KINDS = ['labour', 'part', 'refrigerant', 'equipment', 'permit', 'other'] as const;

/** Prices by item, and the jobs made from them; every price keeps its history. */
export function PriceBookPage(props: {
  readonly items: readonly ItemRow[];
  readonly jobs: readonly JobRow[];
  readonly options: readonly ItemOption[];
  readonly entries: PriceEntries;
  readonly tax: { readonly words: string; readonly history: readonly HistoryLine[] };
  readonly revision: number;
  readonly today: string;
  /** Row that the address opens. */
  readonly open: string;
}) {
  const { items, jobs, options, entries, revision, today, open } = props;
  return (
    <>
      <Titled title={t('shop.prices.items')} level={2} className="panel mt-8">
        {KINDS.map((kind) => {
          const own = items.filter((item) => item.kind === kind);
          return own.length === 0 ? null : (
            <Titled key={kind} title={tCode(`option.lineKind.${kind}`)} level={3} className="mt-4">
              <div className="rows">
                {own.map((row) => (
                  <ShopFold
                    key={row.id}
                    id={`item-${row.id}`}
                    title={row.label}
                    aside={
                      row.invented
                        ? t('shop.prices.inventedPrice', { price: row.priceWords })
                        : row.priceWords
                    }
                    open={open === `item-${row.id}`}
                  >
                    <ItemEditor row={row} entry={entries.price} revision={revision} today={today} />
                  </ShopFold>
                ))}
              </div>
            </Titled>
          );
        })}
        <Titled title={t('option.lineKind.tax')} level={3} className="mt-4">
          <ShopFold id="tax" title={t('shop.prices.tax')} aside={props.tax.words} open={open === 'tax'}>
            <TaxEditor entry={entries.tax} revision={revision} />
            <HistoryList lines={props.tax.history} today={today} />
          </ShopFold>
        </Titled>
      </Titled>
      <Titled title={t('shop.prices.jobs')} level={2} className="panel mt-10">
        <p>{t('shop.prices.jobsWhat')}</p>
        {GROUPS.map((group) => (
          <Titled key={group} title={tCode(`shop.prices.group.${group}`)} level={3} className="mt-4">
            <div className="rows">
              {jobs
                .filter((job) => job.group === group)
                .map((row) => (
                  <ShopFold
                    key={row.id}
                    id={`job-${row.id}`}
                    title={row.label}
                    aside={row.example}
                    open={open === `job-${row.id}`}
                  >
                    <JobEditor
                      row={row}
                      items={options}
                      entries={entries}
                      revision={revision}
                      today={today}
                    />
                  </ShopFold>
                ))}
            </div>
          </Titled>
        ))}
      </Titled>
    </>
  );
}
