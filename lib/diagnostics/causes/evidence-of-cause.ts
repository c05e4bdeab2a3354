import type { CauseId } from '../../visit/cause';
import type { Visit } from '../../visit/visit';
import type { CauseEvidence } from '../findings';
import type { SeverityWord } from './feature';
import { observationRatio } from './hypotheses';
import { devicesOf, type EvidenceRun, lnFeature, logSum } from './likelihood';
import { patternsOf, shiftBy } from './pattern';

/** Weaker evidence is noise. */
const LEAST_WEIGHT = 0.25;

export type ForAndAgainst = {
  readonly speaksFor: readonly CauseEvidence[];
  readonly speaksAgainst: readonly CauseEvidence[];
};

/**
 * What speaks for and against a cause: each reading and observation by how far it moves the odds of the cause against
 * nothing wrong.
 *
 * @param cause     cause; not `none`
 * @param severity  the severity it most likely has
 * @param runs      evidence of the runs that count
 * @param visit     observations
 * @returns strongest first; next to nothing is left out
 * Check: tests/diagnostics/causes/evidence-of-cause.test.ts
 */
export function evidenceOfCause(
  cause: CauseId,
  severity: SeverityWord,
  runs: readonly EvidenceRun[],
  visit: Visit,
): ForAndAgainst {
  const readings = runs.flatMap((run) =>
    run.features.map((feature): CauseEvidence => {
      const weight = lnOdds(cause, severity, run, feature);
      return {
        kind: 'reading',
        id: feature.readingId,
        runId: run.runId,
        weight,
        sigmas: feature.residual / feature.sd,
      };
    }),
  );
  const seen = visit.observations.map(
    (observation): CauseEvidence => ({
      kind: 'observation',
      id: observation.id,
      weight: Math.log(observationRatio(cause, observation)),
    }),
  );
  const all = [...readings, ...seen].filter(({ weight }) => Math.abs(weight) >= LEAST_WEIGHT);
  return {
    speaksFor: all.filter(({ weight }) => weight > 0).sort((a, b) => b.weight - a.weight),
    speaksAgainst: all.filter(({ weight }) => weight < 0).sort((a, b) => a.weight - b.weight),
  };
}

function lnOdds(
  cause: CauseId,
  severity: SeverityWord,
  run: EvidenceRun,
  feature: EvidenceRun['features'][number],
): number {
  const patterns = devicesOf(run).flatMap((metering) => patternsOf(cause, run.mode, metering));
  if (patterns.length === 0) return 0;
  const withCause = patterns.map((pattern) => {
    const { mean, spread } = shiftBy(pattern, severity, feature.id);
    return lnFeature(feature, mean, spread * spread);
  });
  return logSum(withCause) - Math.log(patterns.length) - lnFeature(feature, 0, 0);
}
