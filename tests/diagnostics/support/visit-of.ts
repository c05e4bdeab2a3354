import { type HealthyUnit, healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import { type RunContext, runContext } from '@/lib/diagnostics/run-context';
import type { Run } from '@/lib/visit/run';
import type { Unit } from '@/lib/visit/unit';
import type { Visit } from '@/lib/visit/visit';

export type RunPart = Partial<Run> & Pick<Run, 'mode'>;

/** An invented visit around the runs of a test; everything else at its plainest. */
export function visitOf(
  runs: readonly RunPart[],
  unit: Partial<Unit> = {},
  rest: Partial<Visit> = {},
): Visit {
  return {
    schemaVersion: 1,
    id: 'test',
    invented: true,
    visitDate: '2026-07-01',
    site: { altitudeFt: 0 },
    unit: {
      kind: 'heatPump',
      nominalTons: 3,
      refrigerant: 'R-410A',
      metering: 'txv',
      manufactureYear: 2016,
      ...unit,
    },
    runs: runs.map((run, i) => ({ id: `run-${i + 1}`, ...run })),
    observations: [],
    assumptions: [],
    choices: [],
    ...rest,
  };
}

/** Healthy unit of a visit, as the appraisal makes it. */
export function healthyOf(visit: Visit): HealthyUnit {
  return healthyUnit({ unit: visit.unit, visitDate: visit.visitDate });
}

/** Context of a visit's run. */
export function contextOf(visit: Visit, index = 0): RunContext {
  const run = visit.runs[index];
  if (run === undefined) throw new Error(`no run ${index}`);
  const { refrigerant } = visit.unit;
  return runContext({
    visit,
    run,
    healthy: healthyOf(visit),
    properties: refrigerant === undefined ? undefined : refrigerantProperties(refrigerant),
  });
}

/** Context of a single run. */
export function contextOfRun(run: RunPart, unit: Partial<Unit> = {}, rest: Partial<Visit> = {}): RunContext {
  return contextOf(visitOf([run], unit, rest));
}

/** The same for a unit whose refrigerant nobody knows. */
export function contextOfUnknownRefrigerant(run: RunPart, unit: Partial<Unit> = {}): RunContext {
  const visit = visitOf([run], unit);
  const { refrigerant: _unknown, ...rest } = visit.unit;
  return contextOf({ ...visit, unit: rest });
}
