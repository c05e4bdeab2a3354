import { invariant } from '../math/invariant';
import { dollarWords } from './money-words';
import type { Words } from './phrase';
import { niceStepNotAbove } from './round-to-range';
import type { Axis } from './sheet';

const mostTicks = 5;

/**
 * Zero-based money axis that holds every value given.
 *
 * @param highest  largest value to be shown [USD]; 0 or less gives an axis to 1 dollar
 * @param unit     words for the axis
 * @returns axis whose end is a tick, with three to six ticks at 1, 2 or 5 times a power of ten
 * Check: tests/sheet/axis.test.ts
 */
export function moneyAxis(words: Words, highest: number, unit: string): Axis {
  invariant(Number.isFinite(highest), `axis to ${highest}`);
  const top = Math.max(highest, 1);
  const step = stepFor(top);
  const count = Math.ceil(top / step - 1e-9);
  const ticks = Array.from({ length: count + 1 }, (_, i) => ({
    at: i * step,
    label: dollarWords(words, i * step),
  }));
  return { max: count * step, ticks, unit };
}

function stepFor(top: number): number {
  const below = niceStepNotAbove(top / mostTicks);
  // The step not above a fifth may need one tick more than allowed; the next of 1, 2, 5 never does.
  const lead = Math.round(below / 10 ** Math.floor(Math.log10(below) + 1e-9));
  const next = lead === 2 ? below * 2.5 : below * 2;
  return Math.ceil(top / below - 1e-9) <= mostTicks ? below : next;
}
