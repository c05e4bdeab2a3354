import { inForce } from '../../visit/dated-value';
import { ShopRules, type ShopRuleValues } from '../../visit/shop-rules';
import data from '../data/shop-rules.json';

/** Invented rules a shop starts from, marked so. Check: tests/finance/shop-rules.test.ts */
export const defaultShopRules: ShopRules = ShopRules.parse(data);

/** Thresholds in force on a date; before the first of them there is no rule. Check: tests/finance/shop-rules.test.ts */
export function rulesOn(rules: ShopRules, date: string): ShopRuleValues {
  return inForce(rules.history, date)?.values ?? {};
}
