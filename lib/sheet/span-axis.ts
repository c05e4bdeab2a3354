import { invariant } from '../math/invariant';
import { dollarWords } from './money-words';
import type { Words } from './phrase';
import { niceStepNotAbove } from './round-to-range';

/** A money axis that may reach below zero. */
export type SpanAxis = {
  readonly min: number;
  readonly max: number;
  /** `frac` = place along the axis, 0 at its lower end. */
  readonly ticks: readonly { readonly at: number; readonly frac: number; readonly label: string }[];
  /** Place of an amount along the axis, 0..1. */
  readonly place: (usd: number) => number;
};

/** Steps a span is cut into at most, before its ends are moved to ticks. Ours. */
const STEPS = 4;

/**
 * Money axis that holds zero and every value given, its ends on ticks at 1, 2 or 5 times a power of ten.
 *
 * @param values  amounts to be shown [USD], finite
 * Check: tests/sheet/span-axis.test.ts
 */
export function spanAxis(words: Words, values: readonly number[]): SpanAxis {
  invariant(values.every(Number.isFinite), 'axis over values that are not finite');
  const low = Math.min(0, ...values);
  const high = Math.max(0, ...values, low + 1);
  const below = niceStepNotAbove((high - low) / STEPS);
  const lead = Math.round(below / 10 ** Math.floor(Math.log10(below) + 1e-9));
  // Rounded down, the step may cut the span too finely for its labels; the next of 1, 2, 5 never does.
  const step = (high - low) / below <= STEPS + 1 ? below : lead === 2 ? below * 2.5 : below * 2;
  const first = Math.floor(low / step + 1e-9);
  const last = Math.ceil(high / step - 1e-9);
  const [min, max] = [first * step, last * step];
  const place = (usd: number) => (Math.min(max, Math.max(min, usd)) - min) / (max - min);
  const ticks = Array.from({ length: last - first + 1 }, (_, i) => {
    const at = (first + i) * step;
    return { at, frac: place(at), label: dollarWords(words, at) };
  });
  return { min, max, ticks, place };
}
