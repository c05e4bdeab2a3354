import { expect, test } from 'vitest';
import { compareChoices } from '@/lib/finance/compare-choices';
import { waysToPay } from '@/lib/finance/ways-to-pay';
import en from '@/lib/finance/wording/en.json';
import type { Choice, Financing } from '@/lib/visit/choice';
import { say } from '@/lib/visit/wording';
import { near } from './checks';
import { energyOf, exampleCosts, exampleInput, leave, loan, single } from './fixtures';

const promotional: Financing = {
  kind: 'promotional',
  rateFracPerYear: 0.2899,
  promotionMonths: 18,
  termMonths: 60,
  dealerFeeFrac: 0.1,
};
const choice: Choice = { ...single, financing: loan, financingOffers: [{ kind: 'cash' }, promotional] };
const ways = waysToPay(choice, '9000.00', '2026-11-03');

test('wiring: every way stands beside the others, the one that counts first', () => {
  expect(ways.map((w) => [w.kind, w.counted])).toEqual([
    ['levelLoan', true],
    ['cash', false],
    ['promotional', false],
  ]);
  expect(ways[2]?.promotion?.notPaidInTime.totalPaidUsd).not.toBe(
    ways[2]?.promotion?.paidInTime.totalPaidUsd,
  );
  expect(waysToPay(leave, '0.00', '2026-11-03')).toEqual([]);
});

test('outside: a quoted payment calls for down payment, terms of repayment and APR (12 CFR 1026.24(d)(2), secondary)', () => {
  const credit = ways.filter((w) => w.loan !== undefined);
  expect(credit).toHaveLength(2);
  for (const way of credit) {
    const codes = way.disclosures.map((d) => d.code);
    expect(codes.slice(0, 3)).toEqual(['creditEstimate', 'creditDown', 'creditTerms']);
    expect(codes).toContain('creditApr');
    expect(codes).toContain('creditTotal');
  }
  expect(ways[2]?.disclosures.map((d) => d.code)).toContain('creditDeferred');
  expect(ways[2]?.disclosures.map((d) => d.code)).toContain('notInTime.creditTerms');
  expect(ways[1]?.disclosures).toEqual([]);
});

test('wiring: every disclosure has its sentence, without gaps', () => {
  const sentences = ways.flatMap((w) => w.disclosures).map((d) => say(en, d));
  expect(sentences.length).toBeGreaterThan(10);
  expect(sentences.filter((s) => s.includes('{') || !s.includes(' '))).toEqual([]);
});

test('outside: a dealer fee of a tenth raises what is lent by a ninth, and counts as finance charge', () => {
  const quote = ways[2]?.promotion?.paidInTime;
  expect(quote?.dealerFeeUsd).toBe('1000.00');
  expect(quote?.amountFinancedUsd).toBe('9000.00');
  expect(quote?.financeChargeUsd).toBe('1000.00');
});

test('identity: the totals count the ending that is expected', () => {
  const with_ = (expectedEnding: 'paidInTime' | 'notPaidInTime') => {
    const own = { ...single, financing: { ...promotional, expectedEnding } };
    const input = { ...exampleInput({ choices: [leave, own] }), energy: energyOf(exampleCosts) };
    return compareChoices(input).choices[1];
  };
  const [paid, missed] = [with_('paidInTime'), with_('notPaidInTime')];
  expect(missed?.totalTodayUsd.likely).toBeGreaterThan(paid?.totalTodayUsd.likely ?? Number.NaN);
  near(Number(missed?.totalTodayQuoted), missed?.totalTodayUsd.likely ?? 0, 0.006, 'decimal and float');
  expect(paid?.loan).toEqual(paid?.waysToPay?.[0]?.loan);
});

test('outside: a rebate put against the loan ends it earlier, by hand for a loan without interest', () => {
  const free = { kind: 'levelLoan', rateFracPerYear: 0, termMonths: 10 } as const;
  const price = { kind: 'other', label: 'price', amount: 1, unitPriceUsd: 1000 } as const;
  const rebates = [{ label: 'utility', amountUsd: 250, paidAfterMonths: 3, toPrincipal: true }];
  const own: Choice = { ...single, priceLines: [price], rebates, financing: free };
  const rows = compareChoices(exampleInput({ choices: [leave, own] })).choices[1]?.rows ?? [];
  // 100 a month; 700 owed after three, 450 after the rebate: four more of 100 and one of 50
  near(rows[1]?.loanUsd ?? 0, 750, 1e-9, 'paid in all');
  near(rows[1]?.upFrontUsd ?? 1, 0, 1e-9, 'no cash back');
});

test('property: a first payment dated before the loan starts is left out and said so; a later one costs more', () => {
  const dated = (firstPaymentDate: string) =>
    waysToPay({ ...single, financing: { ...loan, firstPaymentDate } }, '9000.00', '2026-11-03')[0];
  expect(dated('2026-11-03')?.notes).toEqual([{ code: 'firstPaymentTooEarly' }]);
  expect(dated('2026-12-03')?.loan).toEqual(ways[0]?.loan);
  expect(Number(dated('2027-02-10')?.loan?.paymentUsd)).toBeGreaterThan(Number(ways[0]?.loan?.paymentUsd));
  const apr = dated('2027-02-10')?.loan?.apr;
  near(apr?.kind === 'rate' ? apr.fracPerYear : 0, 0.0959, 0.003, 'the fee spread over a little more time');
});
