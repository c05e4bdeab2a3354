import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  annualPercentageRate,
  aprAccuracyRange,
  type PaymentRun,
} from '@/lib/finance/annual-percentage-rate';
import { levelPayment } from '@/lib/finance/level-loan';
import { amountFinanced, quoteLoan } from '@/lib/finance/loan-quote';
import { money, moneyText } from '@/lib/finance/money';
import { type Check, coverTopic, near, num, nums, raw } from './checks';

type Machine = { count: number; first_unit_period: number; fraction: string; amount: number };

function runs(list: unknown): PaymentRun[] {
  return (list as Machine[]).map((run) => {
    const [top, bottom] = run.fraction.split('/').map(Number);
    return {
      count: run.count,
      whole: run.first_unit_period,
      fraction: (top ?? 0) / (bottom ?? 1),
      amountUsd: run.amount,
    };
  });
}

function percentOf(rate: ReturnType<typeof annualPercentageRate>): number {
  if (rate.kind === 'none') throw new Error(`no rate: ${rate.why.code}`);
  return rate.fracPerYear * 100;
}

/** General equation on the entry's own runs; printed value to its rounding, own recomputation to 1e-6 points. */
function general(c: Check): void {
  const got = percentOf(
    annualPercentageRate(
      runs(raw(c, 'inputs.machine.advances')),
      runs(raw(c, 'inputs.machine.payments')),
      num(c, 'inputs.machine.unit_periods_per_year'),
    ),
  );
  near(got, num(c, 'expected.APR_percent'), c.tolerance, c.id);
  near(got, num(c, 'recomputed.APR_percent'), 1e-6, `${c.id} recomputed`);
}

function withFee(c: Check): void {
  const fee = 12_000 - num(c, 'inputs.amount_financed');
  const quoted = quoteLoan('12000.00', {
    kind: 'levelLoan',
    rateFracPerYear: 0.0999,
    termMonths: 120,
    ...(fee > 0 ? { feeUsd: fee } : {}),
  });
  expect(quoted?.quote.paymentUsd).toBe('158.51');
  expect(quoted?.quote.lastPaymentUsd).toBe('159.39');
  near(
    percentOf(quoted?.quote.apr ?? { kind: 'none', why: { code: '-' } }),
    num(c, 'expected.APR_percent'),
    c.tolerance,
    c.id,
  );
}

const appendix = 'c1i c1ii c1iii c1iv c1v c2i c2ii c3i c3ii c4i c4ii c5i c5ii c5iii c5iv c6i c6ii c7i'.split(
  ' ',
);
const extra = 'quarterly-a quarterly-b weekly-a weekly-b weekly-c daily yearly notes-10.50'.split(' ');

describe('annual percentage rate against the outside', () => {
  coverTopic('APR (Regulation Z App. J)', 34, {
    ...Object.fromEntries(appendix.map((id) => [`apr-J-${id}`, general])),
    ...Object.fromEntries(extra.map((id) => [`apr-x-${id}`, general])),
    'apr-tolerance': (c) => {
      const exactPercent = num(c, 'inputs.exact');
      const regular = aprAccuracyRange(exactPercent / 100, false);
      const irregular = aprAccuracyRange(exactPercent / 100, true);
      near(regular.low * 100, num(c, 'expected.regular_low'), c.tolerance, 'regular low');
      near(regular.high * 100, num(c, 'expected.regular_high'), c.tolerance, 'regular high');
      near(irregular.low * 100, num(c, 'expected.irregular_low'), c.tolerance, 'irregular low');
      near(irregular.high * 100, num(c, 'expected.irregular_high'), c.tolerance, 'irregular high');
    },
    'apr-rounding-examples': (c) => {
      const range = aprAccuracyRange(num(c, 'inputs.exact') / 100, false);
      const allowed = nums(c, 'inputs.candidates').map((p) => p / 100 >= range.low && p / 100 <= range.high);
      expect(allowed).toEqual(raw(c, 'expected.allowed'));
    },
    'apr-fee-0': withFee,
    'apr-fee-299': withFee,
    'apr-fee-600': withFee,
    'apr-dealer-fee-zero-percent': (c) => {
      const [cash, financed] = [num(c, 'inputs.cash_price'), num(c, 'inputs.financed_price')];
      const dealerFeeFrac = 1 - cash / financed;
      const loan = { kind: 'levelLoan', rateFracPerYear: 0, termMonths: 60, dealerFeeFrac } as const;
      const quoted = quoteLoan(moneyText(cash), loan);
      expect(quoted?.quote.amountFinancedUsd).toBe('10000.00');
      expect(quoted?.quote.financeChargeUsd).toBe('1500.00');
      expect([quoted?.quote.paymentUsd, quoted?.quote.lastPaymentUsd]).toEqual(['191.67', '191.47']);
      near(
        percentOf(quoted?.quote.apr ?? { kind: 'none', why: { code: '-' } }),
        num(c, 'expected.APR_percent'),
        c.tolerance,
        c.id,
      );
    },
    'finance-charge-cash-discount': (c) => {
      const [cash, credit] = [num(c, 'inputs.cash_price'), num(c, 'inputs.credit_price')];
      const dealerFeeFrac = 1 - cash / credit;
      const loan = { kind: 'levelLoan', rateFracPerYear: 0, termMonths: 10, dealerFeeFrac } as const;
      const quoted = quoteLoan(moneyText(cash), loan);
      expect(Number(quoted?.quote.financeChargeUsd)).toBe(num(c, 'expected.finance_charge'));
      expect(Number(quoted?.quote.amountFinancedUsd)).toBe(num(c, 'expected.amount_financed'));
    },
    'amount-financed-formula': (c) => {
      const lent = amountFinanced({
        cashPrice: money(num(c, 'inputs.cash_price')),
        downPayment: money(num(c, 'inputs.down_payment')),
        otherFinanced: money(num(c, 'inputs.other_financed_not_finance_charge')),
        prepaidFinanceCharge: money(num(c, 'inputs.prepaid_finance_charge')),
      });
      expect(lent.toNumber()).toBe(num(c, 'expected.amount_financed'));
    },
  });
});

