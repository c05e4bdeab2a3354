import type { ReadingName } from '../../visit/run';
import { derivedById } from '../derived/derive-run';
import { targetRule } from '../explain/target-rule';
import type { DerivedValue, Target } from '../findings';
import type { RunContext } from '../run-context';
import { isTarget, judged, type NoTarget, type TargetPart } from './build-target';
import {
  airflowTarget,
  drierTarget,
  efficiencyTarget,
  electricTargets,
  performanceTargets,
  riseTarget,
  splitTarget,
  staticBudgetTargets,
  staticTarget,
} from './other-targets';
import {
  compressionRatioTarget,
  condensingTarget,
  dischargeTarget,
  evaporatingTarget,
  subcoolingTarget,
  superheatTarget,
} from './refrigerant-targets';
import { tableTargets } from './table-targets';

export type RunTargets = { readonly targets: readonly Target[]; readonly noTargets: readonly NoTarget[] };

/** Judged as read, not derived. */
const AS_READ: readonly ReadingName[] = [
  'suctionPsig',
  'dischargePsig',
  'dischargeLineF',
  'compressorA',
  'filterDropInWc',
  'coilDropInWc',
];

/** Shown only when there is something to judge. */
const ONLY_WITH_READING = new Set([
  'drierDropFd',
  'totalExternalStaticInWc',
  'filterDropInWc',
  'coilDropInWc',
  'compressorCapacitorDeviationFrac',
  'fanCapacitorDeviationFrac',
  'voltageDeviationFrac',
  'compressorAmpsToRatedFrac',
  'stripAmpsRatio',
]);

/**
 * What a healthy unit would read under the run's conditions, each target judged against the run's reading.
 *
 * @param context  run with its unit and site
 * @param values   derived values of the same run
 * @returns targets, and the quantities for which no rule has an answer, with the reason
 * A heating run is never judged by a cooling rule; outside a rule's published range there is no verdict.
 * Check: tests/diagnostics/targets/targets-of-run.test.ts
 */
export function targetsOfRun(context: RunContext, values: readonly DerivedValue[]): RunTargets {
  const cooling = context.run.mode === 'cooling';
  const answers = [
    ...tableTargets(context),
    superheatTarget(context),
    subcoolingTarget(context),
    condensingTarget(context),
    evaporatingTarget(context),
    dischargeTarget(context),
    compressionRatioTarget(context),
    efficiencyTarget(context, values),
    cooling ? splitTarget(context) : riseTarget(context, values),
    airflowTarget(),
    staticTarget(context),
    ...staticBudgetTargets(),
    drierTarget(),
    ...performanceTargets(context),
    ...electricTargets(),
  ].filter((answer) => answer !== undefined);
  const targets = answers
    .filter(isPart)
    .map((part) => ({
      ...judged(part, readingFor(context, values, part.id)),
      ...targetRule(context, values, part),
    }))
    .filter((target) => target.reading !== undefined || !ONLY_WITH_READING.has(target.id));
  return { targets, noTargets: answers.filter((answer): answer is NoTarget => !isTarget(answer)) };
}

function isPart(answer: TargetPart | NoTarget): answer is TargetPart {
  return isTarget(answer);
}

function readingFor(context: RunContext, values: readonly DerivedValue[], id: string): number | undefined {
  const asRead = AS_READ.find((name) => name === id);
  return asRead === undefined ? derivedById(values, id)?.value : context.run[asRead];
}
