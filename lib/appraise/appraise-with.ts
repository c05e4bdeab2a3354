import { diagnose } from '../diagnostics/diagnose';
import { healthyUnit } from '../diagnostics/healthy-unit/healthy-unit';
import { refrigerantProperties } from '../diagnostics/refrigerant/properties';
import type { Climate } from '../energy/climate-model';
import { causeChances } from '../energy/recovery';
import { yearlyEnergy } from '../energy/yearly-energy';
import { compareChoices } from '../finance/compare-choices';
import type { Visit } from '../visit/visit';
import type { Appraisal } from './appraisal';
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
  const { unit, site, assumptions, visitDate } = visit;
  const healthy = healthyUnit({
    unit,
    visitDate,
    assumptions,
    ...(site.stateCode === undefined ? {} : { stateCode: site.stateCode }),
  });
  const properties = unit.refrigerant === undefined ? undefined : refrigerantProperties(unit.refrigerant);
  const findings = diagnose({ visit, healthy, properties });
  const energy = yearlyEnergy({
    visit,
    healthy,
    loss: findings.loss,
    chances: causeChances(findings),
    climate,
    ...(findings.lossByRun === undefined ? {} : { lossByRun: findings.lossByRun }),
  });
  const comparison = compareChoices({ visit, findings, energy });
  return {
    modelVersion: MODEL_VERSION,
    visit,
    findings,
    energy,
    comparison,
    assumptions: usedAssumptions({ visit, findings }),
  };
}
