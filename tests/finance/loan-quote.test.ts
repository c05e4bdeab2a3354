import fc from 'fast-check';
import { expect, test } from 'vitest';
import { partYearRate, presentValueFactor } from '@/lib/finance/discount-factors';
import { balanceAfter, quoteLoan } from '@/lib/finance/loan-quote';
import { exact, usdOf } from '@/lib/finance/money';

const loan = { kind: 'levelLoan', rateFracPerYear: 0.0999, termMonths: 120 } as const;

test('outside: a quote by hand from the schedule of 12,000 at 9.99 % over 120 months', () => {
  // payment 158.51, last 159.39, total 19,022.08: reference entry loan-cents-12000-0.0999-120; the rest is sums
  const quoted = quoteLoan('13500.00', { ...loan, downPaymentUsd: 1500, feeUsd: 299 });
  expect(quoted?.quote).toMatchObject({
    cashPriceUsd: '13500.00',
    downPaymentUsd: '1500.00',
    amountFinancedUsd: '11701.00',
    paymentUsd: '158.51',
    lastPaymentUsd: '159.39',
    totalOfPaymentsUsd: '19022.08',
    financeChargeUsd: '7321.08',
    totalPaidUsd: '20821.08',
  });
  expect(quoted?.upFront.toFixed(2)).toBe('1799.00');
  expect(balanceAfter(quoted?.schedule ?? fail(), 60).toFixed(2)).toBe('7462.61');
  expect(balanceAfter(quoted?.schedule ?? fail(), 120).toFixed(2)).toBe('0.00');
});

function fail(): never {
  throw new Error('no loan');
}

test('property: no loan is left when the down payment covers the price', () => {
  expect(quoteLoan('1500.00', { ...loan, downPaymentUsd: 1500 })).toBeUndefined();
  expect(quoteLoan('0.00', loan)).toBeUndefined();
  expect(quoteLoan('1500.01', { ...loan, downPaymentUsd: 1500 })?.quote.totalOfPaymentsUsd).toBe('0.01');
});

test('property: a fee that takes all that is lent has no rate and says so', () => {
  const quote = quoteLoan('1000.00', { ...loan, feeUsd: 1000 })?.quote;
  expect(quote?.apr).toEqual({ kind: 'none', why: { code: 'aprNothingAdvanced' } });
  expect(quote?.amountFinancedUsd).toBe('0.00');
});

test('identity: amount financed + finance charge = payments; price + finance charge = everything paid', () => {
  const cents = (max: number) => fc.integer({ min: 0, max }).map((c) => c / 100);
  fc.assert(
    fc.property(
      fc.integer({ min: 300_000, max: 3_000_000 }).map((c) => exact(c).div(100).toFixed(2)),
      cents(200_000),
      cents(50_000),
      fc.double({ min: 0, max: 0.6, noNaN: true }),
      fc.integer({ min: 1, max: 240 }),
      (price, downPaymentUsd, feeUsd, rateFracPerYear, termMonths) => {
        const terms = { kind: 'levelLoan', rateFracPerYear, termMonths, downPaymentUsd, feeUsd } as const;
        const quote = quoteLoan(price, terms)?.quote ?? fail();
        const sum = (...parts: string[]) => parts.reduce((a, p) => a.plus(p), exact(0)).toFixed(2);
        expect(sum(quote.amountFinancedUsd, quote.financeChargeUsd)).toBe(quote.totalOfPaymentsUsd);
        expect(sum(price, quote.financeChargeUsd)).toBe(quote.totalPaidUsd);
        expect(quote.apr.kind === 'rate' && quote.apr.fracPerYear > rateFracPerYear - 1e-3).toBe(true);
      },
    ),
  );
});

test('identity: a loan at the discount rate without fees is worth its cash price', () => {
  // each payment is discounted at its own month, (1 + d)^(-m/12); the note rate that matches a yearly d is
  // 12 ((1 + d)^(1/12) - 1). Rounding the payment moves the value by less than half a cent a month.
  fc.assert(
    fc.property(
      fc.integer({ min: 50_000, max: 2_500_000 }).map((c) => exact(c).div(100).toFixed(2)),
      fc.double({ min: 0.001, max: 0.3, noNaN: true }),
      fc.integer({ min: 1, max: 180 }),
      (price, d, termMonths) => {
        const rateFracPerYear = 12 * partYearRate(d, 12);
        const { schedule } = quoteLoan(price, { kind: 'levelLoan', rateFracPerYear, termMonths }) ?? fail();
        const value = schedule.rows.reduce(
          (a, r) => a + usdOf(r.payment) * presentValueFactor(d, r.month / 12),
          0,
        );
        expect(Math.abs(value - Number(price))).toBeLessThan(0.005 * termMonths + 0.01);
      },
    ),
  );
});
