import type { CauseId } from '../../visit/cause';
import type { Loss } from '../findings';

/** A part of the loss: a cause, or what none explains. */
export type LossPart = { readonly cause: CauseId | 'unexplained'; readonly shareFrac: number };

/** A part smaller than this is not told by itself. */
const LEAST_TOLD = 0.05;

/**
 * The efficiency lost, split by what explains it.
 *
 * @param loss  loss of one mode
 * @returns largest first; small causes and the rest are `unexplained`; nothing when the loss is not split
 * Check: tests/diagnostics/explain/explain-loss.test.ts
 */
export function lossParts(loss: Loss): readonly LossPart[] {
  const shares = (loss.shares ?? []).filter(({ shareFrac }) => shareFrac >= LEAST_TOLD);
  if (shares.length === 0) return [];
  const rest = 1 - shares.reduce((sum, { shareFrac }) => sum + shareFrac, 0);
  const sorted: LossPart[] = [...shares].sort((a, b) => b.shareFrac - a.shareFrac);
  return rest < LEAST_TOLD ? sorted : [...sorted, { cause: 'unexplained', shareFrac: rest }];
}
