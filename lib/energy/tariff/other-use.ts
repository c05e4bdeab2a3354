import type { Basis } from '../../visit/basis';
import type { Tariff } from '../../visit/tariff';
import type { BillUse } from '../bills/bill-use';
import { MONTHS } from '../climate-model';
import defaults from '../data/load-defaults.json';

/** What the rest of the house uses before the unit: it fills the lower tiers. */
export type OtherUse = { readonly kwhPerMonth: number; readonly basis: Basis; readonly source: string };

/**
 * Other use of the house that a price by amount hangs on.
 *
 * @param tariff  checked with `checkTariff` before
 * @param bills   their split, where bills were given
 * @returns undefined where no price depends on the amount; from the bills where they can be used, else assumed
 * Source: `otherUseKwhPerMonth` of data/load-defaults.json, status assumption
 * Check: tests/energy/tariff/other-use.test.ts
 */
export function otherUseOf(tariff: Tariff, bills: BillUse | undefined): OtherUse | undefined {
  if (tariff.kind !== 'tiered' || tariff.seasons.every(({ tiers }) => tiers.length < 2)) return undefined;
  if (bills !== undefined && bills.verdict !== 'unusable') {
    return {
      kwhPerMonth: bills.baseKwhPerYear / MONTHS,
      basis: 'bill',
      source: 'Use of the bills beyond the weather',
    };
  }
  const { value, source } = defaults.otherUseKwhPerMonth;
  return { kwhPerMonth: value, basis: 'assumed', source };
}
