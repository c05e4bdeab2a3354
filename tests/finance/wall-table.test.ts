import { expect, test } from 'vitest';
import { compareChoices } from '@/lib/finance/compare-choices';
import { wallTable } from '@/lib/finance/shop-rules/wall-table';
import { energyOf, exampleInput, leave, single } from './fixtures';

const input = exampleInput();
const table = wallTable(input);

test('property: a larger loss is worth a dearer repair while the unit is young, and every cell is a price', () => {
  expect(table.largestPriceUsd).toHaveLength(table.agesYears.length);
  for (const row of table.largestPriceUsd) {
    expect(row).toHaveLength(table.lossFrac.length);
    expect(row.every((usd) => usd >= 0 && usd % 10 === 0)).toBe(true);
  }
  const young = table.largestPriceUsd[0] ?? [];
  expect(young[2]).toBeGreaterThan(young[0] ?? 0);
});

test('outside: one cell by the comparison itself: at its price the repair costs as much as the best of the others', () => {
  const [age, loss] = [12, 0.2];
  const usd = table.largestPriceUsd[table.agesYears.indexOf(age)]?.[table.lossFrac.indexOf(loss)] ?? 0;
  const repair = {
    kind: 'repair',
    id: 'fix',
    name: 'fix',
    actions: ['leakRepairAndRecharge'],
    priceLines: [{ kind: 'other', label: 'price', amount: 1, unitPriceUsd: usd }],
  } as const;
  const other = input.visit.choices.filter((c) => c.kind === 'replace');
  const found = 1450 * (1 + loss);
  const visit = {
    ...input.visit,
    unit: { ...input.visit.unit, manufactureYear: 2026 - age },
    choices: [
      leave,
      { ...repair, actions: [...repair.actions], priceLines: [...repair.priceLines] },
      ...other,
    ],
  };
  const energy = energyOf({
    healthy: { likely: 1450 },
    asFound: { likely: found },
    leave: { likely: found },
    fix: { likely: 1450 },
    single: { likely: 1180 },
    variable: { likely: 940 },
  });
  const { suspectedCause: _none, ...findings } = input.findings;
  const compared = compareChoices({ visit, findings, energy }).choices;
  const own = compared.find((c) => c.id === 'fix')?.totalTodayUsd.likely ?? Number.NaN;
  const best = Math.min(...compared.filter((c) => c.id !== 'fix').map((c) => c.totalTodayUsd.likely));
  expect(usd).toBeGreaterThan(0);
  expect(best - own).toBeGreaterThanOrEqual(0);
  expect(best - own).toBeLessThan(10);
  expect(other.map((c) => c.id)).toContain(single.id);
});
