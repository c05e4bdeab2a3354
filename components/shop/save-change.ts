import { type Changed, putChange } from '@/components/shell/put-change';
import type { ShopChange } from '@/lib/visit/shop-change';

/** Puts one thing in force, if the shop still is as it was seen. */
export function saveChange(baseRevision: number, change: ShopChange): Promise<Changed> {
  return putChange('/shop/changes', { baseRevision, change });
}
