import { describe, expect, test } from 'vitest';
import { appraise } from '@/lib/appraise/appraise';
import { appraiseRepair, type RepairAppraisal } from '@/lib/appraise/appraise-repair';
import type { Visit } from '@/lib/visit/visit';
import { demoFiles } from './demo-files';

function demo(id: string): Visit {
  const visit = demoFiles.find((v) => v.id === id);
  if (visit === undefined) throw new Error(`no demo visit ${id}`);
  return visit;
}

function repairOf(visit: Visit): RepairAppraisal {
  const repair = appraiseRepair(visit);
  if (repair.kind === 'none') throw new Error(repair.why);
  return repair;
}

const opened = demo('closed-registers');

describe('appraiseRepair', () => {
  test('wiring: compares the run a repair names with the first of its mode', () => {
    const repair = repairOf(opened);
    expect([repair.beforeRunId, repair.afterRunId]).toEqual(['as-found', 'registers-opened']);
    expect(repair.repairName).toBe('Keep the registers open, new filter');
    expect(repair.lossBefore.capacityRatioToHealthy.likely).toBeLessThan(
      repair.lossAfter.capacityRatioToHealthy.likely,
    );
  });

  test('wiring: costs are those of the appraisal: as found, and the repair as its run shows it', () => {
    const { energy } = appraise(opened);
    const repair = repairOf(opened);
    const cost = (id: string) => energy.scenarios.find((s) => s.id === id)?.costUsd;
    expect(repair.costBeforeUsd).toEqual(cost('asFound'));
    expect(repair.costAfterUsd).toEqual(cost('open-registers'));
    const likely = (cost('asFound')?.likely ?? 0) - (cost('open-registers')?.likely ?? 0);
    expect(repair.measuredSavingUsd.likely).toBeCloseTo(likely, 6);
  });

  test('wiring: the prediction rests on the readings before alone', () => {
    const { predictedSavingUsd } = repairOf(opened);
    // A wild later run must not reach it.
    const wild = {
      ...opened,
      runs: opened.runs.map((run) =>
        run.id === 'registers-opened' ? { ...run, compressorA: 12, dischargeLineF: 160 } : run,
      ),
    };
    expect(predictedSavingUsd).toBeDefined();
    expect(repairOf(wild).predictedSavingUsd).toEqual(predictedSavingUsd);
    expect(repairOf(wild).measuredSavingUsd).not.toEqual(repairOf(opened).measuredSavingUsd);
  });

  test('wiring: without a named repair the first and last run of a mode are compared, and nothing was predicted', () => {
    const unnamed = { ...opened, choices: opened.choices.filter((choice) => choice.kind === 'leave') };
    const repair = repairOf(unnamed);
    expect([repair.beforeRunId, repair.afterRunId]).toEqual(['as-found', 'registers-opened']);
    expect(repair.repairName).toBeUndefined();
    expect(repair.predictedSavingUsd).toBeUndefined();
    expect(repair.measuredSavingUsd).toEqual(repairOf(opened).measuredSavingUsd);
  });

  test('identity: one run, or a run that tells nothing, gives the reason', () => {
    expect(appraiseRepair(demo('low-charge'))).toEqual({ kind: 'none', why: 'oneRunOnly' });
    const bare = {
      ...opened,
      runs: opened.runs.map((run) => (run.id === 'registers-opened' ? { id: run.id, mode: run.mode } : run)),
    };
    expect(appraiseRepair(bare)).toEqual({ kind: 'none', why: 'runNotUsable' });
  });

  test('property: the same readings twice save nothing that stands clear of its range', () => {
    const [first] = opened.runs;
    if (first === undefined) throw new Error('no run');
    const twice = { ...opened, runs: [first, { ...first, id: 'registers-opened' }] };
    const { measuredSavingUsd } = repairOf(twice);
    // Not exactly 0: the mode that was not read is carried over by the causes before, by the loss shown after.
    expect(Math.abs(measuredSavingUsd.likely)).toBeLessThan(50);
    expect(measuredSavingUsd.low).toBeLessThan(0);
    expect(measuredSavingUsd.high).toBeGreaterThan(0);
  });
});
