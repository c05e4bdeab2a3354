import type { CauseId } from '../../visit/cause';
import type { Loss } from '../findings';
import data from './data/strength.json';

/** A part of the loss: a cause, or what none explains. */
export type LossPart = { readonly cause: CauseId | 'unexplained'; readonly shareFrac: number };

/**
 * Whether a loss is clear: even the good end of the range is worse than a healthy unit, in output or in power.
 *
 * Check: tests/diagnostics/explain/explain-loss.test.ts
 */
export function isClearLoss(loss: Pick<Loss, 'capacityRatioToHealthy' | 'powerRatioToHealthy'>): boolean {
  return loss.capacityRatioToHealthy.high < 1 || loss.powerRatioToHealthy.low > 1;
}

/**
 * The efficiency lost, split by what explains it.
 *
 * @param loss  loss of one mode
 * @returns largest first; small causes and the rest are `unexplained`; nothing when the loss is not split or
 * not clear
 * Check: tests/diagnostics/explain/explain-loss.test.ts
 */
export function lossParts(loss: Loss): readonly LossPart[] {
  if (!isClearLoss(loss)) return [];
  const shares = (loss.shares ?? []).filter(({ shareFrac }) => shareFrac >= data.leastShareFrac.value);
  if (shares.length === 0) return [];
  const rest = 1 - shares.reduce((sum, { shareFrac }) => sum + shareFrac, 0);
  const sorted: LossPart[] = [...shares].sort((a, b) => b.shareFrac - a.shareFrac);
  return rest < data.leastShareFrac.value ? sorted : [...sorted, { cause: 'unexplained', shareFrac: rest }];
}
