import { describe, expect, test } from 'vitest';
import { headlineOf } from '@/components/appraisal/answer-view';
import type { Comparison } from '@/lib/finance/comparison';
import { orificeInput } from '../sheet/fixtures/orifice-heat-pump';

const headline = (change: Partial<Comparison>, safe: boolean) =>
  headlineOf({
    ...orificeInput,
    findings: safe ? { ...orificeInput.findings, flags: [] } : orificeInput.findings,
    comparison: { ...orificeInput.comparison, ...change },
  });

describe('headlineOf', () => {
  test('wiring: what costs about the same is named, leaving it too, when nothing is unsafe', () => {
    expect(headline({ lowestTotalId: 'leave', aboutTheSameIds: ['clean-orifice'] }, true)).toBe(
      'About the same on money: Leave it as it is and Clean the orifice, new filter-drier. The lowest is about $15,500 (between $13,000 and $18,500) over 7 years',
    );
  });

  test('wiring: while something is unsafe that comes first, and leaving it is no equal', () => {
    expect(
      headline({ lowestTotalId: 'leave', aboutTheSameIds: ['clean-orifice', 'replace-single'] }, false),
    ).toBe(
      'A safety fault comes first. About the same on money: Clean the orifice, new filter-drier and New single-speed heat pump. The lowest is about $15,500 (between $13,000 and $18,500) over 7 years',
    );
    expect(headline({ lowestTotalId: 'leave', aboutTheSameIds: ['clean-orifice'] }, false)).toMatch(
      /^A safety fault comes first\. About the same on money as leaving it: Clean the orifice, new filter-drier\./,
    );
  });

  test('wiring: where none is alike and none recommended, the lowest is told as likely only', () => {
    expect(headline({ aboutTheSameIds: [] }, true)).toMatch(
      /^Open on money\. The lowest on the likely numbers is Clean the orifice, new filter-drier: about /,
    );
  });
});
