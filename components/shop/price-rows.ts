import type { FieldEntry } from '@/components/draft/field-book';
import type { EntryLine } from '@/lib/visit/price-book';
import type { HistoryLine } from './history-list';

/** An item of the price book as its page shows it. */
export type ItemRow = {
  readonly id: string;
  readonly label: string;
  readonly kind: string;
  readonly per: string;
  readonly priceUsd?: number;
  readonly priceWords: string;
  readonly invented: boolean;
  readonly history: readonly HistoryLine[];
};

/** A job of the price book as its page shows it. */
export type JobRow = {
  readonly id: string;
  readonly label: string;
  readonly group: 'repair' | 'replace' | 'test';
  readonly lines: readonly EntryLine[];
  readonly warrantyYears?: number;
  readonly siteHours?: number;
  /** What it comes to for the example unit. */
  readonly example: string;
  readonly history: readonly HistoryLine[];
};

/** What a line of a job may take. */
export type ItemOption = { readonly id: string; readonly words: string };

/** Labels, units and limits of the price book's numbers. */
export type PriceEntries = Readonly<
  Record<'price' | 'perJob' | 'perTon' | 'tax' | 'warranty' | 'siteHours', FieldEntry>
>;
