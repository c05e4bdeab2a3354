import { invariant } from '../math/invariant';

/** Which unit runs in a year, as chances that add up to 1. */
export type PlaceYear = {
  /** The unit that was there on the day (or was bought then) still runs at the start of the year. */
  readonly firstFrac: number;
  /** A later unit runs, by its age at the start of the year; index = age. */
  readonly laterFracByAge: Float64Array;
  /** Expected failures in the year, of whichever unit runs. */
  readonly failsFrac: number;
  /** Chance that the first unit, still running, is replaced as planned at the end of the year. */
  readonly plannedFrac: number;
};

export type PlaceHistory = {
  /** Index 0 = year 1. */
  readonly years: readonly PlaceYear[];
  /** At the end of the last year, after a failed unit has been replaced; nothing fails then. */
  readonly atEnd: PlaceYear;
};

/**
 * Exact chances of which unit is in place, by recursion on the year and the age of the unit in place. A unit that
 * fails in a year is replaced at its end; the new one starts the next year at age 0 and can fail too. The flag
 * "first or later" is carried along, since only the first unit has its own age and its own risk.
 *
 * @param firstFails  chance that the first unit fails in year 1, 2, ... given that it runs then; each 0..1
 * @param laterFails  chance that a new unit fails in the year after age 0, 1, ...; at least as long, each 0..1
 * @param plannedYear first unit replaced at the end of this year if it still runs; left out = only on failure
 * @returns chances for each year and at the end
 * @throws invariant if a chance lies outside 0..1 or the arrays do not fit
 * Source: renewal recursion; computed
 * Check: tests/finance/unit-in-place.test.ts, against backward recursion and 1e6 simulated lives
 */
export function placeHistory(
  firstFails: ArrayLike<number>,
  laterFails: ArrayLike<number>,
  plannedYear?: number,
): PlaceHistory {
  const count = firstFails.length;
  invariant(laterFails.length >= count - 1, `${laterFails.length} chances for ${count} years`);
  const years: PlaceYear[] = [];
  let firstFrac = 1;
  let laterFracByAge = new Float64Array(count + 1);
  for (let t = 0; t < count; t += 1) {
    const firstFailing = firstFrac * chance(firstFails[t]);
    const next = new Float64Array(count + 1);
    let failsFrac = firstFailing;
    for (let age = 0; age < t; age += 1) {
      const here = laterFracByAge[age] ?? 0;
      const failing = here * chance(laterFails[age]);
      failsFrac += failing;
      next[age + 1] = here - failing;
    }
    const plannedFrac = plannedYear === t + 1 ? firstFrac - firstFailing : 0;
    next[0] = failsFrac + plannedFrac;
    years.push({ firstFrac, laterFracByAge, failsFrac, plannedFrac });
    firstFrac -= firstFailing + plannedFrac;
    laterFracByAge = next;
  }
  return { years, atEnd: { firstFrac, laterFracByAge, failsFrac: 0, plannedFrac: 0 } };
}

function chance(value: number | undefined): number {
  invariant(value !== undefined && value >= 0 && value <= 1, `chance ${value}`);
  return value;
}
