import { climateFor } from '../energy/climate';
import type { Visit } from '../visit/visit';
import type { Appraisal } from './appraisal';
import { appraiseWith } from './appraise-with';

/**
 * From readings to money in one call: what the unit loses, what the year costs, what each choice costs.
 *
 * @param visit  a checked visit (`readVisit`, or the usable part of a draft from `readDraft`)
 * @returns the appraisal; missing readings widen it and are named in it, they never stop it
 * Every climate is part of this module; a page that loads one city calls `appraiseWith`.
 * Check: tests/appraise/appraise.test.ts
 */
export function appraise(visit: Visit): Appraisal {
  return appraiseWith(visit, climateFor(visit.site.climate, visit.site.stateCode));
}
