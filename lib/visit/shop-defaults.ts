import { z } from 'zod';
import type { Assumption } from './assumption';
import { type AssumptionKey, AssumptionKeySchema } from './assumption-keys';
import { change, inForce } from './dated-value';
import { text } from './quantity';

/** Version of the stored shape of the shop's defaults. */
export const SHOP_DEFAULTS_VERSION = 1;

const own = (label: string) => z.number().meta({ label, unit: 'own', min: -1e9, max: 1e9 });

/** What the shop assumes from a date on; without values the assumption goes back to Keepworth's own. */
export const ShopAssumption = z.strictObject({
  ...change,
  key: AssumptionKeySchema,
  values: z
    .strictObject({
      low: own('Low'),
      likely: own('Likely'),
      high: own('High'),
      source: text('Source', 250).min(1),
    })
    .refine((v) => v.low <= v.likely && v.likely <= v.high, {
      params: { limit: 'low, likely and high in rising order' },
    })
    .optional(),
});
export type ShopAssumption = z.infer<typeof ShopAssumption>;

/** What a shop assumes for new visits instead of Keepworth's own defaults, with its history. */
export const ShopDefaults = z.strictObject({
  shopDefaultsVersion: z.literal(SHOP_DEFAULTS_VERSION),
  history: z.array(ShopAssumption).max(1_000),
});
export type ShopDefaults = z.infer<typeof ShopDefaults>;

/** A shop that has set nothing yet. */
export const noShopDefaults: ShopDefaults = { shopDefaultsVersion: SHOP_DEFAULTS_VERSION, history: [] };

/** Entry in force for one assumption on a date; `undefined` when Keepworth's own default counts. */
export function shopAssumptionOn(
  defaults: ShopDefaults,
  key: AssumptionKey,
  date: string,
): ShopAssumption | undefined {
  const entry = inForce(
    defaults.history.filter((one) => one.key === key),
    date,
  );
  return entry?.values === undefined ? undefined : entry;
}

/**
 * Assumptions that a new visit of a date starts with. They then belong to the visit: a later change does not reach it.
 *
 * @param defaults  the shop's defaults
 * @param date      ISO date of the visit
 * @param words     source as the visit keeps it; it must name the shop, since the visit shows no other mark
 * Check: tests/visit/shop-defaults.test.ts
 */
export function assumptionsOn(
  defaults: ShopDefaults,
  date: string,
  words: (entry: ShopAssumption, source: string) => string,
): Assumption[] {
  const keys = [...new Set(defaults.history.map((one) => one.key))];
  return keys.flatMap((key) => {
    const entry = shopAssumptionOn(defaults, key, date);
    if (entry?.values === undefined) return [];
    const { low, likely, high, source } = entry.values;
    return [{ key, low, likely, high, source: words(entry, source).slice(0, 400), setBy: entry.setBy }];
  });
}
