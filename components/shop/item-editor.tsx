'use client';

import { useState } from 'react';
import type { FieldEntry } from '@/components/draft/field-book';
import { t } from '@/components/words/shop-words';
import { checkNumber } from './check-entry';
import { NumberBox } from './entry-box';
import { HistoryList } from './history-list';
import type { ItemRow } from './price-rows';
import { PutInForce } from './put-in-force';

/** One price, its history, and a new price from a date on. */
export function ItemEditor(props: {
  readonly row: ItemRow;
  readonly entry: FieldEntry;
  readonly revision: number;
  readonly today: string;
}) {
  const { row, entry } = props;
  const [typed, setTyped] = useState('');
  const [isTried, setIsTried] = useState(false);
  const check = checkNumber(typed, entry, isTried);
  return (
    <>
      <NumberBox
        id={`price-${row.id}`}
        entry={entry}
        label={t('shop.prices.newPrice', { per: row.per })}
        value={typed}
        error={check.ok ? undefined : check.words}
        onType={setTyped}
      />
      <PutInForce
        id={`set-${row.id}`}
        revision={props.revision}
        button={t('shop.prices.savePrice')}
        make={(mark) => {
          setIsTried(true);
          const now = checkNumber(typed, entry, true);
          return now.ok && now.value !== undefined
            ? { kind: 'price', item: row.id, price: { ...mark, priceUsd: now.value } }
            : undefined;
        }}
        onSaved={() => {
          setTyped('');
          setIsTried(false);
        }}
      />
      <HistoryList lines={row.history} today={props.today} />
    </>
  );
}

/** The sales tax, which every job ends with. */
export function TaxEditor(props: { readonly entry: FieldEntry; readonly revision: number }) {
  const { entry } = props;
  const [typed, setTyped] = useState('');
  const [isTried, setIsTried] = useState(false);
  const check = checkNumber(typed, entry, isTried);
  return (
    <>
      <NumberBox
        id="price-tax"
        entry={entry}
        value={typed}
        error={check.ok ? undefined : check.words}
        onType={setTyped}
      />
      <PutInForce
        id="set-tax"
        revision={props.revision}
        button={t('shop.prices.saveTax')}
        make={(mark) => {
          setIsTried(true);
          const now = checkNumber(typed, entry, true);
          return now.ok && now.value !== undefined
            ? { kind: 'tax', tax: { ...mark, taxFrac: now.value } }
            : undefined;
        }}
        onSaved={() => {
          setTyped('');
          setIsTried(false);
        }}
      />
    </>
  );
}
