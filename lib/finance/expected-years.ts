import { repairTreats } from '../energy/repair-effect';
import { invariant } from '../math/invariant';
import type { CauseId } from '../visit/cause';
import type { Choice, Repairing } from '../visit/choice';
import conventions from './data/conventions.json';
import type { MoneyDraw } from './money-draw';
import { renewsCompressor } from './new-compressor';
import { lifeCurve, lifeLeftFrac, yearlyFailureFracs } from './survival';
import { type PlaceYear, placeHistory } from './unit-in-place';

/** What one year brings on average, in prices of the visit. */
export type ExpectedYear = {
  readonly energyUsd: number;
  readonly smallRepairsUsd: number;
  /** Expected number of failures in the year. */
  readonly failsFrac: number;
  /** Chance that the first unit is replaced as planned at the end of the year, not having failed. */
  readonly plannedFrac: number;
  /** Chance that the unit of the first day has failed by the end of the year. */
  readonly failedByFrac: number;
  /** At the end of the year: expected part of its life left in the unit bought with the choice ... */
  readonly boughtLeftFrac: number;
  /** ... and in one that replaced a failed unit. */
  readonly laterLeftFrac: number;
};

/** One way things can stand from the first day: a repair may or may not cure. */
type World = {
  readonly weightFrac: number;
  readonly ageYears: number;
  readonly hazardRatio: number;
  readonly energyUsd: number;
  readonly bought: boolean;
};

/**
 * What each year brings on average under a choice. The first years do not depend on how many follow. A repair is a mixture: it cures with the chance of
 * success and then takes back the raised risk of failure and, with a new compressor, part of the risk of its age, or it
 * changes nothing. A unit that fails is replaced at the end of the year by the fallback unit, whose energy counts from
 * the next year.
 *
 * @param choice  leave, repair or replacement
 * @param draw    one value for everything uncertain
 * @param years   whole number of years
 * @param suspected  cause the technician suspects, if any
 * @param fallbackScenarioId  energy scenario of the unit that replaces a failed one
 * @param plannedYear  the first unit is replaced by the fallback unit at the end of this year at the latest
 * @returns expected years, index 0 = year 1
 * @throws invariant if the energy stage gave no scenario for the choice
 * Check: tests/finance/expected-years.test.ts
 */
export function expectedYears(
  choice: Choice,
  draw: MoneyDraw,
  years: number,
  suspected: CauseId | undefined,
  fallbackScenarioId: string,
  plannedYear?: number,
): ExpectedYear[] {
  const { values } = draw;
  const curve = lifeCurve(values.medianLifeYears, values.survivalShape);
  const laterFails = yearlyFailureFracs(curve, 0, years);
  const laterEnergyUsd = energyOf(draw, fallbackScenarioId);
  const sums = Array.from({ length: years }, () => ({ ...NOTHING }));
  for (const world of worldsOf(choice, draw, suspected)) {
    const w = world.weightFrac;
    if (w === 0) continue;
    const firstFails = yearlyFailureFracs(curve, world.ageYears, years, world.hazardRatio);
    const history = placeHistory(firstFails, laterFails, plannedYear);
    for (const [k, sum] of sums.entries()) {
      const year = history.years[k];
      invariant(year !== undefined, `no year ${k + 1}`);
      const atEnd = history.years[k + 1] ?? history.atEnd;
      sum.energyUsd += w * (year.firstFrac * world.energyUsd + (1 - year.firstFrac) * laterEnergyUsd);
      sum.smallRepairsUsd += w * smallRepairs(year, world.ageYears + k, draw);
      sum.failsFrac += w * year.failsFrac;
      sum.plannedFrac += w * year.plannedFrac;
      sum.failedByFrac += w * (1 - atEnd.firstFrac);
      if (world.bought)
        sum.boughtLeftFrac += w * atEnd.firstFrac * lifeLeftFrac(k + 1, values.medianLifeYears);
      for (let age = 0; age <= k; age += 1) {
        sum.laterLeftFrac += w * (atEnd.laterFracByAge[age] ?? 0) * lifeLeftFrac(age, values.medianLifeYears);
      }
    }
  }
  return sums;
}

