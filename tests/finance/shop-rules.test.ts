import { expect, test } from 'vitest';
import { compareChoices } from '@/lib/finance/compare-choices';
import type { Comparison } from '@/lib/finance/comparison';
import { applyRules, type RuleFacts } from '@/lib/finance/shop-rules/apply-rules';
import { defaultShopRules, rulesOn } from '@/lib/finance/shop-rules/default-rules';
import { fittedRule, tryRules } from '@/lib/finance/shop-rules/try-rules';
import en from '@/lib/finance/wording/en.json';
import { say } from '@/lib/visit/wording';
import { exampleInput } from './fixtures';

const comparison = compareChoices(exampleInput());
const facts: RuleFacts = { comparison, ageYears: 15, newPriceUsd: 9002.05, dischargeF: 231 };
const visit = (visitId: string, over: Partial<RuleFacts> = {}) => ({ visitId, facts: { ...facts, ...over } });

test('property: without rules the lowest total is advised; leaving it is never held back', () => {
  expect(applyRules(facts, {}).choiceId).toBe('orifice');
  expect(applyRules(facts, {}).reason.code).toBe('ruleLowest');
  const strict = applyRules(facts, { smallestNetSavingUsd: 20_000 });
  expect([strict.choiceId, strict.reason.code]).toEqual(['leave', 'ruleLeave']);
});

test('property: each rule holds back what breaks it and names its figures', () => {
  const heldBy = (rules: Parameters<typeof applyRules>[1], over: Partial<RuleFacts> = {}) =>
    applyRules({ ...facts, ...over }, rules).heldBack.find((h) => h.choiceId === 'orifice')?.why;
  expect(heldBy({ largestRepairShareFrac: 0.04 })?.code).toBe('ruleDearRepair');
  expect(heldBy({ largestRepairShareFrac: 0.05 })).toBeUndefined();
  expect(heldBy({ oldestToRepairYears: 14 })?.code).toBe('ruleOldUnit');
  expect(heldBy({ oldestToRepairYears: 14, costlyRepairUsd: 406 })).toBeUndefined();
  expect(heldBy({ oldestToRepairYears: 15 })).toBeUndefined();
  expect(heldBy({ leastChanceCheapestFrac: 0.6 }, { cheapestFrac: { orifice: 0.59 } })?.code).toBe(
    'ruleSmallChance',
  );
  expect(heldBy({ leastChanceCheapestFrac: 0.6 })).toBeUndefined();
  expect(applyRules(facts, { warnDischargeF: 225 }).warnings.map((w) => w.code)).toEqual([
    'ruleHotDischarge',
  ]);
  expect(applyRules(facts, { warnDischargeF: 240 }).warnings).toEqual([]);
  const slow = applyRules(facts, {
    longestPaybackYears: 1,
    smallestNetSavingUsd: 0,
    largestRepairShareFrac: 0,
  });
  expect(slow.heldBack.map((h) => h.why.code)).toContain('ruleSlowPayback');
});

test('wiring: every rule has its sentence', () => {
  const codes = Object.keys(en).filter((code) => /^rule[A-Z]/.test(code));
  expect(codes).toHaveLength(9);
  const all = applyRules(facts, rulesOn(defaultShopRules, '2026-11-03'));
  const sayings = [all.reason, ...all.warnings, ...all.heldBack.map((h) => h.why)];
  expect(sayings.map((s) => say(en, s)).filter((s) => s.includes('{') || !s.includes(' '))).toEqual([]);
});

test('property: rules on a date are those in force; before the first there are none', () => {
  expect(defaultShopRules.invented).toBe(true);
  expect(rulesOn(defaultShopRules, '2026-11-03').warnDischargeF).toBe(225);
  expect(rulesOn(defaultShopRules, '2020-01-01')).toEqual({});
});

test('outside: a changed rule over two past visits, by hand', () => {
  const young = { ageYears: 8 };
  const tried = tryRules([visit('old'), visit('young', young)], {}, { oldestToRepairYears: 10 });
  const total = (id: string) =>
    comparison.choices.find((c) => c.id === id)?.totalTodayUsd.likely ?? Number.NaN;
  const dearer = total('variable') - total('orifice');
  expect(tried.flips).toEqual([{ visitId: 'old', fromId: 'orifice', toId: 'variable', costsUsd: dearer }]);
  expect([tried.visits, tried.meanCostBeforeUsd]).toEqual([2, 0]);
  expect(tried.meanCostAfterUsd).toBeCloseTo(dearer / 2, 9);
  expect(tryRules([visit('old')], {}, {}).flips).toEqual([]);
});

test('property: the fitted rule is never worse than either rule customers hear, and none without cases', () => {
  const dear = (id: string, usd: number): Comparison => ({
    ...comparison,
    choices: comparison.choices.map((c) =>
      c.id === id
        ? {
            ...c,
            priceUsd: String(usd),
            totalTodayUsd: { ...c.totalTodayUsd, likely: c.totalTodayUsd.likely + usd },
          }
        : c,
    ),
  });
  const visits = [
    visit('a'),
    visit('b', { ageYears: 4, comparison: dear('orifice', 2500) }),
    visit('c', { ageYears: 9, comparison: dear('orifice', 900) }),
    visit('d', { ageYears: 20, comparison: dear('variable', 3000) }),
  ];
  const fitted = fittedRule(visits);
  expect(fitted?.visits).toBe(4);
  expect(fitted?.meanRegretUsd).toBeGreaterThanOrEqual(0);
  expect(fitted?.meanRegretUsd).toBeLessThanOrEqual(fitted?.ageTimesPriceRegretUsd ?? -1);
  expect(fitted?.meanRegretUsd).toBeLessThanOrEqual(fitted?.halfPriceRegretUsd ?? -1);
  expect(fittedRule([])).toBeUndefined();
});
