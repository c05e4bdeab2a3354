import type { CauseId } from '../../visit/cause';
import type { Mode } from '../../visit/run';
import type { Visit } from '../../visit/visit';
import type { Saying } from '../../visit/wording';
import { severityScale } from '../fault-effects/severity';
import type { CauseFinding, CausesFound, CauseVerdict, Standing } from '../findings';
import { type ComparedRun, compareRuns } from './compare-runs';
import confirmation from './data/confirmation.json';
import discriminators from './data/discriminators.json';
import { evidenceOfCause } from './evidence-of-cause';
import type { FeatureId, SeverityWord } from './feature';
import { hypothesesOf, possibleCauses } from './hypotheses';
import type { EvidenceRun } from './likelihood';
import { conflictsOf, nextReadings } from './next-reading';
import { type Posterior, posteriorOf, type RunLikelihood, ranked, runLikelihood } from './posterior';

/** A run with its evidence, as the causes need it. */
export type CauseRun = ComparedRun & { readonly evidence: EvidenceRun };

/** Causes, and the chances behind them for the loss. */
export type CausesOfVisit = {
  readonly found: CausesFound;
  /** Chances for the unit as found. */
  readonly asFound: Posterior;
  /** By the readings that counted, before what is said of those in conflict. */
  readonly asFoundVerdict: CauseVerdict;
  /** Chances from each run alone, in the order of the runs. */
  readonly byRun: readonly { readonly posterior: Posterior; readonly verdict: CauseVerdict }[];
};

/** Features that tell about the refrigerant circuit and the air over it; fewer than this say too little. */
const TELLING: ReadonlySet<FeatureId> = new Set([
  'evaporating',
  'condensing',
  'superheat',
  'subcooling',
  'discharge',
  'power',
  'airDifference',
  'airflow',
  'efficiency',
]);
const LEAST_TELLING = 3;
const FOUND = 0.5;
/** From few readings, or beside readings in conflict. */
const FOUND_IN_DOUBT = 0.7;
const LEAST_SHOWN = 0.01;
/** A cause first shown and now below this is gone. */
const GONE = 0.35;

/**
 * Why the unit runs as it does: each cause with its chance, severity, the readings for and against, what it is
 * confused with, and the next reading worth taking.
 *
 * @param visit  unit and observations
 * @param runs   runs with their evidence, in order
 * @returns the first telling run of each mode speaks for the unit as found; later ones are told by themselves, compared
 * with it, and a cause they no longer show is called resolved
 * Check: tests/diagnostics/causes/causes-of-visit.test.ts
 */
export function causesOfVisit(visit: Visit, runs: readonly CauseRun[]): CausesOfVisit {
  const hypotheses = hypothesesOf(visit);
  const likelihoods = runs.map((run) => runLikelihood(hypotheses, run.evidence));
  const first = firstOfEachMode(runs);
  const asFound = posteriorOf(
    hypotheses,
    first.map((i) => likelihoods[i]).filter((l): l is RunLikelihood => l !== undefined),
  );
  const counted = first.flatMap((i) => runs[i] ?? []);
  const asFoundVerdict = verdictOf(asFound, counted);
  const byRun = runs.map((run, i) => {
    const own = likelihoods[i];
    const posterior = posteriorOf(hypotheses, own === undefined ? [] : [own]);
    return { posterior, verdict: verdictOf(posterior, [run]) };
  });
  const evidence = counted.map((run) => run.evidence);
  const verdict = told(asFoundVerdict, evidence);
  const found: CausesFound = {
    verdict,
    noFaultProbability: asFound.chances.get('none') ?? 0,
    causes: asFoundVerdict === 'tooFewReadings' ? [] : causeFindings(visit, counted, asFound),
    nextReadings: nextReadings({
      posterior: asFound,
      runs: evidence,
      mode: nextMode(visit, counted),
      metering: visit.unit.metering,
      isHeatPump: visit.unit.kind === 'heatPump',
      possible: possibleCauses(visit),
      hasProperties: visit.unit.refrigerant !== undefined,
    }),
    byRun: runs.map((run, i) => ({
      runId: run.evidence.runId,
      verdict: told(byRun[i]?.verdict ?? 'tooFewReadings', [run.evidence]),
      top: topOf(byRun[i]?.posterior, 3),
    })),
    resolved: resolvedCauses(runs, byRun),
    comparisons: comparisons(runs),
    notes: notesOf(visit, evidence, verdict),
    ...(verdict === 'noFaultFound' && counted.some(isOffTarget) ? { isOffTarget: true } : {}),
  };
  return { found, asFound, asFoundVerdict, byRun };
}

