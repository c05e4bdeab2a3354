import type { Saying } from '../../visit/wording';
import { type Held, heldIn } from './held';

/** Values held inside their published ranges, and what has to be said about it. */
export type HeldValues<Name extends string> = {
  readonly values: Readonly<Record<Name, number>>;
  /** Sum over the values [range widths]. */
  readonly beyond: number;
  readonly notes: readonly Saying[];
};

/**
 * Several conditions held inside their ranges.
 *
 * @param wanted  value and [low, high] by name
 * @returns values, how far they lay outside together, one note `<name>BeyondFit` for each that did
 * Check: tests/diagnostics/fault-effects/held.test.ts
 */
export function heldValues<Name extends string>(
  wanted: Readonly<Record<Name, { readonly value: number; readonly range: readonly number[] }>>,
): HeldValues<Name> {
  const names = Object.keys(wanted) as Name[];
  const held = names.map((name): [Name, Held] => [name, heldIn(wanted[name].value, wanted[name].range)]);
  return {
    values: Object.fromEntries(held.map(([name, { value }]) => [name, value])) as Record<Name, number>,
    beyond: held.reduce((sum, [, { beyond }]) => sum + beyond, 0),
    notes: held
      .filter(([, { beyond }]) => beyond > 0)
      .map(([name]) => {
        const [low = 0, high = 0] = wanted[name].range;
        return { code: `${name}BeyondFit`, values: { low, high } };
      }),
  };
}

/**
 * Fault level held inside its published range.
 *
 * @param level  fault level, >= 0
 * @param max    end of the range
 * Check: tests/diagnostics/fault-effects/held.test.ts
 */
export function heldLevel(level: number, max: number): Held & { readonly notes: readonly Saying[] } {
  const held = heldIn(level, [0, max]);
  const notes =
    held.beyond > 0 ? [{ code: 'levelBeyondFit', values: { maxPercent: Math.round(100 * max) } }] : [];
  return { ...held, notes };
}
