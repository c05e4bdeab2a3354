import fc from 'fast-check';
import { expect, test } from 'vitest';
import { usdOf } from '@/lib/finance/money';
import { quotePromotional } from '@/lib/finance/promotional-quote';
import { near } from './checks';

const plan = { kind: 'promotional', rateFracPerYear: 0.2899, promotionMonths: 12, termMonths: 36 } as const;

test('outside: paid in time, by hand: 1,200 in twelve payments of 100 and nothing more, APR 0', () => {
  const quote = quotePromotional('1200.00', plan)?.paidInTime.quote;
  expect(quote).toMatchObject({
    paymentUsd: '100.00',
    lastPaymentUsd: '100.00',
    termMonths: 12,
    financeChargeUsd: '0.00',
    totalOfPaymentsUsd: '1200.00',
    apr: { kind: 'rate', fracPerYear: 0 },
  });
});

test('outside: not paid in time, balance by hand month by month', () => {
  const quoted = quotePromotional('1200.00', plan);
  // 33.34 a month for twelve months leaves 799.92; with interest each month from the first day
  let owed = 1200;
  for (let month = 1; month <= 12; month += 1) owed = owed * (1 + 0.2899 / 12) - 33.34;
  near(usdOf(quoted?.interestCompoundedUsd ?? '0'), owed - 799.92, 0.006, 'interest charged back');
  const runs = quoted?.notPaidInTime.quote.paymentRuns ?? [];
  expect(runs[0]).toEqual({ count: 12, paymentUsd: '33.34' });
  const i = 0.2899 / 12;
  near(usdOf(runs[1]?.paymentUsd ?? '0'), (owed * i) / (1 - (1 + i) ** -24), 0.01, 'then 24 level payments');
});

test('property: missing the promotion never costs less, and its APR never exceeds what the rate says by much', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 50_000, max: 2_000_000 }),
      fc.double({ min: 0.01, max: 0.6, noNaN: true }),
      fc.integer({ min: 1, max: 60 }),
      fc.integer({ min: 0, max: 60 }),
      (cents, rateFracPerYear, promotionMonths, more) => {
        const own = { ...plan, rateFracPerYear, promotionMonths, termMonths: promotionMonths + more };
        const quoted = quotePromotional((cents / 100).toFixed(2), own);
        const paid = usdOf(quoted?.paidInTime.quote.totalPaidUsd ?? 'x');
        const missed = usdOf(quoted?.notPaidInTime.quote.totalPaidUsd ?? 'x');
        expect(missed).toBeGreaterThanOrEqual(paid - 0.005);
        const apr = quoted?.notPaidInTime.quote.apr;
        expect(apr?.kind === 'rate' ? apr.fracPerYear : 0).toBeLessThan(rateFracPerYear + 0.01);
      },
    ),
    { numRuns: 60 },
  );
});

test('property: a promotion longer than the plan is cut to it and said so; both endings then are the same', () => {
  const cut = quotePromotional('1200.00', { ...plan, promotionMonths: 48 });
  expect(cut?.promotionMonths).toBe(36);
  expect(cut?.notes.map((n) => n.code)).toEqual(['promotionOutlastsPlan', 'promotionClearedAnyway']);
  expect(cut?.notPaidInTime.quote.totalPaidUsd).toBe(cut?.paidInTime.quote.totalPaidUsd);
});

test('property: nothing to lend, no quote', () => {
  expect(quotePromotional('1000.00', { ...plan, downPaymentUsd: 1000 })).toBeUndefined();
});
