import { diagnose } from '../diagnostics/diagnose';
import type { Findings } from '../diagnostics/findings';
import { healthyUnit } from '../diagnostics/healthy-unit/healthy-unit';
import { refrigerantProperties } from '../diagnostics/refrigerant/properties';
import type { Climate } from '../energy/climate-model';
import type { EnergyResult } from '../energy/energy-result';
import { causeChances } from '../energy/recovery';
import { yearlyEnergy } from '../energy/yearly-energy';
import type { Visit } from '../visit/visit';

/** What the readings say, and what a year of it costs. */
export type LineOfVisit = { readonly findings: Findings; readonly energy: EnergyResult };

/**
 * From readings to yearly cost, without money over the years.
 *
 * @param visit    a checked visit
 * @param climate  the climate of its site, already loaded
 * Check: tests/appraise/appraise-repair.test.ts
 */
export function lineOfVisit(visit: Visit, climate: Climate): LineOfVisit {
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
    runs: findings.runs,
    ...(findings.lossByRun === undefined ? {} : { lossByRun: findings.lossByRun }),
  });
  return { findings, energy };
}
