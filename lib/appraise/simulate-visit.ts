import type { Climate } from '../energy/climate-model';
import { energySurfaces } from '../energy/energy-surface';
import { type Simulation, simulate } from '../finance/simulate';
import type { Appraisal } from './appraisal';
import { energyInput } from './line-of-visit';

/**
 * Chance that each choice is cheapest, and what else draws of everything uncertain say about an appraised visit.
 *
 * @param appraisal  of the visit
 * @param climate    the one it was appraised with
 * @param draws      number of draws, whole, >= 1
 * @param seed       whole number; the same seed gives the same dollars everywhere
 * Check: tests/appraise/simulate-visit.test.ts
 */
export function simulateVisit(
  appraisal: Appraisal,
  climate: Climate,
  draws: number,
  seed: number,
): Simulation {
  const { visit, findings, energy } = appraisal;
  const surfaces = energySurfaces(energyInput(visit, findings, climate));
  return simulate({ visit, findings, energy, surfaces, draws, seed });
}
