import type { Findings } from '../diagnostics/findings';
import type { EnergyResult } from '../energy/energy-result';
import type { Comparison } from '../finance/comparison';
import type { ResolvedAssumption } from '../visit/assumption';
import type { Visit } from '../visit/visit';

/** Everything the line from readings to money found for one visit; JSON-serialisable. */
export type Appraisal = {
  readonly modelVersion: string;
  readonly visit: Visit;
  readonly findings: Findings;
  readonly energy: EnergyResult;
  readonly comparison: Comparison;
  /** Everything assumed, with range and source. */
  readonly assumptions: readonly ResolvedAssumption[];
};
