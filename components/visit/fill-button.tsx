'use client';

import { useState } from 'react';
import { useDraftState, useDraftStore, useFieldBook } from '@/components/draft/draft-context';
import { textAt, withValue } from '@/components/draft/draft-tree';
import { t } from '@/components/words/words';

/** Fills the price lines of a choice from the price book, which is fetched when it is asked for. */
export function FillButton(props: { readonly path: string }) {
  const { path } = props;
  const store = useDraftStore();
  const book = useFieldBook();
  const id = useDraftState((s) => textAt(s.draft, `${path}.id`));
  const [notes, setNotes] = useState<readonly string[]>([]);
  const fill = async () => {
    setNotes([t('book.opening')]);
    try {
      const [{ pricesFromBook }, { shopPriceBook }] = await Promise.all([
        import('./fill-prices'),
        import('@/components/shop/shop-price-book'),
      ]);
      const prices = await shopPriceBook();
      const { lines, warrantyYears, notes: said } = pricesFromBook(store.get().draft, book, id, prices);
      setNotes(said);
      if (lines === undefined) return;
      store.change(t('book.fill'), (draft) => {
        const priced = withValue(draft, `${path}.priceLines`, [...lines]);
        return warrantyYears === undefined
          ? priced
          : withValue(priced, `${path}.warrantyYears`, warrantyYears);
      });
    } catch {
      setNotes([t('book.unreachable')]);
    }
  };
  return (
    <>
      <button type="button" className="press mt-2" onClick={() => void fill()}>
        {t('book.fill')}
      </button>
      <p className="text-soft">{t('book.note')}</p>
      <div role="status">
        {notes.map((note) => (
          <p key={note} className="font-semibold">
            {note}
          </p>
        ))}
      </div>
    </>
  );
}
