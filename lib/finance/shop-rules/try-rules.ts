import type { ShopRuleValues } from '../../visit/shop-rules';
import rulesData from '../data/rules-of-thumb.json';
import data from '../data/shop-rule-grid.json';
import { usdOf } from '../money';
import { applyRules, type RuleFacts } from './apply-rules';

/** A past visit as the rules see it. */
export type PastVisit = { readonly visitId: string; readonly facts: RuleFacts };

export type Flip = {
  readonly visitId: string;
  readonly fromId: string;
  readonly toId: string;
  /** Likely total of the new advice less that of the old; above 0 it costs the customer. */
  readonly costsUsd: number;
};

export type RulesTried = {
  readonly visits: number;
  readonly flips: readonly Flip[];
  /** What the advice costs a customer on average above the lowest likely total, before and after. */
  readonly meanCostBeforeUsd: number;
  readonly meanCostAfterUsd: number;
};

/**
 * What a changed set of rules would have done to past visits.
 *
 * @param visits  past visits; those where nothing can be compared are left out
 * @returns which advice flips, dearest flip first, and the mean cost to customers against the full analysis
 * Check: tests/finance/shop-rules.test.ts
 */
export function tryRules(
  visits: readonly PastVisit[],
  before: ShopRuleValues,
  after: ShopRuleValues,
): RulesTried {
  const judged = visits.flatMap(({ visitId, facts }) => {
    const [fromId, toId] = [applyRules(facts, before).choiceId, applyRules(facts, after).choiceId];
    const lowest = lowestTotal(facts);
    const [from, to] = [totalOf(facts, fromId), totalOf(facts, toId)];
    return lowest === undefined || from === undefined || to === undefined
      ? []
      : [{ visitId, fromId, toId, costsUsd: to - from, before: from - lowest, after: to - lowest }];
  });
  return {
    visits: judged.length,
    flips: judged
      .filter((j) => j.fromId !== j.toId)
      .map(({ visitId, fromId, toId, costsUsd }) => ({ visitId, fromId, toId, costsUsd }))
      .sort((a, b) => b.costsUsd - a.costsUsd),
    meanCostBeforeUsd: mean(judged.map((j) => j.before)),
    meanCostAfterUsd: mean(judged.map((j) => j.after)),
  };
}

/** "Repair while the unit is no older than this, or the price no more than this share of a new one." */
export type SimpleRule = { readonly oldestYears: number; readonly largestShareFrac: number };

export type FittedRule = {
  readonly visits: number;
  readonly rule: SimpleRule;
  /** What following it costs on average above the lowest likely total of repair and replacement. */
  readonly meanRegretUsd: number;
  /** The same for the two rules customers hear, beside it. */
  readonly ageTimesPriceRegretUsd: number;
  readonly halfPriceRegretUsd: number;
};

/**
 * The rule of age and repair share that comes closest to the full analysis over past visits: every pair of limits on
 * a grid is tried.
 *
 * @param visits  past visits; those without both a priced repair and a priced replacement are left out
 * @returns the rule with the least mean regret, ties to the milder limits; `undefined` when no visit tells
 * Check: tests/finance/shop-rules.test.ts
 */
export function fittedRule(visits: readonly PastVisit[]): FittedRule | undefined {
  const cases = visits.flatMap(({ facts }) => caseOf(facts) ?? []);
  if (cases.length === 0) return undefined;
  const regret = (repairs: (c: Case) => boolean) =>
    mean(cases.map((c) => (repairs(c) ? c.repairUsd : c.replaceUsd) - Math.min(c.repairUsd, c.replaceUsd)));
  const { oldestYears, largestShareFrac } = data.grid;
  let best: { rule: SimpleRule; meanRegretUsd: number } | undefined;
  for (const oldest of oldestYears) {
    for (const share of largestShareFrac) {
      const meanRegretUsd = regret((c) => c.ageYears <= oldest && c.shareFrac <= share);
      if (best === undefined || meanRegretUsd < best.meanRegretUsd)
        best = { rule: { oldestYears: oldest, largestShareFrac: share }, meanRegretUsd };
    }
  }
  if (best === undefined) return undefined;
  const { ageTimesPriceUsd, priceShareFrac } = rulesData.values;
  return {
    visits: cases.length,
    ...best,
    ageTimesPriceRegretUsd: regret((c) => c.ageYears * c.priceUsd <= ageTimesPriceUsd.value),
    halfPriceRegretUsd: regret((c) => c.shareFrac < priceShareFrac.value),
  };
}

type Case = {
  readonly ageYears: number;
  readonly priceUsd: number;
  readonly shareFrac: number;
  readonly repairUsd: number;
  readonly replaceUsd: number;
};

/** The cheapest repair in total against the cheapest replacement. */
function caseOf({ comparison, ageYears, newPriceUsd }: RuleFacts): Case | undefined {
  const lowest = (kind: 'repair' | 'replace') =>
    comparison.choices
      .filter((c) => c.kind === kind && c.priced)
      .sort((a, b) => a.totalTodayUsd.likely - b.totalTodayUsd.likely)[0];
  const [repair, replace] = [lowest('repair'), lowest('replace')];
  if (repair === undefined || replace === undefined || newPriceUsd <= 0) return undefined;
  const priceUsd = usdOf(repair.priceUsd);
  return {
    ageYears,
    priceUsd,
    shareFrac: priceUsd / newPriceUsd,
    repairUsd: repair.totalTodayUsd.likely,
    replaceUsd: replace.totalTodayUsd.likely,
  };
}

function totalOf({ comparison }: RuleFacts, id: string): number | undefined {
  return comparison.choices.find((c) => c.id === id)?.totalTodayUsd.likely;
}

function lowestTotal({ comparison }: RuleFacts): number | undefined {
  const totals = comparison.choices.filter((c) => c.priced).map((c) => c.totalTodayUsd.likely);
  return totals.length === 0 ? undefined : Math.min(...totals);
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((a, b) => a + b, 0) / values.length;
}