function isOffTarget({ targets }: CauseRun): boolean {
  return targets.some(({ verdict }) => verdict === 'above' || verdict === 'below');
}

function firstOfEachMode(runs: readonly CauseRun[]): readonly number[] {
  // the order of modes must not matter
  return (['cooling', 'heating'] as const)
    .map((mode) => runs.findIndex(({ evidence }) => evidence.mode === mode && evidence.features.length > 0))
    .filter((i) => i >= 0);
}

function verdictOf(posterior: Posterior, runs: readonly CauseRun[]): CauseVerdict {
  const telling = new Set(
    runs.flatMap((run) => run.evidence.features.map(({ id }) => id).filter((id) => TELLING.has(id))),
  );
  const top = ranked(posterior).find(({ cause }) => cause !== 'none');
  const enough = telling.size >= LEAST_TELLING;
  const isSure = enough && conflictsOf(runs.map((run) => run.evidence)).length === 0;
  if (top !== undefined && top.chance >= (isSure ? FOUND : FOUND_IN_DOUBT) && runs.length > 0) return 'found';
  if (!enough) return 'tooFewReadings';
  return (posterior.chances.get('none') ?? 0) >= FOUND ? 'noFaultFound' : 'unclear';
}

/** Readings in conflict never say that all is well, nor that too little was read: they are to be read again. */
function told(verdict: CauseVerdict, runs: readonly EvidenceRun[]): CauseVerdict {
  return verdict !== 'found' && conflictsOf(runs).length > 0 ? 'unclear' : verdict;
}

function topOf(
  posterior: Posterior | undefined,
  count: number,
): readonly { readonly cause: CauseId; readonly probability: number }[] {
  if (posterior === undefined) return [];
  return ranked(posterior)
    .slice(0, count)
    .map(({ cause, chance }) => ({ cause, probability: chance }));
}

function causeFindings(
  visit: Visit,
  runs: readonly CauseRun[],
  posterior: Posterior,
): readonly CauseFinding[] {
  const evidence = runs.map((run) => run.evidence);
  const shown = ranked(posterior).filter(({ cause, chance }) => cause !== 'none' && chance >= LEAST_SHOWN);
  return shown.map(({ cause, chance }) => {
    const severity = severityIn(posterior, cause);
    return {
      cause,
      probability: chance,
      standing: standingOf(cause, chance, evidence),
      severity,
      ...evidenceOfCause(cause, severity.word, evidence, visit),
      confusedWith: confusions(cause, chance, shown),
      hints: hintsOf(cause, evidence),
    };
  });
}

function severityIn(posterior: Posterior, cause: CauseId): { word: SeverityWord; level: number } {
  const byWord = new Map<SeverityWord, number>();
  for (const { hypothesis, chance } of posterior.weighed) {
    const part = hypothesis.parts.find((p) => p.cause === cause);
    if (part !== undefined) byWord.set(part.severity, (byWord.get(part.severity) ?? 0) + chance);
  }
  const scale = severityScale(cause);
  let total = 0;
  let level = 0;
  let best: SeverityWord = 'moderate';
  for (const [word, chance] of byWord) {
    total += chance;
    level += chance * scale[word];
    if (chance > (byWord.get(best) ?? 0)) best = word;
  }
  return { word: best, level: total > 0 ? level / total : 0 };
}

type ConfirmationRow = {
  readonly all: readonly string[];
  readonly any?: readonly string[];
  readonly never?: boolean;
};

