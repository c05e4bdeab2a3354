import { expect, test } from 'vitest';
import { costKey, scenarioCosts } from '@/lib/finance/scenario-costs';
import { energyOf } from './fixtures';

test('wiring: every scenario, and every repair under each cause it treats, has its costs', () => {
  const energy = energyOf({ asFound: { likely: 2000 }, fix: { likely: 1500, mild: 1400, severe: 1600 } });
  const byCause = [
    {
      cause: 'lowCharge' as const,
      frac: 0.5,
      recoveredFrac: { low: 0.5, likely: 0.6, high: 0.7 },
      costUsd: { likely: 1450, mild: 1400, severe: 1500 },
    },
  ];
  const scenarios = energy.scenarios.map((s) => (s.id === 'fix' ? { ...s, byCause } : s));
  const costs = scenarioCosts({ ...energy, scenarios });
  expect(costs.map((c) => [c.key, c.id, c.costs.likely])).toEqual([
    ['asFound', 'asFound', 2000],
    ['fix', 'fix', 1500],
    ['fix|lowCharge', 'fix', 1450],
  ]);
  expect(costKey('fix', undefined)).toBe('fix');
});
