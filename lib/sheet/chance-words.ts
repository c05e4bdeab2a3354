import type { Estimate } from '../math/estimate';
import { invariant } from '../math/invariant';
import { phrase, type Words } from './phrase';

/** Number of equal cases a chance is told out of; one for all choices of a row. */
export type ChanceBase = 10 | 100;

/** Where telling a chance out of ten or out of a hundred stops making sense. Status: ours, told in the rules of the sheet. */
const leastOutOfTenFrac = 0.095;
const leastOutOfHundredFrac = 0.01;

/**
 * One denominator for all chances of a row: 10, or 100 as soon as one of them is below 1 in 10.
 *
 * @param chances  likely values [0-1]
 * Check: tests/sheet/chance-words.test.ts
 */
export function chanceBase(chances: readonly number[]): ChanceBase {
  return chances.some((chance) => chance < leastOutOfTenFrac) ? 100 : 10;
}

/**
 * A chance as a natural frequency: "3 in 10", "less than 1 in 100", "more than 9 in 10".
 * Out of a hundred, chances above 10 are told in steps of five: more would be false precision.
 *
 * @param chance  [0-1]; 0 is told as less than 1 in 100, since nothing is sure
 * @param base    out of how many
 * @throws invariant outside 0..1
 * Check: tests/sheet/chance-words.test.ts
 */
export function chanceWords(words: Words, chance: number, base: ChanceBase = 10): string {
  invariant(chance >= 0 && chance <= 1, `chance ${chance}`);
  if (chance < leastOutOfHundredFrac) return phrase(words, 'chance.below', { count: 1, of: 100 });
  if (base === 10 && chance < leastOutOfTenFrac) return chanceWords(words, chance, 100);
  const count = countOf(chance, base);
  if (count >= base) return phrase(words, 'chance.above', { count: base === 10 ? 9 : 99, of: base });
  return phrase(words, 'chance.of', { count, of: base });
}

/**
 * Range of a chance with the same denominator: "3 to 6 in 10"; the low end is rounded down, the high end up.
 *
 * @param chance  low / likely / high [0-1]
 * @returns the range, or `undefined` when both ends are told alike
 * Check: tests/sheet/chance-words.test.ts
 */
export function chanceRangeWords(words: Words, chance: Estimate, base: ChanceBase): string | undefined {
  const low = endOf(chance.low, base, Math.floor, 1e-9);
  const high = Math.min(base, endOf(chance.high, base, Math.ceil, -1e-9));
  if (low === high) return undefined;
  return phrase(words, 'chance.range', { low, high, of: base });
}

/** The chance itself as a count, for a row of signs. */
export function countOf(chance: number, base: ChanceBase): number {
  const exact = chance * base;
  if (base === 10 || exact <= 10) return Math.max(1, Math.round(exact));
  return Math.round(exact / 5) * 5;
}

/** An end of a range as a count: whole numbers, steps of five above 10 in 100. */
function endOf(chance: number, base: ChanceBase, round: (value: number) => number, slack: number): number {
  const exact = chance * base;
  return base === 10 || exact <= 10 ? round(exact + slack) : round(exact / 5 + slack) * 5;
}
