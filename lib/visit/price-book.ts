import { z } from 'zod';
import { RepairAction } from './choice';
import { change } from './dated-value';
import { dollars, quantity, text } from './quantity';
import { RefrigerantName } from './refrigerant-names';
import { UnitKind } from './unit';

/** Version of the stored shape of the price book. */
export const PRICE_BOOK_VERSION = 1;

const id = (label: string) =>
  z
    .string()
    .regex(/^[a-z0-9-]{1,60}$/)
    .meta({ label });

/** A price in force from a date on; older ones stay. */
export const DatedPrice = z.strictObject({ ...change, priceUsd: dollars('Price', 0, 100_000) });
export type DatedPrice = z.infer<typeof DatedPrice>;

/** A rate in force from a date on. */
export const DatedTax = z.strictObject({ ...change, taxFrac: quantity('Tax rate', 'frac', 0, 0.25) });
export type DatedTax = z.infer<typeof DatedTax>;

/** Something with a price: an hour of work, a part, a pound of refrigerant, a ton of equipment, a permit. */
export const PriceItem = z.strictObject({
  id: id('Item of the price book'),
  label: text('Words on the price line', 120),
  kind: z
    .enum(['labour', 'part', 'refrigerant', 'equipment', 'permit', 'other'])
    .meta({ label: 'Kind of price line' }),
  per: z.enum(['hour', 'pound', 'piece', 'ton', 'job']).meta({ label: 'Priced by the' }),
  /** Refrigerant items only: which one. */
  refrigerant: RefrigerantName.optional(),
  prices: z.array(DatedPrice).min(1).max(200),
});
export type PriceItem = z.infer<typeof PriceItem>;

/** What an entry takes of an item: so many for the job, and so many more for each ton of the unit. */
export const EntryLine = z.strictObject({
  /** Item id, or `refrigerant` for the unit's own. */
  item: id('Item of the price book'),
  perJob: z.number().min(0).max(1_000).meta({ label: 'Amount for a job', unit: 'own', min: 0, max: 1_000 }),
  perTon: z
    .number()
    .min(0)
    .max(1_000)
    .meta({ label: 'Amount more for each ton', unit: 'own', min: 0, max: 1_000 })
    .optional(),
});
export type EntryLine = z.infer<typeof EntryLine>;

/** How a job is put together from a date on. */
export const EntryVersion = z.strictObject({
  ...change,
  lines: z.array(EntryLine).min(1).max(40),
  warrantyYears: quantity('Warranty', 'years', 0, 25).optional(),
  /** Time on site, for planning; the hours charged stand in the lines. */
  siteHours: quantity('Time the job takes', 'h', 0, 100).optional(),
});
export type EntryVersion = z.infer<typeof EntryVersion>;

/** What an entry prices. */
export const EntrySubject = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('repair'), action: RepairAction }),
  z.strictObject({
    kind: z.literal('replace'),
    unitKind: UnitKind,
    tier: z.enum(['singleSpeed', 'twoSpeed', 'variableSpeed']).meta({ label: 'Compressor stages' }),
    dualFuel: z.boolean().meta({ label: 'With a furnace behind it' }).optional(),
  }),
  /** A test that tells causes apart. */
  z.strictObject({ kind: z.literal('test'), test: id('Test') }),
]);
export type EntrySubject = z.infer<typeof EntrySubject>;

/** A job the shop sells. */
export const PriceEntry = z.strictObject({
  id: id('Entry of the price book'),
  label: text('Name of the job', 80),
  subject: EntrySubject,
  versions: z.array(EntryVersion).min(1).max(200),
});
export type PriceEntry = z.infer<typeof PriceEntry>;

/** The shop's prices with their history. A visit keeps the lines it was given; later changes do not reach it. */
export const PriceBook = z.strictObject({
  priceBookVersion: z.literal(PRICE_BOOK_VERSION),
  invented: z.boolean().meta({ label: 'Invented example' }).optional(),
  items: z.array(PriceItem).max(300),
  entries: z.array(PriceEntry).max(300),
  /** Sales tax on every job; left out = none. */
  tax: z.array(DatedTax).max(200).optional(),
  taxLabel: text('Words on the tax line', 120).optional(),
});
export type PriceBook = z.infer<typeof PriceBook>;
