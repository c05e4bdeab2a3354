import { expect, test } from 'vitest';
import { appraise } from '@/lib/appraise/appraise';
import { appraiseRepair } from '@/lib/appraise/appraise-repair';
import { pastFacts } from '@/lib/appraise/past-visit';
import { verdictOf } from '@/lib/finance/outcomes/success-rate';
import { applyRules } from '@/lib/finance/shop-rules/apply-rules';
import { demoFiles } from './demo-files';

test('wiring: a past visit has the totals of its appraisal, its chances sum to one, and a rule can judge it', () => {
  const visit = demoFiles.find((one) => one.id === 'restricted-orifice');
  if (visit === undefined) throw new Error('no such demo visit');
  const { rules } = pastFacts(visit);
  const totals = (choices: typeof rules.comparison.choices) => choices.map((c) => [c.id, c.totalTodayUsd]);
  expect(totals(rules.comparison.choices)).toEqual(totals(appraise(visit).comparison.choices));
  const chances = Object.values(rules.cheapestFrac ?? {});
  expect(chances.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
  expect(rules.ageYears).toBe(Number(visit.visitDate.slice(0, 4)) - (visit.unit.manufactureYear ?? 0));
  expect(applyRules(rules, { smallestNetSavingUsd: 20_000 }).choiceId).toBe('leave');
});

test('wiring: the demo has a repair that was read again, and it is judged by what the readings show', () => {
  const again = demoFiles.filter((visit) => appraiseRepair(visit).kind === 'repair');
  expect(again.map((visit) => visit.id)).toContain('closed-registers');
  const found = again.flatMap((visit) => {
    const { repair } = pastFacts(visit);
    return repair === undefined ? [] : [{ visitId: visit.id, ...repair }];
  });
  expect(found).toHaveLength(again.length);
  const registers = found.find((one) => one.visitId === 'closed-registers');
  expect(registers?.cause).toBe('lowIndoorAirflow');
  expect(registers === undefined ? 'missing' : verdictOf(registers)).toBe('worked');
});
