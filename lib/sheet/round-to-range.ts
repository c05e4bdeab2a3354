import type { Estimate } from '../math/estimate';
import { invariant } from '../math/invariant';
import rules from './data/rounding.json';

/** An estimate as it is printed: multiples of `step`, low never above and high never below what was computed. */
export type RoundedRange = Estimate & { readonly step: number };

/**
 * Rounds an estimate to what its own range supports: low down, high up, likely to the nearest step.
 *
 * @param value         low / likely / high in one unit
 * @param smallestStep  smallest step allowed, same unit, > 0
 * @returns multiples of the step; `step` is the larger of `smallestStep` and the largest 1, 2 or 5 times a power of
 *   ten that is not above a fifth of the width; a width of 0 gives the smallest step. Never -0
 * @throws invariant if a number is not finite, out of order, or the smallest step is not positive
 * Source: rules in lib/sheet/data/rounding.json, status assumption
 * Check: tests/sheet/round-to-range.test.ts
 */
export function roundToRange(value: Estimate, smallestStep: number): RoundedRange {
  const { low, likely, high } = value;
  invariant(
    [low, likely, high].every(Number.isFinite) && low <= likely && likely <= high,
    `range ${low}, ${likely}, ${high}`,
  );
  invariant(smallestStep > 0 && Number.isFinite(smallestStep), `smallest step ${smallestStep}`);
  const step = Math.max(smallestStep, niceStepNotAbove((high - low) / rules.widthPerStep.value));
  return {
    low: stepDown(low, step),
    likely: clean(Math.round(likely / step) * step),
    high: stepUp(high, step),
    step,
  };
}

/**
 * Rounds an estimated amount of money: to 10 dollars below 1,000, to 50 from there on, coarser when the range is wide.
 *
 * @param value low / likely / high [USD]; negative amounts by the same rule
 * Source: rules in lib/sheet/data/rounding.json, status assumption
 * Check: tests/sheet/round-to-range.test.ts
 */
export function roundUsdToRange(value: Estimate): RoundedRange {
  const largest = Math.max(Math.abs(value.low), Math.abs(value.high));
  const large = largest >= rules.largeAmountUsd.value;
  return roundToRange(value, large ? rules.largeAmountStepUsd.value : rules.smallAmountStepUsd.value);
}

/**
 * A low end that its range's step would round down to nothing, rounded down by a step of its own: 185 is 100.
 *
 * @param usd  [USD]; below the smallest step it is nothing
 * Source: smallest step in lib/sheet/data/rounding.json, status assumption
 * Check: tests/sheet/round-to-range.test.ts
 */
export function endAboveZeroUsd(usd: number): number {
  return usd < rules.smallAmountStepUsd.value ? 0 : niceStepNotAbove(usd);
}

/**
 * Largest of 1, 2 or 5 times a power of ten that is not above a limit.
 *
 * @param limit  any unit; 0 or less gives 0
 * Check: tests/sheet/round-to-range.test.ts
 */
export function niceStepNotAbove(limit: number): number {
  if (!(limit > 0)) return 0;
  const power = 10 ** Math.floor(Math.log10(limit) + 1e-9);
  const factor = [5, 2, 1].find((f) => f * power <= limit * (1 + 1e-9)) ?? 1;
  return factor * power;
}

// A value already on a step must stay there although 0.1 is no binary fraction: a millionth of a step is forgiven.
const slack = 1e-6;

function stepDown(value: number, step: number): number {
  return clean(Math.floor(value / step + slack) * step);
}

function stepUp(value: number, step: number): number {
  return clean(Math.ceil(value / step - slack) * step);
}

/** Removes binary dust (0.30000000000000004) and minus zero. */
function clean(value: number): number {
  return Number(value.toPrecision(12)) + 0;
}