/** Confirmed only when the readings that set it apart from its look-alikes were taken. */
function standingOf(cause: CauseId, chance: number, runs: readonly EvidenceRun[]): Standing {
  if (chance < 0.1) return 'unlikely';
  if (chance < 0.3) return 'possible';
  if (chance < 0.6) return 'suspected';
  const rows: Partial<Record<string, ConfirmationRow>> = confirmation.causes;
  const row = rows[cause];
  const read = new Set<string>(runs.flatMap((run) => run.features.map((feature) => feature.id)));
  const apart =
    row !== undefined &&
    row.never !== true &&
    row.all.every((id) => read.has(id)) &&
    (row.any === undefined || row.any.some((id) => read.has(id)));
  return chance >= 0.9 && apart ? 'confirmed' : 'likely';
}

/** Other causes of comparable chance that a named test separates. */
function confusions(
  cause: CauseId,
  chance: number,
  shown: readonly { readonly cause: CauseId; readonly chance: number }[],
): readonly { readonly cause: CauseId; readonly separate: Saying }[] {
  return shown
    .filter((other) => other.cause !== cause && other.chance >= 0.1 && chance >= 0.1)
    .flatMap((other) => {
      const row = discriminators.rows.find((r) => r.causes.includes(cause) && r.causes.includes(other.cause));
      return row === undefined ? [] : [{ cause: other.cause, separate: { code: row.id } }];
    });
}

/** Low airflow with high static is a blockage, with low static a weak blower. */
function hintsOf(cause: CauseId, runs: readonly EvidenceRun[]): readonly Saying[] {
  if (cause !== 'lowIndoorAirflow') return [];
  const pressure = runs.flatMap((run) => run.features.filter(({ id }) => id === 'static')).at(-1);
  if (pressure === undefined) return [];
  const sigmas = pressure.residual / pressure.sd;
  if (sigmas > 1.2) return [{ code: 'blockage' }];
  return sigmas < -1.2 ? [{ code: 'weakBlower' }] : [];
}

function resolvedCauses(
  runs: readonly CauseRun[],
  byRun: readonly { readonly posterior: Posterior }[],
): CausesFound['resolved'] {
  return runs.flatMap((run, i) => {
    const laterIndex = runs.findLastIndex((r) => r.evidence.mode === run.evidence.mode);
    const later = runs[laterIndex];
    if (later === undefined || laterIndex <= i) return [];
    return ranked(byRun[i]?.posterior ?? { weighed: [], chances: new Map() })
      .filter(({ cause, chance }) => cause !== 'none' && chance >= FOUND)
      .filter(({ cause }) => (byRun[laterIndex]?.posterior.chances.get(cause) ?? 0) < GONE)
      .map(({ cause }) => ({ cause, fromRunId: run.evidence.runId, toRunId: later.evidence.runId }));
  });
}

function comparisons(runs: readonly CauseRun[]): CausesFound['comparisons'] {
  return (['cooling', 'heating'] as const).flatMap((mode) => {
    const ofMode = runs.filter((run) => run.evidence.mode === mode);
    return ofMode.slice(1).map((after, i) => compareRuns(ofMode[i] ?? after, after));
  });
}

function nextMode(visit: Visit, runs: readonly CauseRun[]): Mode {
  return runs.at(-1)?.evidence.mode ?? (visit.unit.kind === 'heatPump' ? 'heating' : 'cooling');
}

function notesOf(visit: Visit, runs: readonly EvidenceRun[], verdict: CauseVerdict): readonly Saying[] {
  const code = verdict === 'unclear' ? 'unclearByConflict' : 'conflictLeftOut';
  const notes: Saying[] = conflictsOf(runs).map((flag) => ({
    code,
    values: { readings: flag.readings.join(', ') },
  }));
  if (verdict === 'tooFewReadings') notes.push({ code: 'tooFewReadings' });
  if (visit.unit.metering === undefined && runs.length > 0) notes.push({ code: 'meteringWeighedBoth' });
  return notes;
}
