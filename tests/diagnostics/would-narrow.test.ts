import { describe, expect, it } from 'vitest';
import { derivedById, deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { diagnose } from '@/lib/diagnostics/diagnose';
import wording from '@/lib/diagnostics/wording/en.json';
import { supposing } from '@/lib/diagnostics/would-narrow/hypothetical-run';
import type { Unit } from '@/lib/visit/unit';
import './support/matchers';
import { contextOf, contextOfRun, healthyOf, type RunPart, visitOf } from './support/visit-of';

function narrowing(runs: readonly RunPart[], unit: Partial<Unit> = {}) {
  const visit = visitOf(runs, unit);
  const { properties } = contextOf({ ...visit, runs: [{ id: 'x', mode: 'cooling' }] });
  return diagnose({ visit, healthy: healthyOf(visit), properties }).wouldNarrow;
}

const rated: Partial<Unit> = {
  kind: 'airConditioner',
  ratings: { seerBtuPerWh: 14, cooling95Btuh: 36_000 },
};

const full = {
  mode: 'cooling',
  outdoorAirF: 92,
  returnAirF: 76,
  returnWetBulbF: 63,
  suctionPsig: 130,
  dischargePsig: 365,
  suctionLineF: 55,
  dischargeLineF: 165,
  liquidLineF: 100,
  outdoorUnitW: 2_600,
} as const satisfies RunPart;

describe('readings that would narrow the range', () => {
  it('identity: with one reading missing, the heat balance asks for just that one', () => {
    const { dischargeLineF: _, ...rest } = full;
    const first = narrowing([rest], rated)[0];
    expect(first).toMatchObject({
      code: 'narrow.heatBalance',
      values: { mode: 'cooling', readings: 'dischargeLineF' },
    });
    expect(Number(first?.values?.percent)).toBeGreaterThan(20);
  });

  it('identity: amps only: a watt reading is offered', () => {
    const { outdoorUnitW: _, ...rest } = full;
    const codes = narrowing([{ ...rest, compressorA: 11 }], rated).map((saying) => saying.code);
    expect(codes).toContain('narrow.watts');
  });

  it('identity: everything read from a rated unit: at most little is left to gain', () => {
    const all = { ...full, airflowCfm: 1_200, supplyAirF: 57, supplyWetBulbF: 55 };
    expect(narrowing([all], rated)).toEqual([]);
  });

  it('identity: unknown ratings are worth looking up', () => {
    expect(narrowing([full], { kind: 'airConditioner' }).map((saying) => saying.code)).toContain(
      'narrow.ratings',
    );
  });

  it('identity: a heat pump read in one mode is told what the other would give', () => {
    const codes = narrowing([full], { ratings: rated.ratings ?? {} }).map(
      (saying) => `${saying.code} ${saying.values?.mode}`,
    );
    expect(codes).toContain('narrow.otherMode heating');
  });

  it('identity: best first', () => {
    const gains = narrowing([{ mode: 'cooling', suctionPsig: 130, returnAirF: 75 }]).map((saying) =>
      Number(saying.values?.percent),
    );
    expect(gains.length).toBeGreaterThan(2);
    expect(gains).toEqual([...gains].sort((a, b) => b - a));
  });

  it('wiring: every group has its words', () => {
    const words: Record<string, string> = wording;
    const groups = [
      'heatBalance',
      'airSide',
      'watts',
      'liquidLine',
      'indoorAir',
      'outdoorAir',
      'otherMode',
      'ratings',
    ];
    expect(groups.filter((group) => words[`narrow.${group}`] === undefined)).toEqual([]);
  });
});

describe('supposed readings', () => {
  it('identity: what was read stays as read, what is supposed is what a healthy unit shows', () => {
    const context = contextOfRun({ mode: 'cooling', outdoorAirF: 92, returnAirF: 76, suctionPsig: 120 });
    const names = [
      'suctionPsig',
      'dischargePsig',
      'suctionLineF',
      'dischargeLineF',
      'liquidLineF',
      'outdoorUnitW',
    ] as const;
    const supposed = supposing(context, names);
    expect(supposed.run.suctionPsig).toBe(120);
    const values = deriveRun(supposed);
    expect(derivedById(values, 'liquidSubcoolingFd')?.value).toBeCloseToWithin(10, 0.3);
    const capacity = derivedById(values, 'refrigerantCapacityBtuh');
    expect(capacity?.value).toBeGreaterThan(20_000);
    expect(capacity?.value).toBeLessThan(50_000);
  });

  it('identity: in both modes a whole run can be supposed from nothing', () => {
    const names = [
      'outdoorAirF',
      'returnAirF',
      'returnWetBulbF',
      'suctionPsig',
      'dischargePsig',
      'suctionLineF',
      'dischargeLineF',
      'liquidLineF',
      'outdoorUnitW',
      'airflowCfm',
      'supplyAirF',
      'supplyWetBulbF',
    ] as const;
    const lacking = (['cooling', 'heating'] as const).map((mode) => {
      const { run } = supposing(contextOfRun({ mode }), names);
      return names.filter((name) => run[name] === undefined);
    });
    expect(lacking).toEqual([[], []]);
  });
});
