import type { Findings } from '../diagnostics/findings';
import type { HealthyUnit, UnitFact } from '../diagnostics/healthy-unit/healthy-unit-model';
import type { Visit } from '../visit/visit';
import defaults from './data/load-defaults.json';

/**
 * The healthy unit as this house runs it: blower power from what was read, cut-out and electric heat as recorded.
 *
 * @param visit    cut-out and stages of the electric heat are used
 * @param healthy  from its ratings
 * @param runs     what was derived from the readings; the first run that tells something about the blower counts
 * @returns the unit with its facts brought up to date
 * Blower: watts read (or volts x amps) win; else airflow and, for an ECM motor, static pressure on its usual watts per
 * cfm; else as it was.
 * Source: data/load-defaults.json `blowerStatic`, status assumption
 * Check: tests/energy/installed-unit.test.ts
 */
export function installedUnit(visit: Visit, healthy: HealthyUnit, runs: Findings['runs'] = []): HealthyUnit {
  const { cutOutF, electricHeatStages, electricHeatKw } = visit.unit;
  const blower = blowerOf(healthy, runs);
  const stagesKw = electricHeatStages?.reduce((sum, stage) => sum + stage.sizeKw, 0);
  const stripKw = electricHeatKw ?? stagesKw;
  const recorded = { basis: 'nameplate', source: 'Recorded at the visit', status: 'read' } as const;
  const facts: UnitFact[] = [
    ...(blower === undefined ? [] : [blower.fact]),
    ...(cutOutF === undefined || healthy.heating === undefined
      ? []
      : [{ name: 'cutOutF', value: cutOutF, unit: 'F', ...recorded }]),
    ...(stripKw === undefined ? [] : [{ name: 'stripKw', value: stripKw, unit: 'kW', ...recorded }]),
  ];
  if (facts.length === 0) return healthy;
  const told = new Set(facts.map((fact) => fact.name));
  const replaced = blower === undefined ? 'none' : 'blowerWPerCfm';
  return {
    ...healthy,
    ...(blower === undefined ? {} : { blowerW: blower.w }),
    ...(cutOutF === undefined ? {} : { cutOutF }),
    ...(stripKw === undefined ? {} : { stripKw }),
    facts: [...healthy.facts.filter((f) => !told.has(f.name) && f.name !== replaced), ...facts],
    notes: stripKw === undefined ? healthy.notes : healthy.notes.filter((n) => n.code !== 'stripKwAssumed'),
  };
}

function blowerOf(
  healthy: HealthyUnit,
  runs: Findings['runs'],
): { readonly w: number; readonly fact: UnitFact } | undefined {
  for (const { derived } of runs) {
    const value = (id: string): number | undefined => derived.find((d) => d.id === id)?.value;
    const watts = value('blowerW');
    if (watts !== undefined) return { w: watts, fact: fact(watts, 'Blower power read at the visit') };
    const cfm = value('airflowCfm');
    if (cfm !== undefined) {
      const w =
        (healthy.blowerW / healthy.airflowCfm) * cfm * staticRatio(healthy, value('totalExternalStaticInWc'));
      return { w, fact: fact(w, `Airflow read at the visit; ${defaults.blowerStatic.source}`) };
    }
  }
  return undefined;
}

function fact(w: number, source: string): UnitFact {
  return { name: 'blowerW', value: Math.round(w), unit: 'W', basis: 'measured', source, status: 'read' };
}

/** Watts per cfm against those at the usual static pressure; 1 for a PSC motor or without a reading. */
function staticRatio(healthy: HealthyUnit, staticInWc: number | undefined): number {
  if (healthy.blower === 'psc' || staticInWc === undefined) return 1;
  const { ratedInWc, internalInWc, leastRatio, mostRatio } = defaults.blowerStatic;
  const ratio = (staticInWc + internalInWc) / (ratedInWc + internalInWc);
  return Math.min(mostRatio, Math.max(leastRatio, ratio));
}
