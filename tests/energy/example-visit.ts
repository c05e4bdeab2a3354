import type { Findings, Loss } from '@/lib/diagnostics/findings';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import { climateFor } from '@/lib/energy/climate';
import type { Climate } from '@/lib/energy/climate-model';
import { yearlyEnergy } from '@/lib/energy/yearly-energy';
import type { Estimate } from '@/lib/math/estimate';
import type { Choice } from '@/lib/visit/choice';
import type { Mode } from '@/lib/visit/run';
import type { Visit } from '@/lib/visit/visit';

/** Invented visit: an old 3-ton heat pump in Atlanta, everything else left out. */
export function exampleVisit(change: Partial<Visit> = {}): Visit {
  return {
    schemaVersion: 1,
    id: 'invented',
    invented: true,
    visitDate: '2026-11-01',
    site: { climate: { kind: 'city', city: 'atlanta-ga' } },
    unit: { kind: 'heatPump', nominalTons: 3, manufactureYear: 1998, electricHeatKw: 15, blower: 'psc' },
    runs: [],
    observations: [],
    assumptions: [],
    tariff: { kind: 'flat', energyUsdPerKwh: 0.15 },
    choices: [],
    ...change,
  };
}

export const leave: Choice = { kind: 'leave', id: 'leave', name: 'Leave it', priceLines: [] };

export function lossOf(mode: Mode, capacity: Estimate, power: Estimate): Loss {
  return {
    mode,
    capacityRatioToHealthy: capacity,
    powerRatioToHealthy: power,
    lnCapacity: { mean: Math.log(capacity.likely), sd: 0.05 },
    lnPower: { mean: Math.log(power.likely), sd: 0.05 },
    routes: [],
    basis: 'measured',
    notes: [],
  };
}

const band = (low: number, likely: number, high: number): Estimate => ({ low, likely, high });

export const exampleLoss: Findings['loss'] = {
  cooling: lossOf('cooling', band(0.8, 0.85, 0.9), band(0.97, 1.02, 1.07)),
  heating: lossOf('heating', band(0.7, 0.75, 0.8), band(0.95, 1, 1.05)),
};

export function energyOf(visit: Visit, loss: Findings['loss'] = exampleLoss, climate?: Climate) {
  const healthy = healthyUnit({
    unit: visit.unit,
    visitDate: visit.visitDate,
    assumptions: visit.assumptions,
    ...(visit.site.stateCode === undefined ? {} : { stateCode: visit.site.stateCode }),
  });
  return yearlyEnergy({ visit, healthy, loss, climate: climate ?? climateFor(visit.site.climate) });
}

export function scenarioNamed(result: ReturnType<typeof yearlyEnergy>, id: string) {
  const found = result.scenarios.find((s) => s.id === id);
  if (found === undefined) throw new Error(`no scenario ${id}`);
  return found;
}
