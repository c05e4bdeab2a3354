import type { Visit } from '@/lib/visit/visit';

/** The least a visit can be: everything else is missing on purpose. */
export function bareVisit(over: Partial<Visit> = {}): Visit {
  return {
    schemaVersion: 1,
    id: 'bare',
    visitDate: '2026-11-03',
    site: {},
    unit: { kind: 'heatPump', nominalTons: 3 },
    runs: [],
    observations: [],
    assumptions: [],
    choices: [],
    ...over,
  };
}
