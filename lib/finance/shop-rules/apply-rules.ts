import type { ShopRuleValues } from '../../visit/shop-rules';
import type { Saying } from '../../visit/wording';
import type { ComparedChoice, Comparison } from '../comparison';
import { usdOf } from '../money';

/** What the rules judge by: a comparison, and what lies outside it. */
export type RuleFacts = {
  readonly comparison: Comparison;
  readonly ageYears: number;
  /** Price of a new unit [USD]. */
  readonly newPriceUsd: number;
  /** Hottest discharge line of the visit [F]. */
  readonly dischargeF?: number;
  /** Chance of being cheapest by choice id, from a simulation; left out = that rule waits. */
  readonly cheapestFrac?: Readonly<Record<string, number>>;
};

/** A choice that a rule holds back, and why. */
export type HeldBack = { readonly choiceId: string; readonly why: Saying };

export type RuledAdvice = {
  /** What the shop recommends. */
  readonly choiceId: string;
  readonly reason: Saying;
  /** Cheaper choices that a rule held back, cheapest first. */
  readonly heldBack: readonly HeldBack[];
  readonly warnings: readonly Saying[];
};

/**
 * What a shop recommends: the choice with the lowest likely total that no rule holds back; leaving it is never held
 * back.
 *
 * @param facts  comparison and what lies outside it
 * @param rules  thresholds in force; one left out holds nothing back
 * @returns the choice, its reason, what was held back, and warnings
 * Check: tests/finance/shop-rules.test.ts
 */
export function applyRules(facts: RuleFacts, rules: ShopRuleValues): RuledAdvice {
  const ranked = facts.comparison.choices
    .filter((c) => c.priced)
    .sort((a, b) => a.totalTodayUsd.likely - b.totalTodayUsd.likely);
  const heldBack: HeldBack[] = [];
  const warnings = warningsOf(facts, rules);
  for (const choice of ranked) {
    const why = choice.kind === 'leave' ? undefined : heldBackBy(choice, facts, rules);
    if (why !== undefined) {
      heldBack.push({ choiceId: choice.id, why });
      continue;
    }
    const values = {
      choice: choice.name,
      years: facts.comparison.stayYears,
      savingUsd: Math.round(choice.netSavingUsd.likely),
    };
    const code =
      choice.kind === 'leave' ? 'ruleLeave' : heldBack.length === 0 ? 'ruleLowest' : 'ruleLowestAllowed';
    return { choiceId: choice.id, reason: { code, values }, heldBack, warnings };
  }
  return { choiceId: '', reason: { code: 'nothingToCompare' }, heldBack, warnings };
}

/** The first rule a choice breaks. */
function heldBackBy(choice: ComparedChoice, facts: RuleFacts, rules: ShopRuleValues): Saying | undefined {
  const name = choice.name;
  const saving = choice.netSavingUsd.likely;
  const chance = facts.cheapestFrac?.[choice.id];
  const price = usdOf(choice.priceUsd);
  if (rules.smallestNetSavingUsd !== undefined && saving < rules.smallestNetSavingUsd) {
    const values = { choice: name, savingUsd: Math.round(saving), limitUsd: rules.smallestNetSavingUsd };
    return { code: 'ruleSmallSaving', values };
  }
  if (
    rules.leastChanceCheapestFrac !== undefined &&
    chance !== undefined &&
    chance < rules.leastChanceCheapestFrac
  ) {
    const values = {
      choice: name,
      percent: Math.round(100 * chance),
      limitPercent: Math.round(100 * rules.leastChanceCheapestFrac),
    };
    return { code: 'ruleSmallChance', values };
  }
  return choice.kind === 'replace' ? slowPayback(choice, rules) : dearRepair(name, price, facts, rules);
}

function slowPayback(choice: ComparedChoice, rules: ShopRuleValues): Saying | undefined {
  const limit = rules.longestPaybackYears;
  const payback = choice.discountedPayback;
  if (limit === undefined || (payback.kind === 'none' && payback.why.code !== 'notPaidBackInStay'))
    return undefined;
  if (payback.kind === 'years' && payback.years <= limit) return undefined;
  return { code: 'ruleSlowPayback', values: { choice: choice.name, limitYears: limit } };
}

function dearRepair(
  choice: string,
  priceUsd: number,
  facts: RuleFacts,
  rules: ShopRuleValues,
): Saying | undefined {
  const share = facts.newPriceUsd > 0 ? priceUsd / facts.newPriceUsd : 0;
  const { largestRepairShareFrac: limit, oldestToRepairYears: oldest } = rules;
  if (limit !== undefined && share > limit) {
    const values = { choice, percent: Math.round(100 * share), limitPercent: Math.round(100 * limit) };
    return { code: 'ruleDearRepair', values };
  }
  if (oldest !== undefined && facts.ageYears > oldest && priceUsd >= (rules.costlyRepairUsd ?? 0)) {
    return { code: 'ruleOldUnit', values: { choice, years: facts.ageYears, limitYears: oldest } };
  }
  return undefined;
}

function warningsOf(facts: RuleFacts, rules: ShopRuleValues): Saying[] {
  const { dischargeF } = facts;
  if (rules.warnDischargeF === undefined || dischargeF === undefined || dischargeF < rules.warnDischargeF)
    return [];
  return [
    {
      code: 'ruleHotDischarge',
      values: { dischargeF: Math.round(dischargeF), limitF: rules.warnDischargeF },
    },
  ];
}
