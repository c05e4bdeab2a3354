/** Second ways of computing, kept apart from the product's own. */

/** Simpson's rule with an even number of intervals. */
export function simpson(f: (x: number) => number, from: number, to: number, intervals: number): number {
  const h = (to - from) / intervals;
  let sum = f(from) + f(to);
  for (let i = 1; i < intervals; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
}

/**
 * Expected present value of failures by backward recursion on (year, flag, age of the unit in place):
 * V = v [q (C + V(next, new, 0)) + (1 - q) V(next, same, age + 1)].
 */
export function backwardCost(
  firstFails: ArrayLike<number>,
  laterFails: ArrayLike<number>,
  costOfYear: (year: number) => number,
  d: number,
): number {
  const years = firstFails.length;
  const value = (t: number, first: boolean, age: number): number => {
    if (t === years) return 0;
    const q = (first ? firstFails[t] : laterFails[age]) ?? 0;
    const failed = costOfYear(t + 1) + memo(t + 1, false, 0);
    return (q * failed + (1 - q) * memo(t + 1, first, age + 1)) / (1 + d);
  };
  const known = new Map<string, number>();
  const memo = (t: number, first: boolean, age: number): number => {
    const key = `${t} ${first} ${age}`;
    const old = known.get(key);
    if (old !== undefined) return old;
    const fresh = value(t, first, age);
    known.set(key, fresh);
    return fresh;
  };
  return memo(0, true, 0);
}

/** One choice's expected total by backward recursion, all in nominal dollars; a second way for the headline number. */
export function backwardTotal(plan: {
  readonly years: number;
  readonly d: number;
  /** Chance that the unit in place fails in a year. */
  readonly fails: (first: boolean, age: number) => number;
  /** Running cost of year t. */
  readonly running: (t: number, first: boolean, age: number) => number;
  readonly replacement: (t: number) => number;
  /** Value left at the end, by the age of the unit in place. */
  readonly left: (first: boolean, age: number) => number;
}): number {
  const known = new Map<string, number>();
  const worth = (t: number, first: boolean, age: number): number => {
    if (t === plan.years) return -plan.left(first, age);
    const key = `${t} ${first} ${age}`;
    const old = known.get(key);
    if (old !== undefined) return old;
    const q = plan.fails(first, age);
    const failed = plan.replacement(t + 1) + worth(t + 1, false, 0);
    const kept = worth(t + 1, first, age + 1);
    const fresh = (plan.running(t + 1, first, age) + q * failed + (1 - q) * kept) / (1 + plan.d);
    known.set(key, fresh);
    return fresh;
  };
  return worth(0, true, 0);
}
