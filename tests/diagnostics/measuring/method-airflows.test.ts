import { expect, it } from 'vitest';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { methodAirflows } from '@/lib/diagnostics/measuring/method-airflows';
import type { Run } from '@/lib/visit/run';
import '../support/matchers';
import { contextOfRun } from '../support/visit-of';

function methods(run: Partial<Run>) {
  const context = contextOfRun({ mode: 'heating', ...run }, { nominalTons: 3 });
  return methodAirflows(context, deriveRun(context));
}

// 350-450 cfm/ton (trade and rating practice), status read.
it('outside: each method is held against 350 to 450 cfm per ton by itself', () => {
  const found = methods({
    airflowCfm: 1_050,
    grilleAreaIn2: 400,
    grilleFreeAreaFrac: 0.7,
    grilleFaceFpm: 450,
    heatRiseV: 235,
    heatRiseA: 75,
    heatRiseSupplyF: 110,
    heatRiseReturnF: 74,
  });
  expect(found.map(({ id, verdict }) => [id, verdict])).toEqual([
    ['airflowDirectCfm', 'within'],
    ['airflowGrilleCfm', 'below'],
    ['airflowHeatRiseCfm', 'above'],
  ]);
  // 450 x 400 x 0.70 / 144 = 875 cfm over 3 tons
  expect(found[1]?.cfm).toBeCloseToWithin(875, 1e-9);
  expect(found[1]?.cfmPerTon).toBeCloseToWithin(875 / 3, 1e-9);
  expect((found[1]?.sdCfmPerTon ?? 0) * 3).toBeCloseToWithin(found[1]?.sdCfm ?? -1, 1e-6);
});

it('identity: without readings there is no method', () => {
  expect(methods({ grilleAreaIn2: 400 })).toEqual([]);
});
