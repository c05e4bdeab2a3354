import { defaultPriceBook } from '@/lib/finance/default-price-book';
import { defaultShopRules } from '@/lib/finance/shop-rules/default-rules';
import { SHOP_PARTS, type Shop, type ShopPart, shopSchemas } from '@/lib/visit/shop-change';
import { noShopDefaults } from '@/lib/visit/shop-defaults';
import { store } from '../open-store-once';

export type LoadedShop = {
  readonly shop: Shop;
  /** Revision of each part; 0 = the shop has set nothing of its own yet. */
  readonly revisions: Readonly<Record<ShopPart, number>>;
};

/** The shop's own settings; what it has not set yet starts from what Keepworth brings, marked as invented. */
export async function loadShop(): Promise<LoadedShop> {
  const opened = await store();
  const records = await Promise.all(SHOP_PARTS.map((part) => opened.loadShop(part)));
  const [rules, prices, defaults] = records;
  return {
    shop: {
      rules: rules === undefined ? defaultShopRules : shopSchemas.rules.parse(rules.data),
      prices: prices === undefined ? defaultPriceBook : shopSchemas.prices.parse(prices.data),
      defaults: defaults === undefined ? noShopDefaults : shopSchemas.defaults.parse(defaults.data),
    },
    revisions: {
      rules: rules?.revision ?? 0,
      prices: prices?.revision ?? 0,
      defaults: defaults?.revision ?? 0,
    },
  };
}
