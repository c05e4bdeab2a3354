import { type Estimate, estimate } from '../math/estimate';
import type { Driver } from './comparison';
import data from './data/conventions.json';

/** A result at the low and the high end of one input. */
export type Moved = {
  readonly input: string;
  readonly low: number;
  readonly high: number;
  /** A way of counting and not a chance. */
  readonly stance?: true | undefined;
};

/**
 * Range of a result from moving one input at a time: movements up add as squares, and so do movements down, as for
 * independent inputs. Both ends of an input may move the result the same way; then the larger one counts.
 *
 * @param likely  result with everything likely
 * @param moved   result with one input at its 10 % and its 90 % point
 * @returns about the 10, 50 and 90 % points; interactions between inputs, and stances, are left out
 * Source: root sum of squares, JCGM 100:2008 5.1.2, status memory
 * Check: tests/finance/range.test.ts
 */
export function rangeOf(likely: number, moved: readonly Moved[]): Estimate {
  let below = 0;
  let above = 0;
  for (const { low, high, stance } of moved) {
    if (stance === true) continue;
    below += Math.min(0, low - likely, high - likely) ** 2;
    above += Math.max(0, low - likely, high - likely) ** 2;
  }
  return estimate(likely - Math.sqrt(below), likely, likely + Math.sqrt(above));
}

/** Inputs by how far they move the result, widest first; those that hardly move it are left out. */
export function driversOf(likely: number, moved: readonly Moved[]): Driver[] {
  const width = (m: Driver) => Math.max(m.lowUsd, m.highUsd, likely) - Math.min(m.lowUsd, m.highUsd, likely);
  return moved
    .map(({ input, low, high }) => ({ input, lowUsd: low, highUsd: high }))
    .filter((driver) => width(driver) >= data.values.smallestDriverUsd.value)
    .sort((a, b) => width(b) - width(a));
}
