import { expect, test } from 'vitest';
import { compareChoices } from '@/lib/finance/compare-choices';
import { comparisonModel } from '@/lib/finance/comparison-model';
import { plannedYearOf, successorOf } from '@/lib/finance/successor';
import type { RepairThenReplaceChoice } from '@/lib/visit/choice';
import { near } from './checks';
import { energyOf, exampleCosts, exampleInput, leave, orifice, single, variable } from './fixtures';

const later = (replaceAfterYears: number, replaceWith?: string): RepairThenReplaceChoice => ({
  ...orifice,
  kind: 'repairThenReplace',
  id: 'later',
  replaceAfterYears,
  ...(replaceWith === undefined ? {} : { replaceWith }),
});
const energy = energyOf({ ...exampleCosts, later: exampleCosts.orifice ?? { likely: 0 } });
const compared = (choice: RepairThenReplaceChoice) => {
  const input = { ...exampleInput({ choices: [leave, orifice, choice, single, variable] }), energy };
  return { model: comparisonModel(input), choices: compareChoices(input).choices };
};
const totalOf = (choice: RepairThenReplaceChoice, id: string) =>
  compared(choice).choices.find((c) => c.id === id)?.totalTodayUsd.likely ?? Number.NaN;

test('identity: a plan that lies beyond the stay is the repair alone', () => {
  near(totalOf(later(10), 'later'), totalOf(later(10), 'orifice'), 1e-6, 'ten years, replaced after ten');
  near(totalOf(later(24), 'later'), totalOf(later(24), 'orifice'), 1e-6, 'ten years, replaced after 24');
});

test('wiring: the named replacement is the one bought, at its own price and running cost', () => {
  const { model, choices } = compared(later(3, 'variable'));
  const named = successorOf(later(3, 'variable'), model.choices, model.fallback);
  expect(named).toEqual({ quotedUsd: 14_250, scenarioId: 'variable' });
  expect(successorOf(later(3, 'nobody'), model.choices, model.fallback)).toBe(model.fallback);
  const rows = choices.find((c) => c.id === 'later')?.rows ?? [];
  // year 3: most units still run and are replaced as planned, at the price level of then
  expect(rows[3]?.expectedReplacementUsd).toBeGreaterThan(0.5 * 14_250);
  expect(rows[2]?.expectedReplacementUsd).toBeLessThan(0.2 * 14_250);
});

test('property: the planned year counts only inside the stay', () => {
  expect(plannedYearOf(later(4), 5)).toBe(4);
  expect(plannedYearOf(later(5), 5)).toBeUndefined();
  expect(plannedYearOf(leave, 5)).toBeUndefined();
});

test('identity: the quoted total by decimal and the float total agree for a planned replacement too', () => {
  const own = compared(later(3, 'variable')).choices.find((c) => c.id === 'later');
  near(Number(own?.totalTodayQuoted), own?.totalTodayUsd.likely ?? 0, 0.006, 'cents');
});
