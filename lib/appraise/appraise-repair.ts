import { climateFor } from '../energy/climate';
import type { EnergyResult, EnergyScenario, EnergyTotals } from '../energy/energy-result';
import { type Estimate, estimate } from '../math/estimate';
import type { RepairRead } from '../sheet/before-after';
import type { Choice } from '../visit/choice';
import type { Visit } from '../visit/visit';
import { lineOfVisit } from './line-of-visit';
import { MODEL_VERSION } from './model-version';

/** What a repair did, by the readings before and after it. */
export type RepairAppraisal = RepairRead & { readonly kind: 'repair' };

export type NoRepairAppraisal = { readonly kind: 'none'; readonly why: 'oneRunOnly' | 'runNotUsable' };

type Repair = Extract<Choice, { readonly kind: 'repair' | 'repairThenReplace' }>;

/** Stands for the repair when none was entered; only its run counts. */
const unnamedId = 'after-run';

/**
 * What a repair brought: the line runs once with the loss that the later run shows, and once with the readings before
 * it alone, as one would have predicted it.
 *
 * @param visit  a checked visit
 * @returns both, or why there is nothing to compare (words in components/words)
 * Measured saving: the losses of the two runs are read independently, so that the halves of their ranges add as
 * squares; what both share (climate, ratings) cancels. Source: our own choice, status assumption.
 * Check: tests/appraise/appraise-repair.test.ts
 */
export function appraiseRepair(visit: Visit): RepairAppraisal | NoRepairAppraisal {
  const pair = runsOfRepair(visit);
  if (pair === undefined) return { kind: 'none', why: 'oneRunOnly' };
  const { before, after, repair } = pair;
  const climate = climateFor(visit.site.climate, visit.site.stateCode);
  const others = visit.runs.filter((run) => run.mode !== after.mode);
  const leave = visit.choices.filter((choice) => choice.kind === 'leave');
  const done: Choice = { ...(repair ?? unnamedRepair), shownByRun: after.id };
  const both: Visit = { ...visit, runs: [...others, before, after], choices: [...leave, done] };
  const { findings, energy } = lineOfVisit(both, climate);
  const lossOf = (id: string) => findings.lossByRun?.find((entry) => entry.runId === id)?.loss;
  const [lossBefore, lossAfter] = [lossOf(before.id), lossOf(after.id)];
  const [found, now] = [scenario(energy, 'asFound'), scenario(energy, done.id)];
  if (lossBefore === undefined || lossAfter === undefined || found === undefined || now === undefined) {
    return { kind: 'none', why: 'runNotUsable' };
  }
  return {
    kind: 'repair',
    modelVersion: MODEL_VERSION,
    visit: both,
    findings,
    energy,
    beforeRunId: before.id,
    afterRunId: after.id,
    ...(repair === undefined ? {} : { repairName: repair.name }),
    lossBefore,
    lossAfter,
    costBeforeUsd: found.costUsd,
    costAfterUsd: now.costUsd,
    measuredSavingUsd: measured(found, now),
    ...(repair === undefined ? {} : predicted({ ...both, runs: [...others, before] }, repair, climate)),
  };
}

const unnamedRepair: Repair = {
  kind: 'repair',
  id: unnamedId,
  name: '',
  priceLines: [],
  actions: ['openRegisters'],
};

/** The run a repair names as its proof with the first of its mode; else the first and the last of a mode read twice. */
function runsOfRepair(visit: Visit) {
  const repairs = visit.choices.filter((choice): choice is Repair => 'actions' in choice);
  const named = repairs.flatMap((repair) => {
    const after = visit.runs.find((run) => run.id === repair.shownByRun);
    const before = visit.runs.find((run) => run.mode === after?.mode);
    return after === undefined || before === undefined || before === after ? [] : [{ before, after, repair }];
  });
  const last = visit.runs.at(-1);
  const sameMode = visit.runs.filter((run) => run.mode === last?.mode);
  const [before, ...later] = sameMode;
  const after = later.at(-1);
  if (named[0] !== undefined) return named[0];
  return before === undefined || after === undefined ? undefined : { before, after, repair: undefined };
}

function scenario(energy: EnergyResult, id: string): EnergyScenario | undefined {
  return energy.scenarios.find((s) => s.id === id);
}

/** Saving that the readings before the repair alone would have promised. */
function predicted(
  visit: Visit,
  repair: Repair,
  climate: Parameters<typeof lineOfVisit>[1],
): { readonly predictedSavingUsd?: Estimate } {
  const { shownByRun: _shown, ...unproven } = repair;
  const { energy } = lineOfVisit(
    { ...visit, choices: visit.choices.map((choice) => (choice.id === repair.id ? unproven : choice)) },
    climate,
  );
  const [found, then] = [scenario(energy, 'asFound'), scenario(energy, repair.id)];
  if (found === undefined || then === undefined) return {};
  const likely = found.likely.costUsd - then.likely.costUsd;
  const ends = [
    found.mild.costUsd - then.mild.costUsd,
    found.severe.costUsd - then.severe.costUsd,
    ...[then.recoveryLow, then.recoveryHigh].flatMap((year) =>
      year === undefined ? [] : [found.likely.costUsd - year.costUsd],
    ),
  ];
  return { predictedSavingUsd: estimate(Math.min(likely, ...ends), likely, Math.max(likely, ...ends)) };
}

/** Saving between two measured losses: each loss brings its own range, the house one that both share. */
function measured(found: EnergyScenario, now: EnergyScenario): Estimate {
  const likely = found.likely.costUsd - now.likely.costUsd;
  const off = (a: EnergyTotals | undefined, b: EnergyTotals | undefined): number =>
    (a?.costUsd ?? found.likely.costUsd) - (b?.costUsd ?? now.likely.costUsd) - likely;
  const moves = [
    [off(found.mild, undefined), off(found.severe, undefined)],
    [off(undefined, now.mild), off(undefined, now.severe)],
    [off(found.loadLow, now.loadLow), off(found.loadHigh, now.loadHigh)],
  ];
  const down = moves.map((ends) => Math.min(0, ...ends));
  const up = moves.map((ends) => Math.max(0, ...ends));
  return estimate(likely - Math.hypot(...down), likely, likely + Math.hypot(...up));
}
