import { Z_10_90 } from '../../math/estimate';
import type { Uncertain } from '../../math/propagate';
import { resolveAssumption } from '../../visit/assumption';
import type { Visit } from '../../visit/visit';
import data from '../data/loss.json';

export type AgePrior = {
  readonly ageYears: number;
  readonly ageAssumed: boolean;
  readonly lnCapacity: Uncertain;
  readonly lnPower: Uncertain;
};

/**
 * Age of the unit in whole years at the visit; an unknown year gives the assumed age.
 *
 * Check: tests/diagnostics/age-prior.test.ts
 */
export function ageOfUnit(visit: Visit): { readonly ageYears: number; readonly assumed: boolean } {
  const { manufactureYear } = visit.unit;
  if (manufactureYear === undefined) {
    return { ageYears: resolveAssumption(visit.assumptions, 'ageYears').likely, assumed: true };
  }
  const visitYear = Number.parseInt(visit.visitDate.slice(0, 4), 10);
  return { ageYears: Math.max(0, visitYear - manufactureYear), assumed: false };
}

/**
 * What age alone says about the loss, before any reading: wide, and meant to be overruled.
 *
 * @param visit  visit with the unit's year and date
 * @returns log ratios of capacity and power with their sd; efficiency loss capped at 25 %
 * Source: data/loss.json, agePrior, status assumption (weak evidence)
 * Check: tests/diagnostics/age-prior.test.ts
 */
export function agePrior(visit: Visit): AgePrior {
  const { ageYears, assumed } = ageOfUnit(visit);
  const { lossFracPerYear, capFrac, capacityShareFrac, sdFloor } = data.agePrior;
  const likely = Math.min(capFrac, 1 - (1 - lossFracPerYear.likely) ** ageYears);
  const lnEfficiency = Math.log(1 - likely);
  const rateSd = (lossFracPerYear.high - lossFracPerYear.low) / (2 * Z_10_90);
  const spread = Math.min(rateSd * ageYears, capFrac);
  return {
    ageYears,
    ageAssumed: assumed,
    lnCapacity: {
      value: capacityShareFrac * lnEfficiency,
      sd: Math.max(sdFloor, capacityShareFrac * spread),
    },
    lnPower: {
      value: -(1 - capacityShareFrac) * lnEfficiency,
      sd: Math.max(sdFloor, (1 - capacityShareFrac) * spread),
    },
  };
}
