import { describe, expect, it } from 'vitest';
import type { DerivedValue, RunFindings } from '@/lib/diagnostics/findings';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import { installedUnit } from '@/lib/energy/installed-unit';
import { energyOf, exampleVisit, scenarioNamed } from './example-visit';

const visit = exampleVisit();
const healthy = healthyUnit({ unit: visit.unit, visitDate: visit.visitDate });
const ecm = healthyUnit({ unit: { ...visit.unit, blower: 'ecm' }, visitDate: visit.visitDate });
const run = (values: Record<string, number>): RunFindings => ({
  runId: 'r',
  mode: 'cooling',
  label: '',
  targets: [],
  derived: Object.entries(values).map(
    ([id, value]): DerivedValue => ({
      id,
      value,
      sd: 1,
      unit: '',
      basis: 'measured',
      inputs: [],
      formula: '',
      source: '',
    }),
  ),
});

describe('wiring: the unit as the house runs it', () => {
  it('watts read win over airflow, the first run that tells something counts', () => {
    const runs = [run({}), run({ blowerW: 512, airflowCfm: 1_000 }), run({ blowerW: 300 })];
    const unit = installedUnit(visit, healthy, runs);
    expect(unit.blowerW).toBe(512);
    const names = unit.facts.map((f) => f.name);
    expect(names).toContain('blowerW');
    expect(names).not.toContain('blowerWPerCfm');
  });

  it('airflow on usual watts per cfm [0.5 W/cfm PSC, 0.375 W/cfm ECM, OpenStudio-HPXML, read]', () => {
    expect(installedUnit(visit, healthy, [run({ airflowCfm: 900 })]).blowerW).toBeCloseTo(450, 9);
    expect(installedUnit(visit, ecm, [run({ airflowCfm: 900 })]).blowerW).toBeCloseTo(337.5, 9);
  });

  it('static pressure raises the watts of an ECM blower only', () => {
    const at = (totalExternalStaticInWc: number) => [run({ airflowCfm: 900, totalExternalStaticInWc })];
    expect(installedUnit(visit, healthy, at(0.9)).blowerW).toBeCloseTo(450, 9);
    // by hand: 337.5 W x (0.9 + 0.3) / (0.5 + 0.3)
    expect(installedUnit(visit, ecm, at(0.9)).blowerW).toBeCloseTo(506.25, 9);
    expect(installedUnit(visit, ecm, at(3)).blowerW).toBeCloseTo(675, 9);
  });

  it('nothing read, nothing recorded: as it was', () => {
    expect(installedUnit(visit, healthy, [])).toEqual({ ...healthy, facts: expect.anything() });
    const bare = { ...visit, unit: { kind: 'heatPump' as const, nominalTons: 3 } };
    expect(installedUnit(bare, healthy, [])).toBe(healthy);
  });

  it('stages give the size of the electric heat when nobody recorded it', () => {
    const { electricHeatKw: _, ...rest } = visit.unit;
    const stages = [{ sizeKw: 5 }, { sizeKw: 4.6, lockOutAboveF: 20 }];
    const unit = healthyUnit({ unit: rest, visitDate: visit.visitDate });
    expect(unit.notes.map((n) => n.code)).toContain('stripKwAssumed');
    const staged = installedUnit({ ...visit, unit: { ...rest, electricHeatStages: stages } }, unit);
    expect(staged.stripKw).toBeCloseTo(9.6, 9);
    expect(staged.notes.map((n) => n.code)).not.toContain('stripKwAssumed');
  });
});

describe('property: cut-out and staged electric heat in the year', () => {
  const st = { climate: { kind: 'city' as const, city: 'st-louis-mo' } };
  const at = (unit: Partial<typeof visit.unit>) =>
    scenarioNamed(energyOf(exampleVisit({ site: st, unit: { ...visit.unit, ...unit } })), 'asFound');

  it('a higher cut-out moves heat from the compressor to the strips and never costs less', () => {
    const [low, high] = [at({ cutOutF: 0 }), at({ cutOutF: 35 })];
    expect(high.likely.stripHeatKwh).toBeGreaterThan(low.likely.stripHeatKwh);
    expect(high.likely.costUsd).toBeGreaterThan(low.likely.costUsd);
    expect(high.balance.filter((p) => p.outdoorF <= 35 && p.capacityBtuh > 0)).toEqual([]);
  });

  it('a stage locked out above 20 F gives nothing there: less strip heat, more unmet', () => {
    const free = at({ electricHeatStages: [{ sizeKw: 1 }, { sizeKw: 14 }] });
    const locked = at({ electricHeatStages: [{ sizeKw: 1 }, { sizeKw: 14, lockOutAboveF: 20 }] });
    expect(free.likely).toEqual(at({}).likely);
    const above = locked.balance.filter((p) => p.outdoorF > 20);
    expect(above.length).toBeGreaterThan(3);
    expect(Math.max(...above.map((p) => p.stripBtuh))).toBeLessThanOrEqual(1_000 * 3.4122);
    expect(locked.likely.stripHeatKwh).toBeLessThan(free.likely.stripHeatKwh);
    expect(locked.likely.unmetHeatingHours).toBeGreaterThan(free.likely.unmetHeatingHours);
    const below = (s: typeof free) => s.balance.filter((p) => p.outdoorF < 20);
    expect(below(locked)).toEqual(below(free));
  });
});
