import type { LoadMoves } from './house-load';
import type { HouseModel } from './year-context';

/** How far each assumed part goes towards less (-1) or more (+1) energy. */
export type ModelMoves = LoadMoves & { readonly cyclic: number; readonly frost: number };

/** A house that needs more than was taken from its size does so in both seasons: its slopes move as one. */
const PARTS: readonly (readonly (keyof ModelMoves)[])[] = [
  ['heatingSlope', 'coolingSlope'],
  ['heatingBalance'],
  ['coolingBalance'],
  ['cyclic'],
  ['frost'],
];

function movesOf(parts: typeof PARTS, move: number): Partial<ModelMoves> {
  return Object.fromEntries(parts.flat().map((part) => [part, move]));
}

/**
 * House and running at the ends of what was assumed about them. The parts (slopes, either balance
 * temperature, cycling, frost) are independent: together they move the cost
 * by the root sum of squares of what each does alone, so all are moved together by just the share of their way that
 * does this.
 *
 * @param at    the model with some parts moved; none = likely
 * @param usd   yearly cost of a model [USD]
 * @returns model at which less and at which more is asked for
 * Check: tests/energy/model-ends.test.ts
 */
export function modelEnds(
  at: (moves: Partial<ModelMoves>) => HouseModel,
  usd: (model: HouseModel) => number,
): { readonly low: HouseModel; readonly high: HouseModel } {
  const likelyUsd = usd(at({}));
  const end = (sign: 1 | -1): HouseModel => {
    const changes = PARTS.map((part) => Math.abs(usd(at(movesOf([part], sign))) - likelyUsd));
    const sum = changes.reduce((a, b) => a + b, 0);
    const share = sum > 0 ? Math.hypot(...changes) / sum : 1 / Math.sqrt(PARTS.length);
    return at(movesOf(PARTS, sign * share));
  };
  return { low: end(-1), high: end(1) };
}
