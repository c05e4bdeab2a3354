import { diagnose } from '../lib/diagnostics/diagnose';
import { healthyUnit } from '../lib/diagnostics/healthy-unit/healthy-unit';
import { refrigerantProperties } from '../lib/diagnostics/refrigerant/properties';
import { climateFor } from '../lib/energy/climate';
import type { Climate } from '../lib/energy/climate-model';
import { type YearlyEnergyInput, yearlyEnergy } from '../lib/energy/yearly-energy';
import { demoVisits } from './bench-appraisal';
import { durationText, timeCalls } from './bench-timing';

const WARM_UP = 30;

/** What the energy stage gets of a demo visit. */
function inputOf(visit: YearlyEnergyInput['visit']): YearlyEnergyInput {
  const { unit, visitDate, assumptions, site } = visit;
  const healthy = healthyUnit({
    unit,
    visitDate,
    assumptions,
    ...(site.stateCode === undefined ? {} : { stateCode: site.stateCode }),
  });
  const properties = unit.refrigerant === undefined ? undefined : refrigerantProperties(unit.refrigerant);
  const findings = diagnose({ visit, healthy, properties });
  return {
    visit,
    healthy,
    loss: findings.loss,
    runs: findings.runs,
    climate: climateFor(site.climate, site.stateCode),
    ...(findings.lossByRun === undefined ? {} : { lossByRun: findings.lossByRun }),
  };
}

/** The least a year could cost: every hour of the same 12 x 24 x bins read, multiplied and added once. */
function bareLoop(climate: Climate): number {
  const { hours, binF } = climate;
  let sum = 0;
  for (let i = 0; i < hours.length; i += 1) sum += (hours[i] ?? 0) * (binF[i % binF.length] ?? 0);
  return sum;
}

/** Rows: visit, years asked for, whole energy stage, one year, bare loop over its bins, stage over loop. */
export function benchEnergy(folder: string): string[][] {
  return demoVisits(folder).map(({ name, visit }) => {
    const input = inputOf(visit);
    const scenarios = yearlyEnergy(input).scenarios.length;
    // the first visit would else be timed before the engine knows the code
    for (let i = 0; i < WARM_UP; i++) yearlyEnergy(input);
    const stage = timeCalls(
      (i) => yearlyEnergy(input).scenarios[i % scenarios]?.likely.costUsd ?? Number.NaN,
    );
    const loop = timeCalls(() => bareLoop(input.climate));
    return [
      name,
      String(scenarios),
      durationText(stage.nsPerCall),
      durationText(loop.nsPerCall),
      `${(stage.nsPerCall / loop.nsPerCall).toFixed(0)} x`,
    ];
  });
}
