import { type Estimate, exactEstimate } from '../math/estimate';
import type { CauseId } from '../visit/cause';
import type { RepairAction, Repairing } from '../visit/choice';
import type { Saying } from '../visit/wording';
import data from './data/repair-effects.json';

export type RepairEffect = {
  /** Share of the log loss given back, 0..1. */
  readonly recoveredFrac: Estimate;
  /** The cause it was judged by; absent = nobody named one. */
  readonly cause?: CauseId;
  readonly notes: readonly Saying[];
};

type Cures = Readonly<Partial<Record<CauseId, Estimate>>>;

/**
 * Share of the loss a repair gives back: that of the cause the technician suspects (with no suspicion, the cause the
 * repair is aimed at); nothing if none of its actions treats that cause, and nothing where no fault is suspected.
 *
 * @param choice  the repair
 * @param suspected  the technician's suspicion, if any
 * @returns low / likely / high share of the log loss; the choice's own figures win over the table's
 * No cause named: the actions are taken to meet their own cause, and a note says so.
 * Source: data/repair-effects.json, status assumption
 * Check: tests/energy/repair-effect.test.ts
 */
export function repairEffect(choice: Repairing, suspected: CauseId | undefined): RepairEffect {
  const cause = suspected ?? choice.addresses;
  if (cause === undefined) {
    const own = best(choice.actions.flatMap((action) => Object.values(curesOf(action))));
    return {
      recoveredFrac: choice.lossRecoveredFrac ?? own,
      notes: [{ code: 'repairCauseUnnamed', values: { choice: choice.name } }],
    };
  }
  const cures = choice.actions.flatMap((action) => curesOf(action)[cause] ?? []);
  if (cures.length === 0) {
    return {
      recoveredFrac: exactEstimate(0),
      cause,
      notes: [{ code: 'repairMissesCause', values: { choice: choice.name, cause } }],
    };
  }
  return { recoveredFrac: choice.lossRecoveredFrac ?? best(cures), cause, notes: [] };
}

/**
 * Whether any action of a repair treats a cause.
 *
 * Check: tests/energy/repair-effect.test.ts
 */
export function repairTreats(choice: Repairing, cause: CauseId): boolean {
  return choice.actions.some((action) => curesOf(action)[cause] !== undefined);
}

function curesOf(action: RepairAction): Cures {
  return data.actions[action];
}

function best(cures: readonly Estimate[]): Estimate {
  return cures.reduce((a, b) => (b.likely > a.likely ? b : a), exactEstimate(0));
}
