/** Where a choice that is paid for first overtakes another on cost so far. */
export type Overtakes =
  /** Costs less so far from the end of this year on, to the end of the stay. */
  | { readonly kind: 'from'; readonly year: number }
  /** From the start. */
  | { readonly kind: 'always' }
  /** For a time only: from the end of one year to the end of another, but not over the whole stay. */
  | { readonly kind: 'between'; readonly year: number; readonly until: number }
  /** Only through the value left in the unit at the end. */
  | { readonly kind: 'atEnd' }
  | { readonly kind: 'never' };

/**
 * From which year a choice has cost less so far than another, and stays so.
 *
 * @param ownUsd    cost so far by year in today's money, index 0 = the day of the visit, last = end of the stay
 * @param otherUsd  the same for the other, same length, >= 1
 * The last year counts the value left at the end; an order that only this turns is told apart.
 * Check: tests/finance/crossings.test.ts
 */
export function overtakes(ownUsd: readonly number[], otherUsd: readonly number[]): Overtakes {
  const cheaper = ownUsd.map((usd, year) => usd < (otherUsd[year] ?? 0));
  const last = cheaper.length - 1;
  if (cheaper[last] !== true) {
    const first = cheaper.indexOf(true);
    return first < 0 ? { kind: 'never' } : { kind: 'between', year: first, until: cheaper.lastIndexOf(true) };
  }
  const dearer = cheaper.lastIndexOf(false);
  if (dearer < 0) return { kind: 'always' };
  if (dearer === last - 1) return { kind: 'atEnd' };
  return { kind: 'from', year: dearer + 1 };
}
