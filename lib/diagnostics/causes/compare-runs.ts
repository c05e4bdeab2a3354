import type { ReadingName } from '../../visit/run';
import { derivedById } from '../derived/derive-run';
import type { DerivedValue, RunComparison, Target } from '../findings';
import conditions from '../measuring/data/measuring.json';
import { READ_IN_ORDER, TELLING_NO_CAUSE } from '../measuring/read-in-order';
import type { RunContext } from '../run-context';
import { readingOf } from '../sourced';

/** A run as it is compared. */
export type ComparedRun = {
  readonly context: Pick<RunContext, 'run' | 'visit'>;
  readonly derived: readonly DerivedValue[];
  readonly targets: readonly Target[];
};

/** What is worth comparing for the causes, in the order a technician reads it: parts and bare gauges tell no cause. */
const COMPARED = READ_IN_ORDER.filter((id) => !TELLING_NO_CAUSE.has(id));

/** Conditions may differ by this much before a comparison needs a warning. */
const SAME_WEATHER_FD = conditions.conditions.outdoorAirF.value;
/** A change beyond this many standard uncertainties is real. */
const REAL_SIGMAS = 2;

/**
 * What changed between two runs of one mode: before and after a step.
 *
 * @param before,after  two runs of the same mode
 * @param ids  derived values and readings to compare, in order; what is worth it for the causes when left out
 * @returns changes of everything read in both, with their uncertainty; errors shared by both runs (assumptions, the
 * site) cancel and are left out of it
 * Check: tests/diagnostics/causes/compare-runs.test.ts
 */
export function compareRuns(
  before: ComparedRun,
  after: ComparedRun,
  ids: readonly string[] = COMPARED,
): RunComparison {
  const changes = ids.flatMap((id) => {
    const a = readingOrDerived(before, id);
    const b = readingOrDerived(after, id);
    if (a === undefined || b === undefined) return [];
    const sd = Math.hypot(a.sd, b.sd);
    const target = after.targets.find((t) => t.id === id);
    const targetBefore = before.targets.find((t) => t.id === id) ?? target;
    return [
      {
        id,
        unit: a.unit,
        before: a.value,
        after: b.value,
        sd,
        real: Math.abs(b.value - a.value) > REAL_SIGMAS * sd,
        ...(target === undefined || targetBefore === undefined
          ? {}
          : { towardsTarget: isNearer(targetBefore, a.value, target, b.value) }),
      },
    ];
  });
  const was = before.context.run.outdoorAirF;
  const is = after.context.run.outdoorAirF;
  const outdoorShift = was === undefined || is === undefined ? 0 : Math.abs(is - was);
  return {
    mode: after.context.run.mode,
    fromRunId: before.context.run.id,
    toRunId: after.context.run.id,
    changes,
    notes:
      outdoorShift > SAME_WEATHER_FD
        ? [{ code: 'weatherChanged', values: { difference: Math.round(outdoorShift) } }]
        : [],
  };
}

function readingOrDerived(
  run: ComparedRun,
  id: string,
): { readonly value: number; readonly sd: number; readonly unit: string } | undefined {
  const value = derivedById(run.derived, id);
  return value === undefined
    ? readingOf(run.context.run, id as ReadingName, run.context.visit.assumptions)
    : { value: value.value, sd: instrumentPart(value), unit: value.unit };
}

/** Uncertainty that differs from run to run: what instruments bring, not what is assumed for both alike. */
function instrumentPart(value: DerivedValue): number {
  const shares = value.inputs.filter((input) => input.basis === 'measured');
  const share = shares.reduce((sum, input) => sum + (input.shareFrac ?? 0), 0);
  return value.sd * Math.sqrt(Math.min(1, share));
}

/** Each reading against the target of its own conditions. */
function isNearer(targetBefore: Target, before: number, targetAfter: Target, after: number): boolean {
  const distance = (target: Target, x: number): number => Math.max(0, target.low - x, x - target.high);
  const [was, is] = [distance(targetBefore, before), distance(targetAfter, after)];
  return was === is ? Math.abs(after - targetAfter.value) < Math.abs(before - targetBefore.value) : is < was;
}
