import { expect, test } from 'vitest';
import { causeMove, causeTable, totalPart } from '@/lib/finance/cause-table';
import { type ComparisonModel, comparisonModel, outcomeOf } from '@/lib/finance/comparison-model';
import { Z_10_90 } from '@/lib/math/estimate';
import { near } from './checks';
import { chancesOf, exampleInput, leave, orifice, single } from './fixtures';

const model: ComparisonModel = {
  ...comparisonModel(exampleInput({ choices: [leave, orifice, single] })),
  chances: chancesOf(['meteringRestriction', 0.6], ['lowCharge', 0.3], ['none', 0.1]),
};
const table = causeTable(model);

test('identity: the mean over the causes is the likely total', () => {
  expect(table).toHaveLength(3);
  for (const [i, outcomes] of table.entries()) {
    const priced = model.choices[i];
    const mean = outcomes.reduce((sum, o) => sum + o.frac * o.totalTodayUsd, 0);
    const likely = priced === undefined ? 0 : outcomeOf(model, priced, model.likely).totalTodayUsd;
    near(mean, likely, 1e-6, priced?.choice.id ?? '');
  }
});

test('property: a repair aimed at another cause gives nothing back and costs its price', () => {
  const repair = table[1] ?? [];
  const left = table[0] ?? [];
  near((repair[1]?.totalTodayUsd ?? 0) - (left[1]?.totalTodayUsd ?? 0), 3 * 135, 1e-6, 'low charge');
  near((repair[2]?.totalTodayUsd ?? 0) - (left[2]?.totalTodayUsd ?? 0), 3 * 135, 1e-6, 'nothing wrong');
  expect(repair[0]?.totalTodayUsd).toBeLessThan(left[0]?.totalTodayUsd ?? 0);
});

test('outside: ends of a two-sided case by hand', () => {
  const even = { totalTodayUsd: 0, energyUsd: 0 };
  const at = (frac: number, usd: number) => ({
    frac,
    curedFrac: 0,
    totalTodayUsd: usd,
    ifCured: even,
    ifNot: { totalTodayUsd: usd, energyUsd: 0 },
  });
  const move = causeMove([at(0.5, -100), at(0.5, 100)], undefined, totalPart);
  near(move.high, Z_10_90 * 100, 1e-9, 'half the time 100 up: root of twice 0.5 x 100 squared');
  near(move.low, -Z_10_90 * 100, 1e-9, 'and down');
  const none = causeMove([at(1, 40)], [at(1, 40)], totalPart);
  expect([none.low, none.high]).toEqual([0, 0]);
});

test('property: right and wrong cause stand inside the range of a repair', () => {
  const move = causeMove(table[1] ?? [], table[0] ?? [], totalPart);
  expect(move.low).toBeLessThan(0);
  expect(move.high).toBeGreaterThan(0);
});
