import type { CauseId } from '../../visit/cause';
import type { Mode } from '../../visit/run';
import type { MeteringDevice } from '../../visit/unit';
import type { Visit } from '../../visit/visit';
import type { Saying } from '../../visit/wording';
import patterns from '../causes/data/patterns.json';
import priors from '../causes/data/priors.json';
import { hypothesesOf } from '../causes/hypotheses';
import { posteriorOf } from '../causes/posterior';
import { severityScale } from '../fault-effects/severity';
import type { CauseEvidence, CauseFinding, Findings, NextReading } from '../findings';
import data from './data/strength.json';
import { isClearLoss } from './explain-loss';
import { type Strength, strengthOf } from './strength';

/** A reading as it was weighed: what was read, what a healthy unit would show, and how far off. */
export type EvidenceReading = {
  readonly value: number;
  readonly unit: string;
  readonly expected: number;
  /** Range of the published target, where one rules here. */
  readonly low?: number;
  readonly high?: number;
  /** Distance to the expected value, never negative: in the unit, or as a share where the unit is power or heat. */
  readonly off: number;
  readonly offIsShare: boolean;
  readonly side: 'above' | 'below' | 'near';
};

/** One piece of evidence, ready to be told. */
export type EvidenceExplained = Pick<CauseEvidence, 'kind' | 'id' | 'runId'> & {
  readonly strength: Strength;
  readonly reading?: EvidenceReading;
};

/** A cause with everything behind its chance. */
export type CauseExplained = {
  readonly finding: CauseFinding;
  /** Chance before any reading or observation, among everything this unit can have. */
  readonly priorFrac: number;
  readonly priorSource: string;
  readonly priorStatus: string;
  readonly speaksFor: readonly EvidenceExplained[];
  readonly speaksAgainst: readonly EvidenceExplained[];
  /** Where the pattern of this cause is printed, for the modes that were read. */
  readonly patterns: readonly {
    readonly mode: Mode;
    readonly source: string;
    readonly status: string;
    readonly note?: string;
  }[];
  /** What the level of the severity counts; words under `effect.<code>`. */
  readonly severityMeaning: Saying;
  /** Only of a clear loss. */
  readonly lossShares: readonly { readonly mode: Mode; readonly shareFrac: number }[];
  /** `main` leads; `besides` may be at work as well or instead; `slight` is named only. */
  readonly rank: 'main' | 'besides' | 'slight';
};

/** A further reading with whether it could change what is found. */
export type NextExplained = {
  readonly next: NextReading;
  readonly movesFinding: boolean;
  /** For each outcome in order: the question would stay open. */
  readonly leavesOpen: readonly boolean[];
};

export type CausesExplained = {
  readonly causes: readonly CauseExplained[];
  readonly next: readonly NextExplained[];
};

/**
 * Opens the causes of a visit to their inputs: prior, each reading with its healthy value and distance, strength of
 * each piece of evidence, source of the pattern, and the share of the loss.
 *
 * @param visit     visit the findings belong to
 * @param findings  what the readings say
 * @returns causes in their own order; nothing when the causes were not weighed or the readings were too few
 * Source: causes/data, status beside each
 * Check: tests/diagnostics/explain/explain-causes.test.ts
 */
export function explainCauses(visit: Visit, findings: Findings): CausesExplained {
  const { causes } = findings;
  if (causes === undefined) return { causes: [], next: [] };
  const before = posteriorOf(hypothesesOf({ ...visit, observations: [] }), []).chances;
  const modes = new Set(countedRuns(findings).map((run) => run.mode));
  return {
    causes: causes.causes.map((finding, i) => ({
      finding,
      priorFrac: before.get(finding.cause) ?? 0,
      priorSource: priors.causes[finding.cause].source,
      priorStatus: priors.causes[finding.cause].status,
      speaksFor: finding.speaksFor.map((evidence) => explained(evidence, findings)),
      speaksAgainst: finding.speaksAgainst.map((evidence) => explained(evidence, findings)),
      patterns: patternsBehind(finding.cause, [...modes], visit.unit.metering),
      severityMeaning: effectSaying(severityScale(finding.cause).meaning),
      lossShares: lossShares(finding.cause, findings),
      rank: rankOf(finding, i, causes.verdict === 'found'),
    })),
    next: causes.nextReadings.map((next) => ({
      next,
      movesFinding: movesFinding(next),
      leavesOpen: next.outcomes.map(({ probability }) => probability < data.openFrac.value),
    })),
  };
}

