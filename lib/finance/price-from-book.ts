import type { Choice, PriceLine } from '../visit/choice';
import { repairs } from '../visit/choice';
import { inForce } from '../visit/dated-value';
import type { EntryVersion, PriceBook, PriceEntry, PriceItem } from '../visit/price-book';
import type { RefrigerantName } from '../visit/refrigerant-names';
import type { Saying } from '../visit/wording';

/** What a job is priced for. */
export type PricedJob = {
  /** ISO date whose prices count. */
  readonly date: string;
  readonly nominalTons: number;
  readonly refrigerant?: RefrigerantName;
};

export type BookPrice = {
  readonly entryId: string;
  readonly label: string;
  /** Ready for a choice; the tax last. */
  readonly priceLines: readonly PriceLine[];
  readonly warrantyYears?: number;
  readonly siteHours?: number;
  /** Items without a price on that date, or not in the book: left out and said so. */
  readonly notes: readonly Saying[];
};

/** The unit's own refrigerant in an entry. */
const OWN_REFRIGERANT = 'refrigerant';
const CENTS = 100;

/**
 * An entry of the price book as price lines, at the prices of a date. The lines then belong to the visit: a later
 * change of the book does not reach them, and a change in the visit does not reach the book.
 *
 * @returns lines with whole-cent prices; `undefined` when the book has no such entry, or not yet on that date
 * Check: tests/finance/price-from-book.test.ts
 */
export function priceFromBook(book: PriceBook, entryId: string, job: PricedJob): BookPrice | undefined {
  const entry = book.entries.find((e) => e.id === entryId);
  const version = entry === undefined ? undefined : inForce(entry.versions, job.date);
  if (entry === undefined || version === undefined) return undefined;
  return assembled([{ entry, version }], book, job);
}

/**
 * Several entries as one job, for a bundle of repairs: lines follow each other, the tax comes once.
 *
 * @returns as `priceFromBook`; `undefined` when one of them is missing
 * Check: tests/finance/price-from-book.test.ts
 */
export function bundleFromBook(
  book: PriceBook,
  entryIds: readonly string[],
  job: PricedJob,
): BookPrice | undefined {
  const found = entryIds.flatMap((id) => {
    const entry = book.entries.find((e) => e.id === id);
    const version = entry === undefined ? undefined : inForce(entry.versions, job.date);
    return entry === undefined || version === undefined ? [] : [{ entry, version }];
  });
  return found.length === 0 || found.length < entryIds.length ? undefined : assembled(found, book, job);
}

/**
 * Entries of the book that price a choice: for repairs one for each action, for a replacement the one of its kind and
 * stages; an entry the choice names itself comes first.
 *
 * @returns entry ids in the order of the actions; empty when the book has nothing for it
 * Check: tests/finance/price-from-book.test.ts
 */
export function entriesFor(book: PriceBook, choice: Choice, dualFuel = false): string[] {
  if (choice.priceBookEntry !== undefined && book.entries.some((e) => e.id === choice.priceBookEntry)) {
    return [choice.priceBookEntry];
  }
  if (repairs(choice)) {
    return choice.actions.flatMap((action) =>
      book.entries
        .filter((e) => e.subject.kind === 'repair' && e.subject.action === action)
        .slice(0, 1)
        .map((e) => e.id),
    );
  }
  if (choice.kind !== 'replace') return [];
  return book.entries
    .filter(
      ({ subject: s }) =>
        s.kind === 'replace' &&
        s.unitKind === choice.unitKind &&
        s.tier === choice.tier &&
        (s.dualFuel ?? false) === dualFuel,
    )
    .slice(0, 1)
    .map((e) => e.id);
}

/**
 * Entry of a test that tells causes apart.
 *
 * @param test  name of the test as in `next.<test>`
 * Check: tests/finance/price-from-book.test.ts
 */
export function testEntry(book: PriceBook, test: string): PriceEntry | undefined {
  const slug = test.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  return book.entries.find((e) => e.subject.kind === 'test' && e.subject.test === slug);
}

type Part = { readonly entry: PriceEntry; readonly version: EntryVersion };

function assembled(parts: readonly Part[], book: PriceBook, job: PricedJob): BookPrice {
  const notes: Saying[] = [];
  const priceLines: PriceLine[] = parts.flatMap(({ version }) =>
    version.lines.flatMap((line) => lineOf(line, book, job, notes)),
  );
  const tax = book.tax === undefined ? undefined : inForce(book.tax, job.date);
  if (tax !== undefined && tax.taxFrac > 0)
    priceLines.push({ kind: 'tax', label: book.taxLabel ?? 'Tax', taxFrac: tax.taxFrac });
  const warranties = parts.flatMap(({ version: v }) => v.warrantyYears ?? []);
  const hours = parts.reduce((sum, { version: v }) => sum + (v.siteHours ?? 0), 0);
  return {
    entryId: parts.map(({ entry }) => entry.id).join('+'),
    label: parts.map(({ entry }) => entry.label).join(', '),
    priceLines,
    ...(warranties.length < parts.length ? {} : { warrantyYears: Math.min(...warranties) }),
    ...(hours > 0 ? { siteHours: hours } : {}),
    notes,
  };
}

function lineOf(
  line: EntryVersion['lines'][number],
  book: PriceBook,
  job: PricedJob,
  notes: Saying[],
): PriceLine[] {
  const item = itemOf(line.item, book, job);
  const price = item === undefined ? undefined : inForce(item.prices, job.date);
  if (item === undefined || price === undefined) {
    const code = line.item === OWN_REFRIGERANT ? 'bookRefrigerantMissing' : 'bookItemMissing';
    notes.push({ code, values: { item: line.item, refrigerant: job.refrigerant ?? '', date: job.date } });
    return [];
  }
  const amount = line.perJob + (line.perTon ?? 0) * job.nominalTons;
  if (amount <= 0) return [];
  const rounded = Math.round(amount * CENTS) / CENTS;
  return [{ kind: item.kind, label: item.label, amount: rounded, unitPriceUsd: price.priceUsd }];
}

function itemOf(id: string, book: PriceBook, job: PricedJob): PriceItem | undefined {
  return id === OWN_REFRIGERANT
    ? book.items.find((item) => item.refrigerant !== undefined && item.refrigerant === job.refrigerant)
    : book.items.find((item) => item.id === id);
}
