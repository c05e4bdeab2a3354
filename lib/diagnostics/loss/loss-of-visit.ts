import type { Mode } from '../../visit/run';
import type { Visit } from '../../visit/visit';
import type { Saying } from '../../visit/wording';
import data from '../data/loss.json';
import type { Findings, Loss } from '../findings';
import { type AgePrior, agePrior } from './age-prior';
import { assembled, lossOfRun } from './loss-of-run';
import { isUsable, type RunEvidence } from './run-evidence';

export type VisitLoss = Required<Pick<Findings, 'loss' | 'lossByRun'>>;

type ModedEvidence = RunEvidence & { readonly mode: Mode; readonly label: string };

/**
 * Loss of both modes as the unit was found.
 *
 * The first usable run of a mode speaks for it; later ones show what a step of the technician changed and stay in
 * `lossByRun` for before and after. A mode without usable runs takes the other mode's log loss with twice its variance; without any, age alone, wide.
 *
 * @param visit     visit
 * @param evidence  one for each run, in the order of the runs
 * @returns `cooling`, and `heating` for a heat pump; the order of runs of different modes does not matter
 * Check: tests/diagnostics/loss.test.ts
 */
export function lossOfVisit(visit: Visit, evidence: readonly ModedEvidence[]): VisitLoss {
  const prior = agePrior(visit);
  const modes: readonly Mode[] = visit.unit.kind === 'heatPump' ? ['cooling', 'heating'] : ['cooling'];
  const own = new Map<Mode, Loss>();
  for (const mode of modes) {
    const ofMode = evidence.filter((e) => e.mode === mode);
    const first = ofMode.find(isUsable);
    if (first !== undefined) own.set(mode, withRunNotes(lossOfRun(mode, first, prior), first, ofMode));
  }
  const loss = Object.fromEntries(
    modes.map((mode) => [mode, own.get(mode) ?? missingMode(mode, own, prior, evidence)]),
  );
  return {
    loss,
    lossByRun: evidence
      .filter((e) => modes.includes(e.mode) && isUsable(e))
      .map((e) => ({ runId: e.runId, loss: lossOfRun(e.mode, e, prior) })),
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
  mode: Mode,
  own: ReadonlyMap<Mode, Loss>,
  prior: AgePrior,
  evidence: readonly ModedEvidence[],
): Loss {
  const other = own.get(mode === 'cooling' ? 'heating' : 'cooling');
  const unusable = evidence.filter((e) => e.mode === mode);
  const notes: Saying[] = unusable.flatMap((e) => e.notes);
  if (unusable.length > 0) notes.push({ code: 'runsNotUsable', values: { mode } });
  if (other === undefined) {
    const alone = lossOfRun(mode, undefined, prior);
    return { ...alone, notes: [...notes, ...alone.notes] };
  }
  const widen = Math.sqrt(data.carryOver.varianceFactor);
  return assembled(
    mode,
    { value: other.lnCapacity.mean, sd: widen * other.lnCapacity.sd },
    { value: other.lnPower.mean, sd: widen * other.lnPower.sd },
    {
      routes: [],
      basis: 'assumed',
      notes: [...notes, { code: 'carriedOver', values: { from: other.mode } }],
    },
  );
}