const once = (amountUsd: number, whole = 0): PaymentRun[] => [{ count: 1, whole, fraction: 0, amountUsd }];

describe('properties of the rate', () => {
  test('property: payments that never repay, nothing lent, and payment on the day have no rate and say so', () => {
    const why = (a: PaymentRun[], p: PaymentRun[]) => {
      const rate = annualPercentageRate(a, p, 12);
      return rate.kind === 'none' ? rate.why.code : `rate ${rate.fracPerYear}`;
    };
    expect(why(once(1000), once(999, 3))).toBe('aprNeverRepays');
    expect(why(once(0), once(10, 1))).toBe('aprNothingAdvanced');
    expect(why(once(1000), once(1100, 0))).toBe('aprNotFound');
    expect(why(once(1e-6), once(1e6, 1))).toBe('aprNotFound');
    expect(why(once(1000), once(1000, 3))).toBe('rate 0');
  });

  test('identity: the rate of an unrounded level loan without fees is its note rate, odd first period or not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.6, noNaN: true }),
        fc.integer({ min: 1, max: 240 }),
        fc.integer({ min: 0, max: 2 }),
        fc.integer({ min: 0, max: 30 }),
        (rateFracPerYear, termMonths, whole, odd) => {
          const firstPeriod = { whole, fraction: odd === 0 && whole === 0 ? 1 / 30 : odd / 30 };
          const principal = money('9876.54');
          const payment = levelPayment({ principal, rateFracPerYear, termMonths, firstPeriod }).toNumber();
          const payments = [{ count: termMonths, ...firstPeriod, amountUsd: payment }];
          const apr = percentOf(annualPercentageRate(once(9876.54), payments, 12));
          expect(Math.abs(apr - rateFracPerYear * 100)).toBeLessThan(1e-7);
        },
      ),
    );
  });

  test('property: a larger fee never lowers the rate', () => {
    const apr = (feeUsd: number) => {
      const loan = { kind: 'levelLoan', rateFracPerYear: 0.08, termMonths: 60, feeUsd } as const;
      return percentOf(quoteLoan('8000.00', loan)?.quote.apr ?? { kind: 'none', why: { code: '-' } });
    };
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4000 }), fc.integer({ min: 1, max: 3000 }), (fee, more) => {
        expect(apr(fee + more)).toBeGreaterThan(apr(fee));
      }),
    );
  });

  test('property: malformed runs are refused', () => {
    expect(() =>
      annualPercentageRate(once(1), [{ count: 0, whole: 1, fraction: 0, amountUsd: 1 }], 12),
    ).toThrow('count');
    expect(() => annualPercentageRate(once(1), once(1, 1.5), 12)).toThrow('whole');
    expect(() => annualPercentageRate(once(-1), once(1, 1), 12)).toThrow('amount');
    expect(() => annualPercentageRate(once(1), once(1, 1), 0)).toThrow('periods');
  });
});
