import { z } from 'zod';
import { DatedPrice, DatedTax, EntryVersion, PriceBook, PriceItem } from './price-book';
import { ShopAssumption, ShopDefaults } from './shop-defaults';
import { ShopRules, ShopRulesVersion } from './shop-rules';

/** What a shop keeps of its own, each with a history. */
export const SHOP_PARTS = ['rules', 'prices', 'defaults'] as const;
export type ShopPart = (typeof SHOP_PARTS)[number];

export type Shop = { readonly rules: ShopRules; readonly prices: PriceBook; readonly defaults: ShopDefaults };

/** Schema of each part. */
export const shopSchemas = { rules: ShopRules, prices: PriceBook, defaults: ShopDefaults } as const;

/** One thing the owner puts in force; it is always added, never put in place of an older one. */
export const ShopChange = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('rules'), version: ShopRulesVersion }),
  z.strictObject({ kind: z.literal('price'), item: z.string(), price: DatedPrice }),
  z.strictObject({ kind: z.literal('newItem'), item: PriceItem }),
  z.strictObject({ kind: z.literal('job'), entry: z.string(), version: EntryVersion }),
  z.strictObject({ kind: z.literal('tax'), tax: DatedTax }),
  z.strictObject({ kind: z.literal('assumption'), assumption: ShopAssumption }),
]);
export type ShopChange = z.infer<typeof ShopChange>;

/** Part of the shop that a change belongs to. */
export function partOf(change: ShopChange): ShopPart {
  if (change.kind === 'rules') return 'rules';
  return change.kind === 'assumption' ? 'defaults' : 'prices';
}

export type Changed =
  | { readonly ok: true; readonly shop: Shop }
  | { readonly ok: false; readonly why: 'noSuchItem' | 'noSuchJob' | 'itemThere' | 'full' };

/**
 * The shop with one change added at the end of the history it belongs to. A price of an invented book that the owner
 * sets is the owner's own; the book stays marked as long as invented prices are left in it.
 *
 * @returns the shop, or why the change has no place in it; `full` when the history holds no more
 * Check: tests/visit/shop-change.test.ts
 */
export function withChange(shop: Shop, change: ShopChange): Changed {
  const { rules, prices, defaults } = shop;
  switch (change.kind) {
    case 'rules': {
      const { invented: _invented, ...kept } = rules;
      return checked({ ...shop, rules: { ...kept, history: [...rules.history, change.version] } });
    }
    case 'assumption':
      return checked({
        ...shop,
        defaults: { ...defaults, history: [...defaults.history, change.assumption] },
      });
    case 'tax':
      return checked({ ...shop, prices: { ...prices, tax: [...(prices.tax ?? []), change.tax] } });
    case 'newItem':
      return prices.items.some((item) => item.id === change.item.id)
        ? { ok: false, why: 'itemThere' }
        : checked({ ...shop, prices: { ...prices, items: [...prices.items, change.item] } });
    case 'price': {
      if (!prices.items.some((item) => item.id === change.item)) return { ok: false, why: 'noSuchItem' };
      const items = prices.items.map((item) =>
        item.id === change.item ? { ...item, prices: [...item.prices, change.price] } : item,
      );
      return checked({ ...shop, prices: { ...prices, items } });
    }
    case 'job': {
      if (!prices.entries.some((entry) => entry.id === change.entry)) return { ok: false, why: 'noSuchJob' };
      const known = new Set([...prices.items.map((item) => item.id), OWN_REFRIGERANT]);
      if (change.version.lines.some((line) => !known.has(line.item))) return { ok: false, why: 'noSuchItem' };
      const entries = prices.entries.map((entry) =>
        entry.id === change.entry ? { ...entry, versions: [...entry.versions, change.version] } : entry,
      );
      return checked({ ...shop, prices: { ...prices, entries } });
    }
  }
}

/** Stands in a job for the refrigerant of the unit at hand. */
export const OWN_REFRIGERANT = 'refrigerant';

function checked(shop: Shop): Changed {
  const fits = SHOP_PARTS.every((part) => shopSchemas[part].safeParse(shop[part]).success);
  return fits ? { ok: true, shop } : { ok: false, why: 'full' };
}
