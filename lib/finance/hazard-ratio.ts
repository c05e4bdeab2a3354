import type { CauseId } from '../visit/cause';
import hazards from './data/hazard-by-cause.json';

/** How strongly a cause raises the risk: the assumption on ailing units to this power. */
export function hazardPower(cause: CauseId | undefined): number {
  return cause === undefined ? 0 : hazards.causes[cause];
}

/**
 * Risk of failure of the unit as found under a cause, against an ordinary one of its age.
 *
 * @param hotRatio     from a dangerous discharge temperature, 1 = none
 * @param ailingRatio  assumption on units with an active fault
 * @returns the larger of the two, > 0
 * Source: data/hazard-by-cause.json and the assumptions, status assumption
 * Check: tests/finance/worlds.test.ts
 */
export function foundHazardRatio(hotRatio: number, ailingRatio: number, cause: CauseId | undefined): number {
  const power = hazardPower(cause);
  return Math.max(hotRatio, power === 0 ? 1 : ailingRatio ** power);
}
