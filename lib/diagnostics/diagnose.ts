import type { Mode } from '../visit/run';
import type { Visit } from '../visit/visit';
import { besideLoss } from './causes/beside-loss';
import { type CauseRun, causesOfVisit } from './causes/causes-of-visit';
import { evidenceOfRun } from './causes/features-of-run';
import { deriveRun } from './derived/derive-run';
import { weighedReadings } from './explain/weighed-readings';
import type { FaultConditions } from './fault-effects/fault-conditions';
import type { Findings, Flag, RunFindings } from './findings';
import type { HealthyUnit } from './healthy-unit/healthy-unit';
import { conditionsOf } from './loss/conditions-of-run';
import { faultRoute } from './loss/fault-route';
import { lossOfVisit, type RouteOfMode } from './loss/loss-of-visit';
import { type RunEvidence, runEvidence } from './loss/run-evidence';
import { measuringOfRun } from './measuring/measuring-of-run';
import { plainReadings } from './plain-readings';
import { airConflicts } from './plausibility/air-conflicts';
import { dangersOfRun } from './plausibility/dangers';
import { observedDangers } from './plausibility/observed-dangers';
import { refrigerantConflicts } from './plausibility/refrigerant-conflicts';
import type { RefrigerantProperties } from './refrigerant/refrigerant-properties';
import { type RunContext, runContext } from './run-context';
import { targetsOfRun } from './targets/targets-of-run';
import { wouldNarrow } from './would-narrow/would-narrow';

export type DiagnoseInput = {
  readonly visit: Visit;
  readonly healthy: HealthyUnit;
  /** Left out when the refrigerant is unknown: everything that needs no refrigerant still answers. */
  readonly properties?: RefrigerantProperties | undefined;
};

type ReadRun = {
  readonly context: RunContext;
  readonly findings: RunFindings;
  readonly flags: readonly Flag[];
  readonly evidence: RunEvidence;
  readonly causeRun: CauseRun;
};

/**
 * What the readings of a visit say: derived values, targets, doubts and dangers, causes, loss per mode, and which
 * readings would narrow it.
 *
 * @param input  visit, its healthy unit, and the properties of its refrigerant
 * @returns findings; missing readings never block, they leave values out and widen the loss. Dangers come first.
 * Check: tests/diagnostics/diagnose.test.ts
 */
export function diagnose(input: DiagnoseInput): Findings {
  const { visit, healthy } = input;
  const runs = visit.runs.map((run) => readRun(runContext({ ...input, run })));
  const causes = causesOfVisit(
    visit,
    runs.map((run) => run.causeRun),
  );
  const conditionsAt = new Map<RunContext | Mode, FaultConditions>();
  const conditionsFor = (mode: Mode, context: RunContext | undefined): FaultConditions => {
    const conditions =
      conditionsAt.get(context ?? mode) ?? conditionsOf(mode, context, context ?? runs[0]?.context);
    conditionsAt.set(context ?? mode, conditions);
    return conditions;
  };
  const routeOf: RouteOfMode = (mode, run, without) => {
    if (causes.asFoundVerdict === 'tooFewReadings') return undefined;
    const context = runs.find(({ evidence }) => evidence.runId === run?.runId)?.context;
    return faultRoute(visit, causes.asFound, conditionsFor(mode, context), without);
  };
  const { loss, lossByRun } = lossOfVisit(
    visit,
    runs.map(({ context, findings, evidence }, i) => {
      const own = causes.byRun[i];
      const moded = { ...evidence, mode: findings.mode, label: findings.label };
      if (own === undefined || own.verdict === 'tooFewReadings') return moded;
      return {
        ...moded,
        route: faultRoute(visit, own.posterior, conditionsFor(findings.mode, context)),
      };
    }),
    routeOf,
  );
  const flags = [...observedDangers(visit), ...unknowns(visit), ...runs.flatMap((run) => run.flags)];
  const { suspectedCause } = visit;
  return {
    runs: runs.map((run) => run.findings),
    flags: [
      ...flags.filter((flag) => flag.severity === 'danger'),
      ...flags.filter((flag) => flag.severity !== 'danger'),
    ],
    loss,
    lossByRun,
    ...(suspectedCause === undefined
      ? {}
      : {
          suspectedCause: {
            cause: suspectedCause.cause,
            saidBy: 'technician',
            ...(suspectedCause.note === undefined ? {} : { note: suspectedCause.note }),
          },
        }),
    wouldNarrow: wouldNarrow(visit, healthy, runs),
    causes: besideLoss(causes.found, loss),
  };
}

function readRun(context: RunContext): ReadRun {
  const { run } = context;
  const derived = deriveRun(context);
  const { targets, noTargets } = targetsOfRun(context, derived);
  const flags = [
    ...dangersOfRun(context, derived),
    ...refrigerantConflicts(context, derived),
    ...airConflicts(context, derived),
  ];
  const weighed = evidenceOfRun({ context, derived, targets, noTargets, flags });
  return {
    context,
    findings: {
      runId: run.id,
      mode: run.mode,
      label: run.label ?? '',
      derived,
      targets,
      noTargets,
      measuring: measuringOfRun(context, derived, targets),
      plain: plainReadings(targets, flags),
      weighed: weighedReadings(run, derived, weighed.features),
    },
    flags,
    evidence: runEvidence(context, derived, flags),
    causeRun: {
      context,
      derived,
      targets,
      evidence: weighed,
    },
  };
}

function unknowns(visit: Visit): readonly Flag[] {
  const flags: Flag[] = [];
  const gauges = visit.runs.some(
    ({ suctionPsig, dischargePsig, liquidPsig }) =>
      (suctionPsig ?? dischargePsig ?? liquidPsig) !== undefined,
  );
  if (visit.unit.refrigerant === undefined && gauges) flags.push(refrigerantUnknown(visit));
  if (visit.site.altitudeFt === undefined && gauges) {
    flags.push({ code: 'altitudeUnknown', severity: 'unknown', readings: ['suctionPsig', 'dischargePsig'] });
  }
  if (visit.unit.metering === undefined && gauges) {
    flags.push({ code: 'meteringUnknown', severity: 'unknown', readings: ['suctionLineF'] });
  }
  if (visit.runs.length === 0) flags.push({ code: 'noRuns', severity: 'unknown', readings: [] });
  return flags;
}

/** No property table: not given, or one outside the list, which the technician named. */
function refrigerantUnknown({ unit }: Visit): Flag {
  const readings = ['suctionPsig', 'dischargePsig'];
  const name = unit.otherRefrigerant?.trim();
  return name === undefined || name === ''
    ? { code: 'refrigerantUnknown', severity: 'unknown', readings }
    : { code: 'refrigerantOutsideList', severity: 'unknown', readings, values: { name } };
}
