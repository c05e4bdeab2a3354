import { z } from 'zod';
import { byFromDate, change } from './dated-value';
import { dollars, quantity } from './quantity';

/** Version of the stored shape of the shop rules. */
export const SHOP_RULES_VERSION = 1;

/** The owner's thresholds; a key left out is no rule. */
export const ShopRuleValues = z.strictObject({
  smallestNetSavingUsd: dollars('Smallest net saving worth recommending', 0, 20_000).optional(),
  leastChanceCheapestFrac: quantity('Smallest chance of being cheapest', 'frac', 0, 1).optional(),
  longestPaybackYears: quantity('Longest payback of a replacement', 'years', 0, 25).optional(),
  largestRepairShareFrac: quantity('Largest repair price as a share of a new unit', 'frac', 0, 2).optional(),
  oldestToRepairYears: quantity('Oldest unit worth a costly repair', 'years', 0, 60).optional(),
  /** Repairs below this price are never held back by the unit's age. */
  costlyRepairUsd: dollars('Price from which a repair is costly', 0, 20_000).optional(),
  warnDischargeF: quantity('Discharge temperature that always warns', 'F', 150, 300).optional(),
});
export type ShopRuleValues = z.infer<typeof ShopRuleValues>;

/** A whole set of thresholds in force from a date on; older ones stay. */
export const ShopRulesVersion = z.strictObject({ ...change, values: ShopRuleValues });
export type ShopRulesVersion = z.infer<typeof ShopRulesVersion>;

/** The shop's rules with their history. */
export const ShopRules = z.strictObject({
  shopRulesVersion: z.literal(SHOP_RULES_VERSION),
  invented: z.boolean().meta({ label: 'Invented example' }).optional(),
  history: z.array(ShopRulesVersion).min(1).max(500),
});
export type ShopRules = z.infer<typeof ShopRules>;

export type RuleKey = keyof ShopRuleValues;
export const ruleKeys = Object.keys(ShopRuleValues.shape) as RuleKey[];

/** When one threshold changed: its value from then on, or none. */
export type RuleStep = Omit<ShopRulesVersion, 'values'> & { readonly value?: number };

/**
 * History of one threshold: only the versions in which it changed, newest first.
 *
 * Check: tests/visit/shop-change.test.ts
 */
export function ruleSteps(rules: ShopRules, key: RuleKey): RuleStep[] {
  const inOrder = [...rules.history].sort(byFromDate);
  return inOrder
    .filter((version, i) => i === 0 || version.values[key] !== inOrder[i - 1]?.values[key])
    .map(({ values, ...rest }) => {
      const value = values[key];
      return value === undefined ? rest : { ...rest, value };
    })
    .reverse();
}
