import type { CauseId } from '../../visit/cause';
import type { Mode } from '../../visit/run';
import type { MeteringDevice } from '../../visit/unit';
import quadratic from './data/airflow-quadratic.json';
import laboratory from './data/charge-laboratory.json';
import fanMotor from './data/fan-motor.json';
import impact from './data/fault-impact.json';
import unpublished from './data/unpublished.json';

/** How good the ground under an effect is. */
export type Evidence = 'laboratory' | 'simulation' | 'assumption';

export type EffectSource = {
  readonly evidence: Evidence;
  readonly source: string;
  readonly status: string;
};

type Table = { readonly source: string; readonly status: string };

/**
 * Where the effect of a cause comes from.
 *
 * @returns `laboratory`: fitted to measurements; `simulation`: fitted to tuned cycle models; `assumption`: nothing is
 * published for this cause and mode, so a table is borrowed or the estimate is our own
 * Check: tests/diagnostics/fault-effects/fault-effect.test.ts
 */
export function effectSource(cause: CauseId, mode: Mode, metering: MeteringDevice | undefined): EffectSource {
  const cooling = mode === 'cooling';
  switch (cause) {
    case 'none':
    case 'supplementaryHeatFault':
      return from('assumption', unpublished.none);
    case 'lowCharge':
      return !cooling || metering === 'txv'
        ? from('laboratory', laboratory)
        : from('simulation', ...(metering === undefined ? [laboratory, impact] : [impact]));
    case 'overcharge':
      return !cooling || metering === 'txv'
        ? from('laboratory', laboratory)
        : from('simulation', laboratory, impact);
    case 'lowIndoorAirflow':
      return from('simulation', ...(cooling ? [quadratic, impact] : [quadratic]));
    case 'outdoorCoilFouled':
      return cooling
        ? from('simulation', impact)
        : from('assumption', unpublished.outdoorCoilHeating, quadratic, impact);
    case 'liquidLineRestriction':
    case 'nonCondensables':
      return from(cooling ? 'simulation' : 'assumption', impact);
    case 'meteringRestriction':
      return from('assumption', impact);
    case 'compressorValvesLeaking':
    case 'reversingValveLeaking':
      return from('assumption', unpublished.leak);
    case 'runCapacitorWeak':
      return from('assumption', unpublished.capacitor, fanMotor);
  }
}

function from(evidence: Evidence, ...tables: readonly Table[]): EffectSource {
  return {
    evidence,
    source: tables.map((table) => table.source).join('; '),
    status:
      evidence === 'assumption' ? 'assumption' : [...new Set(tables.map((table) => table.status))].join('; '),
  };
}