/** First run of each mode: the unit as found. */
function countedRuns({ runs }: Findings): Findings['runs'] {
  return runs.filter((run) => runs.find((other) => other.mode === run.mode) === run);
}

function rankOf(finding: CauseFinding, place: number, found: boolean): CauseExplained['rank'] {
  if (place === 0 && found) return 'main';
  return finding.probability >= data.besidesFrac.value ? 'besides' : 'slight';
}

function explained(evidence: CauseEvidence, findings: Findings): EvidenceExplained {
  const { kind, id, runId, weight } = evidence;
  const reading = kind === 'reading' ? readingBehind(id, runId, findings) : undefined;
  return {
    kind,
    id,
    ...(runId === undefined ? {} : { runId }),
    strength: strengthOf(weight),
    ...(reading === undefined ? {} : { reading }),
  };
}

/** Units told by their share rather than their difference. */
const BY_SHARE: ReadonlySet<string> = new Set(['W', 'Btu/h']);

/** Units printed without decimals. */
const IN_WHOLES: ReadonlySet<string> = new Set(['F', 'Fd', 'cfm', 'cfm/ton']);

function readingBehind(
  id: string,
  runId: string | undefined,
  findings: Findings,
): EvidenceReading | undefined {
  const run = findings.runs.find((r) => r.runId === runId);
  const weighed = run?.weighed?.find((w) => w.id === id);
  if (run === undefined || weighed === undefined) return undefined;
  const { value, unit, expected, sigmas } = weighed;
  const target = run.targets.find((t) => t.id === id && id !== 'refrigerantCapacityBtuh');
  const offIsShare = BY_SHARE.has(unit);
  // figures told in whole units must add up as printed
  const perUnit = IN_WHOLES.has(unit) ? 1 : unit === 'frac' ? 100 : undefined;
  const difference =
    perUnit === undefined
      ? Math.abs(value - expected)
      : Math.abs(Math.round(perUnit * value) - Math.round(perUnit * expected)) / perUnit;
  return {
    value,
    unit,
    expected,
    ...(target === undefined ? {} : { low: target.low, high: target.high }),
    off: offIsShare ? difference / expected : difference,
    offIsShare,
    side: Math.abs(sigmas) < data.nearHealthySigmas.value ? 'near' : value > expected ? 'above' : 'below',
  };
}

type PatternRow = {
  readonly cause: string;
  readonly mode: string;
  readonly metering: string;
  readonly source: string;
  readonly status: string;
  readonly note?: string;
};

function patternsBehind(
  cause: CauseId,
  modes: readonly Mode[],
  metering: MeteringDevice | undefined,
): CauseExplained['patterns'] {
  const rows: readonly PatternRow[] = patterns.rows;
  const found = modes.flatMap((mode) =>
    rows
      .filter((row) => row.cause === cause && row.mode === mode)
      .filter((row) => metering === undefined || row.metering === metering)
      .map(({ source, status, note }) => ({ mode, source, status, ...(note === undefined ? {} : { note }) })),
  );
  const keyOf = (row: (typeof found)[number]) => `${row.mode} ${row.source} ${row.note ?? ''}`;
  return found.filter((row, i) => found.findIndex((other) => keyOf(other) === keyOf(row)) === i);
}

function effectSaying(saying: Saying): Saying {
  return { ...saying, code: `effect.${saying.code}` };
}

function lossShares(cause: CauseId, { loss }: Findings): CauseExplained['lossShares'] {
  return (['heating', 'cooling'] as const).flatMap((mode) => {
    const own = loss[mode];
    const share = own?.shares?.find((row) => row.cause === cause);
    return share === undefined || own === undefined || !isClearLoss(own)
      ? []
      : [{ mode, shareFrac: share.shareFrac }];
  });
}

/** Whether some outcome would put another cause first, or change the leading one's chance noticeably. */
function movesFinding({ outcomes }: NextReading): boolean {
  if (outcomes.length === 0) return true;
  const chances = outcomes.map(({ probability }) => probability);
  const leaders = new Set(outcomes.map(({ cause }) => cause));
  return leaders.size > 1 || Math.max(...chances) - Math.min(...chances) >= data.movesFrac.value;
}
