import type { CauseChances } from '../energy/recovery';
import { invariant } from '../math/invariant';
import type { Choice } from '../visit/choice';
import conventions from './data/conventions.json';
import type { MoneyDraw } from './money-draw';
import { lifeCurve, lifeLeftFrac, yearlyFailureFracs } from './survival';
import { type PlaceYear, placeHistory } from './unit-in-place';
import { type World, worldsOf } from './worlds';

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

/**
 * What each year brings on average under a choice. The first years do not depend on how many follow. They are
 * the mean over the causes that may be at work and over a repair's curing or not (see `worldsByCause`). A unit that
 * fails is replaced at the end of the year by the fallback unit, whose energy counts from the next year.
 *
 * @param choice  leave, repair or replacement
 * @param draw    one value for everything uncertain
 * @param years   whole number of years
 * @param chances  what may be at work
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
  chances: CauseChances,
  fallbackScenarioId: string,
  plannedYear?: number,
): ExpectedYear[] {
  return expectedYearsIn(worldsOf(choice, draw, chances), draw, years, fallbackScenarioId, plannedYear);
}

/**
 * The same for worlds already laid out.
 *
 * Check: tests/finance/expected-years.test.ts
 */
export function expectedYearsIn(
  worlds: readonly World[],
  draw: MoneyDraw,
  years: number,
  fallbackScenarioId: string,
  plannedYear?: number,
): ExpectedYear[] {
  const { values } = draw;
  const curve = lifeCurve(values.medianLifeYears, values.survivalShape);
  const laterFails = yearlyFailureFracs(curve, 0, years);
  const laterEnergyUsd = energyOf(draw, fallbackScenarioId);
  const sums = Array.from({ length: years }, () => ({ ...NOTHING }));
  for (const world of worlds) {
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
export function firstYearEnergyUsd(choice: Choice, draw: MoneyDraw, chances: CauseChances): number {
  return worldsOf(choice, draw, chances).reduce((sum, w) => sum + w.weightFrac * w.energyUsd, 0);
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
