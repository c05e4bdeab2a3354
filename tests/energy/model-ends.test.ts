import { describe, expect, it } from 'vitest';
import { modelEnds } from '@/lib/energy/model-ends';
import { energyOf, exampleVisit, scenarioNamed } from './example-visit';

const load = {
  heatingBtuhPerF: 0,
  heatingBalanceF: 0,
  coolingBtuhPerF: 0,
  coolingBalanceF: 0,
  heatingRoomF: 70,
  coolingRoomWetBulbF: 63,
  basis: 'assumed' as const,
  source: '',
};

describe('identity: ends of what is assumed', () => {
  it('independent parts move a linear cost by their root sum of squares [worked by hand: 3, 4, 12 make 13]', () => {
    const ends = modelEnds(
      (m) => ({
        load: {
          ...load,
          heatingBtuhPerF: 3 * (m.heatingSlope ?? 0),
          heatingBalanceF: 4 * (m.heatingBalance ?? 0),
        },
        frostRatio: 12 * (m.frost ?? 0),
      }),
      (model) => 100 + model.load.heatingBtuhPerF + model.load.heatingBalanceF + (model.frostRatio ?? 0),
    );
    const usd = (m: typeof ends.low) =>
      100 + m.load.heatingBtuhPerF + m.load.heatingBalanceF + (m.frostRatio ?? 0);
    expect(usd(ends.low)).toBeCloseTo(87, 9);
    expect(usd(ends.high)).toBeCloseTo(113, 9);
  });

  it('a part that stands alone moves all its way', () => {
    const ends = modelEnds(
      (m) => ({ load, frostRatio: 5 * (m.frost ?? 0) }),
      (model) => model.frostRatio ?? 0,
    );
    expect([ends.low.frostRatio, ends.high.frostRatio]).toEqual([-5, 5]);
  });
});

describe('property: ranges of the year', () => {
  const wide = (
    key: 'frostRatio' | 'cyclicRatio' | 'heatLossPerTon',
    low: number,
    likely: number,
    high: number,
  ) =>
    scenarioNamed(
      energyOf(exampleVisit({ assumptions: [{ key, low, likely, high, source: 'test' }] })),
      'asFound',
    );
  const usual = scenarioNamed(energyOf(exampleVisit()), 'asFound');
  const width = (s: typeof usual) => s.costUsd.high - s.costUsd.low;

  it('a wider assumption about cycling, frost or heat loss widens the cost and leaves the likely one', () => {
    for (const wider of [
      wide('frostRatio', 0.1, 1, 4),
      wide('cyclicRatio', 0.1, 1, 3),
      wide('heatLossPerTon', 100, 204.48, 330),
    ]) {
      expect(wider.likely.costUsd).toBeCloseTo(usual.likely.costUsd, 9);
      expect(width(wider)).toBeGreaterThan(width(usual));
    }
  });

  it('more frost or more cycling never lowers the cost', () => {
    expect(wide('frostRatio', 1, 2, 3).likely.costUsd).toBeGreaterThan(usual.likely.costUsd);
    expect(wide('cyclicRatio', 1, 2, 3).likely.costUsd).toBeGreaterThan(usual.likely.costUsd);
  });
});
