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
