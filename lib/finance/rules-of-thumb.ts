import type { Saying } from '../visit/wording';
import type { RulesOfThumb } from './comparison';
import data from './data/rules-of-thumb.json';

/**
 * What the rules of thumb that customers hear say about a repair. They see neither energy nor the stay nor the price
 * level; shown only beside the full answer.
 *
 * @param ageYears        age of the present unit [years]
 * @param repairPriceUsd  price of the repair [USD]
 * @param newPriceUsd     price of a new unit [USD], > 0
 * @returns the two figures and which way each rule leans
 * Ties: age times price exactly at its limit leans to repair, half the price exactly leans to replace.
 * Source: data/rules-of-thumb.json: common practice, no source
 * Check: tests/finance/rules-of-thumb.test.ts
 */
export function rulesOfThumb(ageYears: number, repairPriceUsd: number, newPriceUsd: number): RulesOfThumb {
  const ageTimesPriceUsd = ageYears * repairPriceUsd;
  const priceShareFrac = newPriceUsd > 0 ? repairPriceUsd / newPriceUsd : 0;
  return {
    ageTimesPriceUsd,
    ageTimesPriceSays: ageTimesPriceUsd > data.values.ageTimesPriceUsd.value ? 'replace' : 'repair',
    priceShareFrac,
    priceShareSays: priceShareFrac >= data.values.priceShareFrac.value ? 'replace' : 'repair',
  };
}

/** What the rules of thumb do not see. */
export type UnseenByThumb = {
  readonly fullSays: 'repair' | 'replace';
  readonly choice: string;
  readonly stayYears: number;
  /** Chance that the repair meets the cause and cures it. */
  readonly curesFrac: number;
  /** What the repair leaves on the running cost each year above a new unit [USD]. */
  readonly extraEnergyUsdPerYear: number;
};

/**
 * Where the rules of thumb part from the full analysis, and the plainest reason why.
 *
 * @returns one saying for each rule that says otherwise; none when both agree with it
 * Check: tests/finance/rules-of-thumb.test.ts
 */
export function thumbDiffers(rules: RulesOfThumb, unseen: UnseenByThumb): Saying[] {
  const { fullSays, choice, stayYears } = unseen;
  const rule = (says: 'repair' | 'replace', code: string): Saying[] =>
    says === fullSays ? [] : [{ code, values: { choice, ...reasonOf(unseen), years: stayYears } }];
  return [
    ...rule(rules.ageTimesPriceSays, `thumbAge.${fullSays}.${whyOf(unseen)}`),
    ...rule(rules.priceShareSays, `thumbShare.${fullSays}.${whyOf(unseen)}`),
  ];
}

function whyOf({ fullSays, curesFrac, stayYears }: UnseenByThumb): 'cause' | 'energy' | 'stay' {
  const { likelyCureFrac, shortStayYears } = data.values;
  if (fullSays === 'replace') return curesFrac < likelyCureFrac.value ? 'cause' : 'energy';
  return stayYears <= shortStayYears.value ? 'stay' : 'energy';
}

function reasonOf({ curesFrac, extraEnergyUsdPerYear }: UnseenByThumb) {
  return { percent: Math.round(100 * curesFrac), energyUsd: Math.round(Math.abs(extraEnergyUsdPerYear)) };
}
