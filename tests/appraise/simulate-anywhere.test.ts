import { afterEach, expect, test, vi } from 'vitest';
import { appraiseWith } from '@/lib/appraise/appraise-with';
import { simulateVisit } from '@/lib/appraise/simulate-visit';
import { climateFor } from '@/lib/energy/climate';
import type { Simulation } from '@/lib/finance/simulate';
import { demoFiles } from './demo-files';

afterEach(() => vi.restoreAllMocks());

const SEED = 20_260_101;
const simulations = (draws: number): Simulation[] =>
  demoFiles.map((visit) => {
    const climate = climateFor(visit.site.climate, visit.site.stateCode);
    return simulateVisit(appraiseWith(visit, climate), climate, draws, SEED);
  });
const dollars = (s: Simulation): number[] =>
  s.choices.flatMap((c) => [
    Math.round(c.meanTodayUsd),
    Math.round(c.totalTodayUsd.low),
    Math.round(c.totalTodayUsd.likely),
    Math.round(c.totalTodayUsd.high),
    Math.round(c.expectedRegretUsd),
    Math.round(c.cheapestFrac * s.draws),
  ]);

test('property: an engine whose exponentials and logarithms differ in the twelfth digit gives the same dollars', () => {
  // browsers may differ in the last of sixteen digits; this is a thousand times more, up for some values, down for others
  const here = simulations(300);
  const { exp, log, pow } = Math;
  let calls = 0;
  const off = (x: number): number => {
    calls += 1;
    return x * (1 + (calls % 2 === 0 ? 1e-12 : -1e-12));
  };
  vi.spyOn(Math, 'exp').mockImplementation((x) => off(exp(x)));
  vi.spyOn(Math, 'log').mockImplementation((x) => off(log(x)));
  vi.spyOn(Math, 'pow').mockImplementation((x, y) => off(pow(x, y)));
  const there = simulations(300);
  expect(calls).toBeGreaterThan(100_000);
  expect(there.map(dollars)).toEqual(here.map(dollars));
  const means = (all: Simulation[]) => all.flatMap((s) => s.choices.map((c) => c.meanTodayUsd));
  const moved = means(there).map((usd, i) => Math.abs(usd / (means(here)[i] ?? 0) - 1));
  expect(Math.max(...moved)).toBeGreaterThan(0);
  expect(Math.max(...moved)).toBeLessThan(1e-9);
});
