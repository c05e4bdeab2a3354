import type { ReadingName, Run } from '../../visit/run';
import type { Visit } from '../../visit/visit';
import { compareRuns } from '../causes/compare-runs';
import type { RunComparison, RunFindings } from '../findings';
import data from './data/measuring.json';
import { READ_IN_ORDER } from './read-in-order';

const CONDITIONS = ['outdoorAirF', 'returnAirF', 'returnWetBulbF', 'lineV'] as const;

/** A condition of both runs; it alters readings by itself. */
export type ComparedCondition = {
  readonly id: ReadingName;
  readonly before?: number;
  readonly after?: number;
  /** Differs by enough to alter the readings, or is missing in one of the runs. */
  readonly verdict: 'same' | 'changed' | 'unknown';
};

/** Two runs of one mode side by side. */
export type PairComparison = RunComparison & {
  readonly conditions: readonly ComparedCondition[];
  /** Electric heat was on in one of the runs only. */
  readonly electricHeatDiffers: boolean;
};

/**
 * Pairs of runs of one mode, the earlier one first, side by side: every pair of a few runs; of many, the first with
 * each, each with the next, and each with the last, so that their number grows with the runs and not with its square.
 *
 * @param visit  the runs as read
 * @param found  findings of the same runs
 * @returns what was read in both runs, in the order of a technician's table, and the conditions of both. Conditions
 * nobody read in either run are left out.
 * Check: tests/diagnostics/measuring/compare-pair.test.ts
 */
export function comparePairs(visit: Visit, found: readonly RunFindings[]): readonly PairComparison[] {
  const runs = visit.runs.flatMap((run) => {
    const findings = found.find(({ runId }) => runId === run.id);
    return findings === undefined
      ? []
      : [{ context: { run, visit }, derived: findings.derived, targets: findings.targets }];
  });
  return runs.flatMap((before, i) => {
    const { mode } = before.context.run;
    const ofMode = runs.filter(({ context }) => context.run.mode === mode);
    const place = ofMode.indexOf(before);
    return runs
      .slice(i + 1)
      .filter(
        (after) => after.context.run.mode === mode && isListed(place, ofMode.indexOf(after), ofMode.length),
      )
      .map((after) => ({
        ...compareRuns(before, after, READ_IN_ORDER),
        ...conditionsOf(before.context.run, after.context.run),
      }));
  });
}

function isListed(from: number, to: number, count: number): boolean {
  return count <= data.pairs.allUpToRuns.value || from === 0 || to === from + 1 || to === count - 1;
}

function conditionsOf(before: Run, after: Run): Pick<PairComparison, 'conditions' | 'electricHeatDiffers'> {
  return {
    conditions: CONDITIONS.flatMap((id) => {
      const [was, is] = [before[id], after[id]];
      if (was === undefined && is === undefined) return [];
      const verdict =
        was === undefined || is === undefined
          ? 'unknown'
          : Math.abs(is - was) > data.conditions[id].value
            ? 'changed'
            : 'same';
      return [
        {
          id,
          verdict,
          ...(was === undefined ? {} : { before: was }),
          ...(is === undefined ? {} : { after: is }),
        } as const,
      ];
    }),
    electricHeatDiffers: (before.electricHeatOn === true) !== (after.electricHeatOn === true),
  };
}
