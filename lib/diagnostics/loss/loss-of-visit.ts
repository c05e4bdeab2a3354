import type { Uncertain } from '../../math/propagate';
import type { CauseId } from '../../visit/cause';
import type { Mode } from '../../visit/run';
import type { Visit } from '../../visit/visit';
import type { Saying } from '../../visit/wording';
import data from '../data/loss.json';
import type { Findings, Loss } from '../findings';
import { type AgePrior, agePrior } from './age-prior';
import type { FaultRoute } from './fault-route';
import { assembled, lossOfRun } from './loss-of-run';
import { isUsable, type RunEvidence } from './run-evidence';

export type VisitLoss = Required<Pick<Findings, 'loss' | 'lossByRun'>>;

/** Evidence of a run with its mode, label, and what its own likely causes do. */
export type ModedEvidence = RunEvidence & {
  readonly mode: Mode;
  readonly label: string;
  readonly route?: FaultRoute;
};

/**
 * What the likely causes of the unit as found do, for a mode (no run = typical conditions), those of `without` left
 * out; undefined = unknown.
 */
export type RouteOfMode = (
  mode: Mode,
  run: RunEvidence | undefined,
  without?: readonly CauseId[],
) => FaultRoute | undefined;

/**
 * Causes that stay in the mode they were found in: a heat pump with fixed metering has an orifice for each mode, so a
 * blocked one says nothing about the other. A mode with a run of its own tells by itself.
 */
export function ofOneModeOnly({ unit }: Visit): readonly CauseId[] {
  return unit.kind === 'heatPump' && unit.metering === 'fixedOrifice' ? ['meteringRestriction'] : [];
}

/**
 * Loss of both modes as the unit was found.
 *
 * The first usable run of a mode speaks for it; later ones show what a step of the technician changed and stay in
 * `lossByRun` for before and after. A mode without usable runs takes the other mode's log loss with twice its
 * variance, shifted by how differently the likely causes act in this mode by published correlations; without any
 * usable run the causes alone, widened; without causes age alone, wide.
 *
 * @param visit     visit
 * @param evidence  one for each run, in the order of the runs
 * @param routeOf   correlations for the unit as found
 * @returns `cooling`, and `heating` for a heat pump; the order of runs of different modes does not matter
 * Check: tests/diagnostics/loss.test.ts
 */
export function lossOfVisit(
  visit: Visit,
  evidence: readonly ModedEvidence[],
  routeOf: RouteOfMode = () => undefined,
): VisitLoss {
  const prior = agePrior(visit);
  const modes: readonly Mode[] = visit.unit.kind === 'heatPump' ? ['cooling', 'heating'] : ['cooling'];
  const own = new Map<Mode, Loss>();
  for (const mode of modes) {
    const ofMode = evidence.filter((e) => e.mode === mode);
    const first = ofMode.find(isUsable);
    if (first === undefined) continue;
    own.set(mode, withRunNotes(lossOfRun(mode, first, prior, routeOf(mode, first)), first, ofMode));
  }
  const loss = Object.fromEntries(
    modes.map((mode) => [mode, own.get(mode) ?? missingMode(visit, mode, own, prior, evidence, routeOf)]),
  );
  return {
    loss,
    lossByRun: evidence
      .filter((e) => modes.includes(e.mode) && isUsable(e))
      .map((e) => ({ runId: e.runId, loss: lossOfRun(e.mode, e, prior, e.route) })),
  };
}

function withRunNotes(loss: Loss, used: ModedEvidence, ofMode: readonly ModedEvidence[]): Loss {
  const notes: Saying[] = [...loss.notes];
  const usable = ofMode.filter(isUsable);
  if (usable.length > 1) notes.push({ code: 'firstRunCounts', values: { label: used.label } });
  for (const other of ofMode.filter((e) => !isUsable(e))) {
    notes.push({ code: 'runNotUsable', values: { label: other.label } });
  }
  return { ...loss, notes };
}

function missingMode(
  visit: Visit,
  mode: Mode,
  own: ReadonlyMap<Mode, Loss>,
  prior: AgePrior,
  evidence: readonly ModedEvidence[],
  routeOf: RouteOfMode,
): Loss {
  const otherMode: Mode = mode === 'cooling' ? 'heating' : 'cooling';
  const other = own.get(otherMode);
  const unusable = evidence.filter((e) => e.mode === mode);
  const notes: Saying[] = unusable.flatMap((e) => e.notes);
  if (unusable.length > 0) notes.push({ code: 'runsNotUsable', values: { mode } });
  const without = unusable.length === 0 ? ofOneModeOnly(visit) : [];
  const route = routeOf(mode, undefined, without);
  if (other === undefined) {
    const alone = lossOfRun(mode, undefined, prior, route === undefined ? undefined : widened(route));
    return { ...alone, notes: [...notes, ...alone.notes] };
  }
  const otherRun = evidence.find((e) => e.mode === otherMode && isUsable(e));
  const left = withoutShares(other, without);
  const carried = carriedOver(left, route, routeOf(otherMode, otherRun, without));
  return assembled(mode, carried.lnCapacity, carried.lnPower, {
    routes: [],
    basis: 'assumed',
    notes: [
      ...notes,
      { code: 'carriedOver', values: { from: other.mode } },
      ...(route === undefined ? [] : [{ code: 'carriedByCauses' }]),
    ],
    ...(left.shares === undefined ? {} : { shares: left.shares }),
  });
}

/** A loss without what its shares put down to some causes; what is left over is then the whole. */
function withoutShares(loss: Loss, without: readonly CauseId[]): Loss {
  const { shares } = loss;
  if (shares === undefined) return loss;
  const gone = shares.filter(({ cause }) => without.includes(cause));
  const kept = 1 - gone.reduce((sum, { shareFrac }) => sum + shareFrac, 0);
  if (gone.length === 0) return loss;
  const rest = shares.filter(({ cause }) => !without.includes(cause));
  return {
    ...loss,
    lnCapacity: { ...loss.lnCapacity, mean: kept * loss.lnCapacity.mean },
    lnPower: { ...loss.lnPower, mean: kept * loss.lnPower.mean },
    shares: kept > 0.01 ? rest.map((share) => ({ ...share, shareFrac: share.shareFrac / kept })) : [],
  };
}

type Pair = { readonly lnCapacity: Uncertain; readonly lnPower: Uncertain };

/** The other mode's loss, shifted by what its likely causes do differently here; twice the variance. */
function carriedOver(other: Loss, here: FaultRoute | undefined, there: FaultRoute | undefined): Pair {
  const widen = Math.sqrt(data.carryOver.varianceFactor);
  const part = (key: 'lnCapacity' | 'lnPower'): Uncertain => {
    const shift = here === undefined || there === undefined ? 0 : here[key].value - there[key].value;
    return { value: other[key].mean + shift, sd: Math.max(widen * other[key].sd, here?.[key].sd ?? 0) };
  };
  return { lnCapacity: part('lnCapacity'), lnPower: part('lnPower') };
}

/** Causes without any measured loss: twice the variance. */
function widened(route: FaultRoute): FaultRoute {
  const factor = Math.sqrt(data.carryOver.varianceFactor);
  return {
    ...route,
    lnCapacity: { ...route.lnCapacity, sd: factor * route.lnCapacity.sd },
    lnPower: { ...route.lnPower, sd: factor * route.lnPower.sd },
  };
}
