import { diagnose } from '../diagnostics/diagnose';
import type { Findings } from '../diagnostics/findings';
import { healthyUnit } from '../diagnostics/healthy-unit/healthy-unit';
import type { HealthyUnit } from '../diagnostics/healthy-unit/healthy-unit-model';
import { refrigerantProperties } from '../diagnostics/refrigerant/properties';
import type { Climate } from '../energy/climate-model';
import type { EnergyResult } from '../energy/energy-result';
import { causeChances } from '../energy/recovery';
import { type YearlyEnergyInput, yearlyEnergy } from '../energy/yearly-energy';
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
  const healthy = healthyOf(visit);
  const { refrigerant } = visit.unit;
  const properties = refrigerant === undefined ? undefined : refrigerantProperties(refrigerant);
  const findings = diagnose({ visit, healthy, properties });
  return { findings, energy: yearlyEnergy(energyInput(visit, findings, climate)) };
}

/**
 * What the year is worked out from.
 *
 * @param findings  of the same visit
 * Check: tests/appraise/simulate-visit.test.ts
 */
export function energyInput(visit: Visit, findings: Findings, climate: Climate): YearlyEnergyInput {
  return {
    visit,
    healthy: healthyOf(visit),
    loss: findings.loss,
    chances: causeChances(findings),
    climate,
    runs: findings.runs,
    ...(findings.lossByRun === undefined ? {} : { lossByRun: findings.lossByRun }),
  };
}

function healthyOf({ unit, site, assumptions, visitDate }: Visit): HealthyUnit {
  return healthyUnit({
    unit,
    visitDate,
    assumptions,
    ...(site.stateCode === undefined ? {} : { stateCode: site.stateCode }),
  });
}
