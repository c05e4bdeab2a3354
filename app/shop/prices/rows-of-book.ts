import { buildFieldBook } from '@/components/draft/build-field-book';
import type { FieldEntry } from '@/components/draft/field-book';
import { numberWords } from '@/components/shop/check-entry';
import type { HistoryLine } from '@/components/shop/history-list';
import type { ItemOption, ItemRow, JobRow, PriceEntries } from '@/components/shop/price-rows';
import { t, tCode } from '@/components/words/shop-words';
import { defaultPriceBook } from '@/lib/finance/default-price-book';
import { priceFromBook } from '@/lib/finance/price-from-book';
import { priceTotal } from '@/lib/finance/price-total';
import { quotedWords } from '@/lib/sheet/money-words';
import { inForce } from '@/lib/visit/dated-value';
import { type EntryLine, PriceBook, type PriceEntry, type PriceItem } from '@/lib/visit/price-book';
import { OWN_REFRIGERANT } from '@/lib/visit/shop-change';

/** Unit that a job is priced for on the page of the price book. */
export const EXAMPLE_UNIT = { nominalTons: 3, refrigerant: 'R-410A' } as const;

const NOWHERE: FieldEntry = { label: '', unit: '', sign: '', perFormUnit: 1, whole: false };

/** Labels, units and limits of the price book's numbers. */
export function priceEntries(): PriceEntries {
  const book = buildFieldBook(PriceBook);
  const at = (path: string) => book[path] ?? NOWHERE;
  return {
    price: at('items.*.prices.*.priceUsd'),
    perJob: at('entries.*.versions.*.lines.*.perJob'),
    perTon: at('entries.*.versions.*.lines.*.perTon'),
    tax: at('tax.*.taxFrac'),
    warranty: at('entries.*.versions.*.warrantyYears'),
    siteHours: at('entries.*.versions.*.siteHours'),
  };
}

/** Items with the price in force on a date. */
export function itemRows({ items }: PriceBook, entries: PriceEntries, today: string): ItemRow[] {
  return items.map((item) => {
    const now = inForce(item.prices, today);
    const per = tCode(`shop.per.${item.per}`);
    return {
      id: item.id,
      label: item.label,
      kind: item.kind,
      per,
      ...(now === undefined ? {} : { priceUsd: now.priceUsd }),
      priceWords:
        now === undefined
          ? t('shop.prices.noPrice')
          : t('shop.prices.per', { price: numberWords(now.priceUsd, entries.price), per }),
      invented: now !== undefined && isInvented(item, now),
      history: newestFirst(item.prices).map((price) => ({
        ...markOf(price),
        words: numberWords(price.priceUsd, entries.price),
      })),
    };
  });
}

/** A price that nobody has set since Keepworth brought it. */
function isInvented(item: PriceItem, now: PriceItem['prices'][number]): boolean {
  const brought = defaultPriceBook.items.find((one) => one.id === item.id)?.prices ?? [];
  return brought.some((price) => JSON.stringify(price) === JSON.stringify(now));
}

/** Jobs with the lines in force on a date and what they come to for the example unit. */
export function jobRows(book: PriceBook, today: string): JobRow[] {
  return book.entries.map((entry) => {
    const now = inForce(entry.versions, today);
    const { lines, warrantyYears, siteHours } = now ?? { lines: [] };
    return {
      id: entry.id,
      label: jobName(entry),
      group: entry.subject.kind,
      lines,
      ...(warrantyYears === undefined ? {} : { warrantyYears }),
      ...(siteHours === undefined ? {} : { siteHours }),
      example: exampleOf(book, entry.id, today),
      history: newestFirst(entry.versions).map((version) => ({
        ...markOf(version),
        words: version.lines.map((line) => lineWords(line, book)).join(', '),
      })),
    };
  });
}

function jobName({ subject, label }: PriceEntry): string {
  return subject.kind === 'test' ? tCode(`shop.test.${subject.test}`) : label;
}

function exampleOf(book: PriceBook, id: string, today: string): string {
  const priced = priceFromBook(book, id, { ...EXAMPLE_UNIT, date: today });
  if (priced === undefined || priced.notes.length > 0) return t('shop.prices.noPrice');
  return quotedWords(priceTotal(priced.priceLines).totalUsd);
}

function lineWords({ item, perJob, perTon }: EntryLine, book: PriceBook): string {
  const name =
    item === OWN_REFRIGERANT
      ? t('shop.prices.ownRefrigerant')
      : (book.items.find((one) => one.id === item)?.label ?? item);
  return perTon === undefined
    ? t('shop.prices.takes', { n: perJob, item: name })
    : t('shop.prices.takesPerTon', { n: perJob, perTon, item: name });
}

/** What a line of a job may take: every item, and the refrigerant of the unit at hand. */
export function itemOptions({ items }: PriceBook): ItemOption[] {
  return [
    ...items.map((item) => ({
      id: item.id,
      words: t('shop.prices.optionPer', { item: item.label, per: tCode(`shop.per.${item.per}`) }),
    })),
    {
      id: OWN_REFRIGERANT,
      words: t('shop.prices.optionPer', {
        item: t('shop.prices.ownRefrigerant'),
        per: tCode('shop.per.pound'),
      }),
    },
  ];
}

/** The tax in force, and its history. */
export function taxOf({ tax }: PriceBook, entries: PriceEntries, today: string) {
  const now = inForce(tax ?? [], today);
  return {
    words: now === undefined ? t('shop.prices.noTax') : numberWords(now.taxFrac, entries.tax),
    history: newestFirst(tax ?? []).map((one) => ({
      ...markOf(one),
      words: numberWords(one.taxFrac, entries.tax),
    })),
  };
}

type Marked = Omit<HistoryLine, 'words'>;

function markOf({ fromDate, setBy, why }: Marked): Marked {
  return { fromDate, setBy, why };
}

/** Of two begun on one day the later set counts, so it stands first. */
function newestFirst<T extends Marked>(history: readonly T[]): T[] {
  return history
    .map((entry, i) => ({ entry, i }))
    .sort((a, b) => b.entry.fromDate.localeCompare(a.entry.fromDate) || b.i - a.i)
    .map(({ entry }) => entry);
}
