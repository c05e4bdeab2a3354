import { readTyped } from '@/components/appraisal/read-typed';
import type { Draft, DraftValue } from '@/components/draft/draft-tree';
import type { FieldBook } from '@/components/draft/field-book';
import { t } from '@/components/words/words';
import { bundleFromBook, entriesFor } from '@/lib/finance/price-from-book';
import { wordsOf } from '@/lib/sheet/phrase';
import { stageWords } from '@/lib/sheet/stage-words';
import type { PriceBook } from '@/lib/visit/price-book';

/** What filling from the price book gave. */
export type Filled = {
  /** Price lines for the form; absent when the book has nothing for the choice. */
  readonly lines?: readonly DraftValue[];
  readonly warrantyYears?: number;
  /** What was done, and what the book does not have. */
  readonly notes: readonly string[];
};

const NO_NAMES = { choice: () => undefined, cause: () => undefined, reading: () => undefined };

/**
 * Price lines of a choice from the shop's price book, at the prices of the visit's date.
 *
 * @param id      of the choice
 * @param prices  the shop's price book
 * Check: tests/screens/fill-prices.test.ts
 */
export function pricesFromBook(draft: Draft, book: FieldBook, id: string, prices: PriceBook): Filled {
  const { visit } = readTyped(draft, book);
  const choice = visit?.choices.find((c) => c.id === id);
  if (visit === undefined || choice === undefined) return { notes: [t('book.unread')] };
  const isDualFuel = choice.kind === 'replace' && choice.furnace !== undefined;
  const entries = entriesFor(prices, choice, isDualFuel);
  const { refrigerant, nominalTons } = visit.unit;
  const priced = bundleFromBook(prices, entries, {
    date: visit.visitDate,
    nominalTons: choice.kind === 'replace' ? choice.nominalTons : nominalTons,
    ...(refrigerant === undefined ? {} : { refrigerant }),
  });
  if (priced === undefined) return { notes: [t('book.none')] };
  const missing = priced.notes.map((note) => stageWords(wordsOf('en'), note, NO_NAMES));
  return {
    lines: priced.priceLines.map((line): DraftValue => ({ ...line })),
    ...(priced.warrantyYears === undefined ? {} : { warrantyYears: priced.warrantyYears }),
    notes: [
      t(prices.invented === true ? 'book.filled' : 'book.filledOwn', { name: priced.label }),
      ...missing,
    ],
  };
}
