import fc from 'fast-check';
import { expect, test } from 'vitest';
import { surfaceCosts } from '@/lib/energy/cost-surface';
import type { ReplaceChoice } from '@/lib/visit/choice';
import { demoFiles } from '../appraise/demo-files';
import { bothWays, flat, type Place, type SurfaceCase, surfaceCase, tiered } from './surface-cases';

const visits = demoFiles;
const heats = visits.find((v) => v.id === 'restricted-orifice');
const timeOfUse = visits.find((v) => v.tariff?.kind === 'timeOfUse')?.tariff;
if (heats === undefined || timeOfUse === undefined) throw new Error('the demo has no such visit');

/** A replacement with a gas furnace below 35 F. */
const dualFuel: ReplaceChoice = {
  kind: 'replace',
  id: 'dual-fuel',
  name: 'Dual fuel',
  unitKind: 'heatPump',
  tier: 'variableSpeed',
  nominalTons: 3,
  ratings: {},
  priceLines: [],
  furnace: { fuel: 'naturalGas', afueFrac: 0.95, switchOverF: 35 },
};

const cases: SurfaceCase[] = [flat, tiered, timeOfUse].flatMap((tariff) => [
  ...visits.map((visit) => surfaceCase({ ...visit, tariff })),
  surfaceCase({ ...heats, tariff, choices: [...heats.choices, dualFuel] }),
]);

// whole thousandths: doubles of fast-check gather about 0
const between = (min: number, max: number) =>
  fc.integer({ min: 1000 * min, max: 1000 * max }).map((x) => x / 1000);
const far = between(-4, 4);
const place: fc.Arbitrary<Place> = fc.record({
  capacity: far,
  power: far,
  need: far,
  backFrac: fc.oneof(fc.constant(0), between(0, 1)),
});

test('property: wherever draws reach, the surface lies within 0.5 % of the full year, for every unit and tariff', () => {
  // the place is taken to every unit of every visit, so that no case is left to chance
  let most = 0;
  fc.assert(
    fc.property(place, (at) => {
      for (const c of cases) {
        for (const unit of c.units) {
          const { readUsd, fullUsd } = bothWays(c, unit, at);
          expect(fullUsd).toBeGreaterThan(0);
          const off = Math.abs(readUsd / fullUsd - 1);
          most = Math.max(most, off);
          expect(off, `${c.visit.id} ${unit.name}`).toBeLessThan(0.005);
        }
      }
    }),
    { numRuns: 250, seed: 11 },
  );
  // it is no copy of the full calculation either
  expect(most).toBeGreaterThan(1e-4);
});

test('identity: at the likely place the surface is the likely year of each scenario', () => {
  const likely: Place = { capacity: 0, power: 0, need: 0, backFrac: 0 };
  for (const c of cases) {
    for (const unit of c.units) {
      const id = unit.name === 'existing' ? 'asFound' : unit.name;
      const usd = c.energy.scenarios.find((s) => s.id === id)?.likely.costUsd ?? Number.NaN;
      const { readUsd } = bothWays(c, unit, likely);
      expect(Math.abs(readUsd / usd - 1), `${c.visit.id} ${id}`).toBeLessThan(0.002);
    }
  }
});

test('identity: all of the loss given back is the healthy year, and the ends of the need are those of the year', () => {
  for (const c of cases) {
    const [existing] = c.units;
    if (existing === undefined) throw new Error('no unit');
    const healthy = c.energy.scenarios.find((s) => s.id === 'healthy');
    const at = (need: number) => bothWays(c, existing, { capacity: 1, power: 1, need, backFrac: 1 }).readUsd;
    expect(at(0) / (healthy?.likely.costUsd ?? Number.NaN)).toBeCloseTo(1, 2);
    expect(at(-1.2815515655446) / (healthy?.loadLow?.costUsd ?? Number.NaN)).toBeCloseTo(1, 2);
    expect(at(1.2815515655446) / (healthy?.loadHigh?.costUsd ?? Number.NaN)).toBeCloseTo(1, 2);
  }
});

test('property: more power or more need never saves money under a flat tariff', () => {
  const c = cases.find((x) => x.visit.id === 'restricted-orifice');
  const surface = c?.surfaces.existing;
  if (surface === undefined) throw new Error('no such case');
  const one = (x: number) => Float64Array.of(x);
  const usd = (lnCapacity: number, power: number, z: number) =>
    surfaceCosts(surface, {
      heatingLnCapacity: one(lnCapacity),
      heatingPower: one(power),
      coolingLnCapacity: one(lnCapacity),
      coolingPower: one(power),
      needZ: one(z),
    })[0] ?? Number.NaN;
  fc.assert(
    fc.property(between(-0.4, 0.05), between(0.8, 1.2), between(-3, 3), (lnCapacity, power, z) => {
      const here = usd(lnCapacity, power, z);
      expect(usd(lnCapacity, power + 0.05, z)).toBeGreaterThan(here);
      expect(usd(lnCapacity, power, z + 0.3)).toBeGreaterThan(here);
    }),
    { seed: 3 },
  );
});

test('property: a place beyond the reach of draws reads the edge, and nothing is ever NaN', () => {
  for (const c of cases) {
    for (const unit of c.units) {
      const columns = [-1e9, 0, 1e9].map((x) => Float64Array.of(x));
      for (const column of columns) {
        const usd = surfaceCosts(unit.surface, {
          heatingLnCapacity: column,
          heatingPower: column,
          coolingLnCapacity: column,
          coolingPower: column,
          needZ: column,
        });
        expect(Number.isFinite(usd[0])).toBe(true);
      }
    }
  }
});
