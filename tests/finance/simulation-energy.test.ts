import { expect, test } from 'vitest';
import { lnRatioLimits } from '@/lib/energy/energy-surface';
import { comparisonModel } from '@/lib/finance/comparison-model';
import { surfaceColumns } from '@/lib/finance/simulation-energy';
import { Z_10_90 } from '@/lib/math/estimate';
import { randomStream } from '@/lib/math/random';
import { demoFiles } from '../appraise/demo-files';
import { bothWays, surfaceCase } from '../energy/surface-cases';
import { near } from './checks';

const visit = demoFiles.find((v) => v.id === 'restricted-orifice');
if (visit === undefined) throw new Error('the demo has no such visit');
const c = surfaceCase(visit);
const model = comparisonModel(c);
const { causes } = model.chances;

const columnsAt = (rows: readonly (readonly number[])[], place = 0) => {
  const column = (k: number) => Float64Array.from(rows, (row) => row[k] ?? 0);
  const z = { loss: column(0), power: column(1), recovered: column(2), need: column(3), rated: column(4) };
  const cause = new Uint8Array(rows.length).fill(place);
  return surfaceColumns(model, c.surfaces, cause, z, new Float64Array(rows.length).fill(1));
};

test('identity: with every deviate at 0 each scenario costs its likely year, under each cause', () => {
  expect(causes.length).toBeGreaterThan(2);
  for (const [place, { cause }] of causes.entries()) {
    const columns = columnsAt([[0, 0, 0, 0, 0]], place);
    for (const { choice } of model.choices.filter((p) => p.choice.kind !== 'leave')) {
      const scenario = c.energy.scenarios.find((s) => s.id === choice.id);
      const found = c.energy.scenarios.find((s) => s.id === 'asFound')?.likely.costUsd ?? Number.NaN;
      const treated = scenario?.byCause?.find((b) => b.cause === cause)?.costUsd.likely;
      const usd = choice.kind === 'replace' ? scenario?.likely.costUsd : Math.min(found, treated ?? found);
      near(columns[choice.id]?.[0] ?? Number.NaN, usd ?? Number.NaN, 0.002 * found, `${choice.id} ${cause}`);
    }
  }
});

test('identity: ends of the need and of the rated power are those of the energy stage', () => {
  const columns = columnsAt([
    [0, 0, 0, -Z_10_90, 0],
    [0, 0, 0, Z_10_90, 0],
    [0, 0, 0, 0, -Z_10_90],
    [0, 0, 0, 0, Z_10_90],
  ]);
  const found = c.energy.scenarios.find((s) => s.id === 'asFound');
  const fresh = c.energy.scenarios.find((s) => s.id === 'new-heat-pump');
  near(columns.asFound?.[0] ?? 0, found?.loadLow?.costUsd ?? Number.NaN, 5, 'less need');
  near(columns.asFound?.[1] ?? 0, found?.loadHigh?.costUsd ?? Number.NaN, 5, 'more need');
  near(columns['new-heat-pump']?.[2] ?? 0, fresh?.ratedLow?.costUsd ?? Number.NaN, 5, 'less power');
  near(columns['new-heat-pump']?.[3] ?? 0, fresh?.ratedHigh?.costUsd ?? Number.NaN, 5, 'more power');
});

test('identity: a draw of the unit as found is the full year at its capacity, power and need', () => {
  const stream = randomStream(4, 'places');
  const rows = Array.from({ length: 200 }, () => Array.from({ length: 5 }, () => stream.normal()));
  const { asFound = new Float64Array() } = columnsAt(rows);
  const [existing] = c.units;
  if (existing === undefined) throw new Error('no unit');
  for (const [n, [capacity = 0, power = 0, , need = 0]] of rows.entries()) {
    const { fullUsd } = bothWays(c, existing, { capacity, power, need, backFrac: 0 });
    near(asFound[n] ?? Number.NaN, fullUsd, 0.005 * fullUsd, `draw ${n}`);
  }
});

test('property: a repair never costs energy, and gives back nothing under a cause it does not treat', () => {
  const stream = randomStream(5, 'places');
  const rows = Array.from({ length: 300 }, () => Array.from({ length: 5 }, () => stream.normal()));
  for (const place of causes.keys()) {
    const columns = columnsAt(rows, place);
    const cause = causes[place]?.cause;
    for (const id of Object.keys(c.surfaces.recoveries)) {
      const treats = c.surfaces.recoveries[id]?.some((r) => r.cause === cause) === true;
      const saved = rows.filter(
        (_, n) => (columns[id]?.[n] ?? 0) < (columns.asFound?.[n] ?? 0) - 1e-9,
      ).length;
      const above = rows.filter((_, n) => (columns[id]?.[n] ?? 0) > (columns.asFound?.[n] ?? 0)).length;
      expect(above).toBe(0);
      expect(saved > 0, `${id} ${cause}`).toBe(treats);
    }
  }
});

test('property: a draw stays inside what a unit can do', () => {
  const far = columnsAt([
    [99, -99, 0, 0, 0],
    [-99, 99, 0, 0, 0],
  ]);
  expect(far.asFound?.every((usd) => Number.isFinite(usd) && usd > 0)).toBe(true);
  expect(Math.exp(lnRatioLimits.capacity.to)).toBeCloseTo(1.05, 9);
  expect(Math.exp(lnRatioLimits.capacity.from)).toBeCloseTo(0.2, 9);
});
