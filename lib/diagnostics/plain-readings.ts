import type { Saying } from '../visit/wording';
import type { Flag, Target } from './findings';

/** Targets worth a plain sentence for the homeowner, in the order of what matters to them. */
const TOLD: readonly string[] = [
  'dischargeLineF',
  'refrigerantCapacityBtuh',
  'totalCapacityBtuh',
  'airflowCfmPerTon',
  'airSplitFd',
  'airRiseFd',
  'outdoorUnitW',
  'suctionSuperheatFd',
  'liquidSubcoolingFd',
  'condensingOverOutdoorFd',
  'condensingOverReturnFd',
  'dischargePsig',
  'suctionPsig',
  'evaporatingBelowReturnFd',
  'evaporatingBelowOutdoorFd',
  'isentropicEfficiencyFrac',
  'compressionRatio',
  'compressorAmpsToRatedFrac',
  'compressorA',
  'drierDropFd',
  'totalExternalStaticInWc',
  'filterDropInWc',
  'coilDropInWc',
  'compressorCapacitorDeviationFrac',
  'fanCapacitorDeviationFrac',
  'stripAmpsRatio',
  'voltageDeviationFrac',
];

/**
 * Plain one-line readings of a run for the homeowner ("The compressor is running hotter than it should").
 *
 * @param targets  judged targets of the run
 * @param flags    flags of the run: with conflicting readings nothing is told about them
 * @returns sayings `homeowner.<id>.<verdict>`; a run with everything within target says just that
 * Check: tests/diagnostics/plain-readings.test.ts
 */
export function plainReadings(targets: readonly Target[], flags: readonly Flag[]): readonly Saying[] {
  const judged = targets.filter((target) => target.verdict !== undefined);
  if (judged.length === 0) return [];
  if (flags.some((flag) => flag.severity === 'conflict')) return [{ code: 'homeowner.conflict' }];
  const told = TOLD.flatMap((id) =>
    judged.filter((target) => target.id === id && target.verdict !== 'within'),
  );
  if (told.length === 0) return [{ code: 'homeowner.allWithin' }];
  return told.flatMap((target) => plainReading(target) ?? []);
}

/**
 * Plain one-line reading of one target.
 *
 * @returns `homeowner.<id>.<verdict>`; undefined when it is within, or not judged
 * Check: tests/diagnostics/plain-readings.test.ts
 */
export function plainReading({ id, verdict }: Target): Saying | undefined {
  return verdict === 'above' || verdict === 'below' ? { code: `homeowner.${id}.${verdict}` } : undefined;
}
