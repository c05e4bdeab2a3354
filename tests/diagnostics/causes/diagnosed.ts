import type { CausesOfVisit } from '@/lib/diagnostics/causes/causes-of-visit';
import { causesOfVisit } from '@/lib/diagnostics/causes/causes-of-visit';
import { evidenceOfRun } from '@/lib/diagnostics/causes/features-of-run';
import { ranked } from '@/lib/diagnostics/causes/posterior';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { airConflicts } from '@/lib/diagnostics/plausibility/air-conflicts';
import { refrigerantConflicts } from '@/lib/diagnostics/plausibility/refrigerant-conflicts';
import { targetsOfRun } from '@/lib/diagnostics/targets/targets-of-run';
import type { CauseId } from '@/lib/visit/cause';
import type { Visit } from '@/lib/visit/visit';
import { contextOf } from '../support/visit-of';

/** Causes of a visit from its readings, without the loss and what would narrow it. */
export function causesFrom(visit: Visit): CausesOfVisit {
  const runs = visit.runs.map((_, i) => {
    const context = contextOf(visit, i);
    const derived = deriveRun(context);
    const { targets, noTargets } = targetsOfRun(context, derived);
    const flags = [...refrigerantConflicts(context, derived), ...airConflicts(context, derived)];
    return {
      context,
      derived,
      targets,
      evidence: evidenceOfRun({ context, derived, targets, noTargets, flags }),
    };
  });
  return causesOfVisit(visit, runs);
}

/** Causes by falling chance, `none` among them. */
export function rankedFrom(visit: Visit): readonly { readonly cause: CauseId; readonly chance: number }[] {
  return ranked(causesFrom(visit).asFound);
}