const NOTHING = {
  energyUsd: 0,
  smallRepairsUsd: 0,
  failsFrac: 0,
  plannedFrac: 0,
  failedByFrac: 0,
  boughtLeftFrac: 0,
  laterLeftFrac: 0,
};

/**
 * Energy of a year right after the choice, in prices of the visit: for a repair, cured or not, by its chance.
 *
 * Check: tests/finance/expected-years.test.ts
 */
export function firstYearEnergyUsd(choice: Choice, draw: MoneyDraw, suspected: CauseId | undefined): number {
  return worldsOf(choice, draw, suspected).reduce((sum, w) => sum + w.weightFrac * w.energyUsd, 0);
}

/**
 * Whether a repair goes after the cause that is suspected: only then does it take back the raised risk of failure.
 * With no cause suspected it is taken to.
 *
 * Check: tests/finance/expected-years.test.ts
 */
export function repairIsAimed(choice: Repairing, suspected: CauseId | undefined): boolean {
  if (suspected === undefined) return true;
  return (choice.addresses ?? suspected) === suspected && repairTreats(choice, suspected);
}

/** What a repair that cures does to the risk of failure. */
export type CureOfRisk = {
  /** It goes after the suspected cause, and so takes back the raised risk. */
  readonly aimed: boolean;
  readonly newCompressor: boolean;
};

/** What a repair does to the risk of failure when it cures. Check: tests/finance/expected-years.test.ts */
export function cureOfRisk(choice: Repairing, suspected: CauseId | undefined): CureOfRisk {
  return { aimed: repairIsAimed(choice, suspected), newCompressor: renewsCompressor(choice) };
}

/**
 * Risk of failure after a repair that cured, against an ordinary unit of the same age. A new compressor lowers the
 * risk in part, since all else keeps its age.
 *
 * @param foundRatio          raised risk of the unit as found, > 0
 * @param newCompressorRatio  risk with a new compressor against the old one, > 0
 * @returns hazard ratio, > 0
 * Source: product of two independent ratios; assumption
 * Check: tests/finance/expected-years.test.ts, tests/finance/simulate.test.ts
 */
export function curedHazardRatio(cure: CureOfRisk, foundRatio: number, newCompressorRatio: number): number {
  return (cure.aimed ? 1 : foundRatio) * (cure.newCompressor ? newCompressorRatio : 1);
}

function worldsOf(choice: Choice, draw: MoneyDraw, suspected: CauseId | undefined): World[] {
  const found = {
    ageYears: draw.ageYears,
    hazardRatio: draw.foundHazardRatio,
    energyUsd: energyOf(draw, 'asFound'),
    bought: false,
  };
  if (choice.kind === 'leave') return [{ ...found, weightFrac: 1 }];
  const energyUsd = energyOf(draw, choice.id);
  if (choice.kind === 'replace')
    return [{ weightFrac: 1, ageYears: 0, hazardRatio: 1, energyUsd, bought: true }];
  const shown = choice.shownByRun !== undefined;
  const cured = shown ? 1 : draw.values.repairSuccessFrac;
  const { newCompressorHazardRatio } = draw.values;
  const hazardRatio = curedHazardRatio(
    cureOfRisk(choice, suspected),
    draw.foundHazardRatio,
    newCompressorHazardRatio,
  );
  return [
    { ...found, weightFrac: cured, energyUsd, hazardRatio },
    { ...found, weightFrac: 1 - cured },
  ];
}

function smallRepairs(year: PlaceYear, firstAgeYears: number, draw: MoneyDraw): number {
  const { smallRepairsNewUsdPerYear: young, smallRepairsOldUsdPerYear: old } = draw.values;
  const oldAge = conventions.values.smallRepairsOldFromAgeYears.value;
  const atAge = (age: number) => young + (old - young) * Math.min(1, age / oldAge);
  let sum = year.firstFrac * atAge(firstAgeYears);
  for (let age = 0; age < year.laterFracByAge.length; age += 1)
    sum += (year.laterFracByAge[age] ?? 0) * atAge(age);
  return sum;
}

function energyOf(draw: MoneyDraw, id: string): number {
  const usd = draw.energyUsd[id];
  invariant(usd !== undefined, `no energy scenario "${id}"`);
  return usd;
}
