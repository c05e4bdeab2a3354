import type { Climate } from '../energy/climate-model';
import { compareChoices } from '../finance/compare-choices';
import type { Visit } from '../visit/visit';
import type { Appraisal } from './appraisal';
import { lineOfVisit } from './line-of-visit';
import { MODEL_VERSION } from './model-version';
import { usedAssumptions } from './used-assumptions';

/**
 * The whole line for one visit in a given climate: readings, loss, yearly energy, comparison.
 *
 * @param visit    a checked visit
 * @param climate  the climate of its site, already loaded
 * @returns everything found, JSON-serialisable; the same visit gives the same numbers everywhere
 * Check: tests/appraise/appraise.test.ts
 */
export function appraiseWith(visit: Visit, climate: Climate): Appraisal {
  const { findings, energy } = lineOfVisit(visit, climate);
  const comparison = compareChoices({ visit, findings, energy });
  return {
    modelVersion: MODEL_VERSION,
    visit,
    findings,
    energy,
    comparison,
    assumptions: usedAssumptions({ visit, findings, energy }),
  };
}
