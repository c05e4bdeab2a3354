import { expect, test } from 'vitest';
import {
  type MeasuredRepair,
  promisesKept,
  successFracOf,
  successRates,
  verdictOf,
} from '@/lib/finance/outcomes/success-rate';
import { betaQuantile } from '@/lib/math/distributions';
import { estimate } from '@/lib/math/estimate';
import type { CauseId } from '@/lib/visit/cause';

const repair = (backUsd: number, cause: CauseId = 'lowCharge', lossUsd = 200): MeasuredRepair => ({
  visitId: 'v',
  cause,
  lossUsd,
  healthyUsd: 1000,
  measuredUsd: estimate(backUsd - 20, backUsd, backUsd + 20),
  promisedUsd: estimate(80, 120, 160),
});

test('outside: the beta quantile against closed forms: uniform, power and arcsine laws', () => {
  // Beta(1,1) is uniform; Beta(a,1) has p^(1/a); Beta(1,b) has 1-(1-p)^(1/b); Beta(1/2,1/2) is the arcsine law. Status: computed.
  for (const p of [0.1, 0.5, 0.9]) {
    expect(betaQuantile(p, 1, 1)).toBeCloseTo(p, 12);
    expect(betaQuantile(p, 3, 1)).toBeCloseTo(p ** (1 / 3), 12);
    expect(betaQuantile(p, 1, 4)).toBeCloseTo(1 - (1 - p) ** (1 / 4), 12);
    expect(betaQuantile(p, 0.5, 0.5)).toBeCloseTo(Math.sin((Math.PI * p) / 2) ** 2, 12);
  }
});

test('property: more of the same narrows the rate around the share counted; none and all stay inside 0 and 1', () => {
  const width = (worked: number, judged: number) => {
    const { low, high } = successFracOf(worked, judged);
    return high - low;
  };
  expect(width(80, 100)).toBeLessThan(width(8, 10));
  // A binomial share of 0.8 over 100 has a standard error of 0.04: its 10 to 90 % points are 2 x 1.2816 x 0.04 apart.
  expect(width(80, 100)).toBeCloseTo(2 * 1.2816 * 0.04, 2);
  expect(successFracOf(80, 100).likely).toBeCloseTo(0.8, 2);
  expect(successFracOf(3, 3).high).toBeLessThan(1);
  expect(successFracOf(0, 3).low).toBeGreaterThan(0);
  expect(successFracOf(1, 4).low).toBeCloseTo(1 - successFracOf(3, 4).high, 10);
  expect(() => successFracOf(2, 1)).toThrow(/2 of 1/);
});

test('property: half the loss back counts as worked; a loss too small to tell is not judged', () => {
  expect([repair(100), repair(99), repair(5, 'lowCharge', 19)].map(verdictOf)).toEqual([
    'worked',
    'failed',
    'notJudged',
  ]);
});

test('outside: rates by cause, counted by hand', () => {
  const { all, byCause } = successRates([
    repair(150),
    repair(10),
    repair(180),
    repair(190, 'lowIndoorAirflow'),
    repair(1, 'overcharge', 3),
  ]);
  expect([all?.judged, all?.worked, all?.few]).toEqual([4, 3, true]);
  expect(byCause.map((r) => [r.cause, r.judged, r.worked])).toEqual([
    ['lowCharge', 3, 2],
    ['lowIndoorAirflow', 1, 1],
  ]);
  expect(successRates([]).all).toBeUndefined();
  expect(successRates(Array.from({ length: 10 }, () => repair(150))).all?.few).toBe(false);
});

test('outside: promised against measured, by hand', () => {
  const { promisedUsd: _none, ...unpromised } = repair(500);
  expect(promisesKept([repair(100), repair(20), unpromised])).toEqual({
    count: 2,
    meanPromisedUsd: 120,
    meanMeasuredUsd: 60,
    insideCount: 1,
  });
  expect(promisesKept([unpromised])).toBeUndefined();
});
