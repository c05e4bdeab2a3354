import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deferredInterest } from '@/lib/finance/deferred-interest';
import { levelFactor } from '@/lib/finance/discount-factors';
import { levelLoan, levelPayment, loanWithLumps, loanWithPayment } from '@/lib/finance/level-loan';
import { exact, money } from '@/lib/finance/money';
import { type Check, checkOf, coverTopic, near, num, nums, raw } from './checks';

function inCents(c: Check): void {
  const loan = levelLoan({
    principal: money(num(c, 'inputs.principal')),
    rateFracPerYear: num(c, 'inputs.annual_rate'),
    termMonths: num(c, 'inputs.months'),
  });
  const row = (name: string) => {
    const expected = nums(c, `expected.${name}`);
    const got = loan.rows[(expected[0] ?? 0) - 1];
    expect([got?.month, got?.payment, got?.interest, got?.principal, got?.balance].map(Number), name).toEqual(
      expected,
    );
  };
  expect(loan.payment.toNumber()).toBe(num(c, 'expected.payment'));
  expect(loan.lastPayment.toNumber()).toBe(num(c, 'expected.last_payment'));
  expect(loan.totalInterest.toNumber()).toBe(num(c, 'expected.total_interest'));
  expect(loan.totalOfPayments.toNumber()).toBe(num(c, 'expected.total_of_payments'));
  for (const name of ['row_1', 'row_middle', 'row_last']) row(name);
}

describe('loans against the outside', () => {
  coverTopic('loans', 9, {
    'loan-odd-first-36d': (c) => {
      const payment = levelPayment({
        principal: money(num(c, 'inputs.principal')),
        rateFracPerYear: num(c, 'inputs.annual_rate'),
        termMonths: num(c, 'inputs.months'),
        firstPeriod: { whole: 1, fraction: (num(c, 'inputs.days_to_first') - 30) / 30 },
      });
      near(payment.toNumber(), num(c, 'expected.payment'), c.tolerance, c.id);
    },
    'loan-payments-in-advance': (c) => {
      // k payments at closing leave n - k at month ends: P = payment x (k + UPV(n - k))
      const [i, k] = [num(c, 'inputs.annual_rate') / 12, num(c, 'inputs.paid_at_closing')];
      const payment = num(c, 'inputs.principal') / (k + levelFactor(i, num(c, 'inputs.months') - k));
      near(payment, num(c, 'expected.payment'), c.tolerance, c.id);
    },
    'loan-odd-first-45d-20d': (c) => {
      const payment = (whole: number, fraction: number) =>
        levelPayment({
          principal: money(num(c, 'inputs.principal')),
          rateFracPerYear: num(c, 'inputs.annual_rate'),
          termMonths: num(c, 'inputs.months'),
          firstPeriod: { whole, fraction },
        }).toNumber();
      // the entry's tolerance is for the rate; its payments are printed to 4 decimals
      near(payment(1, 15 / 30), num(c, 'expected.payment_45d'), 5e-5, '45 days');
      near(payment(0, 20 / 30), num(c, 'expected.payment_20d'), 5e-5, '20 days');
    },
    'loan-cents-12000-0.0999-120': inCents,
    'loan-cents-9500-0.0725-84': inCents,
    'loan-cents-2500-0.0824-12': inCents,
    'loan-cents-11500-0-60': inCents,
    'loan-unrounded-vs-cents': (c) => {
      const terms = {
        principal: money(num(c, 'inputs.principal')),
        rateFracPerYear: num(c, 'inputs.annual_rate'),
        termMonths: num(c, 'inputs.months'),
      };
      const unrounded = levelPayment(terms).times(terms.termMonths).minus(terms.principal).toNumber();
      near(unrounded, num(c, 'expected.unrounded_interest'), c.tolerance, 'unrounded');
      expect(levelLoan(terms).totalInterest.toNumber()).toBe(num(c, 'expected.cents_interest'));
      expect(levelLoan(terms).lastPayment.toNumber()).toBe(num(c, 'expected.last_payment'));
    },
    'deferred-interest-18m': (c) => {
      const plan = (payment: string) =>
        deferredInterest(
          money(num(c, 'inputs.principal')),
          num(c, 'inputs.annual_rate'),
          num(c, 'inputs.months'),
          money(payment),
        );
      expect(plan('444.45').clearingPayment.toFixed(2)).toBe('444.45');
      expect(
        [plan('444.45').left, plan('444.45').interestSimple, plan('444.45').interestCompounded].map(Number),
      ).toEqual([0, 0, 0]);
      const cases = ['440', '160'];
      expect(cases).toHaveLength(2);
      for (const pay of cases) {
        expect(plan(pay).left.toNumber()).toBe(num(c, `expected.pay_${pay}.left`));
        near(
          plan(pay).interestSimple.toNumber(),
          num(c, `expected.pay_${pay}.simple`),
          c.tolerance,
          'simple',
        );
        near(
          plan(pay).interestCompounded.toNumber(),
          num(c, `expected.pay_${pay}.compounded`),
          c.tolerance,
          'compounded',
        );
      }
    },
  });
});

describe('schedules', () => {
  test('outside: the loan on which half-up and half-even part', () => {
    const c = checkOf('loan-half-up-vs-half-even');
    const loan = levelLoan({ principal: money(1050), rateFracPerYear: 0.06, termMonths: 12 });
    expect(loan.payment.toNumber()).toBe(num(c, 'expected.half_up.payment'));
    expect(loan.lastPayment.toNumber()).toBe(num(c, 'expected.half_up.last'));
    expect(loan.totalInterest.toNumber()).toBe(num(c, 'expected.half_up.interest'));
    expect(raw(c, 'expected.half_up')).not.toEqual(raw(c, 'expected.half_even'));
  });

  const terms = fc.record({
    principal: fc.integer({ min: 1, max: 9e6 }).map((c) => money(exact(c).div(100))),
    rateFracPerYear: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 0.6, noNaN: true })),
    termMonths: fc.integer({ min: 1, max: 240 }),
  });

  test('property: every schedule adds up to the cent, ends at zero and never owes more than the month before', () => {
    fc.assert(
      fc.property(terms, (t) => {
        const loan = levelLoan(t);
        const total = loan.rows.reduce((a, r) => a.plus(r.payment), exact(0));
        const principal = loan.rows.reduce((a, r) => a.plus(r.principal), exact(0));
        expect(loan.rows).toHaveLength(t.termMonths);
        expect(total.eq(loan.totalOfPayments)).toBe(true);
        expect(principal.eq(t.principal)).toBe(true);
        expect(total.eq(t.principal.plus(loan.totalInterest))).toBe(true);
        expect(loan.rows.at(-1)?.balance.isZero()).toBe(true);
        expect(loan.rows.every((r, k) => r.balance.lte(loan.rows[k - 1]?.balance ?? t.principal))).toBe(true);
        expect(loan.rows.every((r) => r.payment.gte(0) && r.payment.decimalPlaces() <= 2)).toBe(true);
      }),
    );
  });

  test('property: the last payment is near the others for loans of an ordinary size', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 500, max: 50_000 }),
        fc.integer({ min: 1, max: 180 }),
        (dollars, termMonths) => {
          const loan = levelLoan({ principal: money(dollars), rateFracPerYear: 0.0999, termMonths });
          // half a cent of rounding a month, grown at the rate of the loan over 15 years, stays under $3
          expect(loan.lastPayment.minus(loan.payment).abs().toNumber()).toBeLessThan(3);
        },
      ),
    );
  });

  test('property: a payment below the interest is refused, one just at it is not', () => {
    const at = (payment: string) =>
      loanWithPayment({ principal: money(12_000), rateFracPerYear: 0.12, termMonths: 24 }, money(payment));
    expect(at('119.99')).toEqual({ kind: 'none', why: { code: 'loanDebtGrows', values: { month: 1 } } });
    expect(at('120.00').kind).toBe('schedule');
    expect(at('0.00').kind).toBe('none');
  });

  test('property: a payment larger than the debt is cut to it', () => {
    const loan = loanWithPayment({ principal: money(100), rateFracPerYear: 0, termMonths: 5 }, money(60));
    expect(loan.kind === 'schedule' ? loan.rows.map((r) => r.payment.toFixed(2)) : []).toEqual([
      '60.00',
      '40.00',
      '0.00',
      '0.00',
      '0.00',
    ]);
  });

  test('property: terms out of range are refused', () => {
    const loan = (over: object) => () =>
      levelLoan({ principal: money(100), rateFracPerYear: 0.05, termMonths: 12, ...over });
    expect(loan({ termMonths: 0 })).toThrow('term');
    expect(loan({ termMonths: 1.5 })).toThrow('term');
    expect(loan({ rateFracPerYear: -0.01 })).toThrow('rate');
    expect(loan({ principal: money(-1) })).toThrow('principal');
    expect(loan({ termMonths: 1 })()).toMatchObject({ kind: 'schedule' });
  });
});

test('identity: a schedule without lumps is itself, and a lump takes off what it takes off the debt', () => {
  const terms = { principal: money(6000), rateFracPerYear: 0.09, termMonths: 36 };
  const plain = levelLoan(terms);
  expect(loanWithLumps(plain, new Map(), 0.09).rows).toEqual(plain.rows);
  const lumped = loanWithLumps(plain, new Map([[6, money(1000)]]), 0.09);
  expect(lumped.rows[5]?.balance.toFixed(2)).toBe(plain.rows[5]?.balance.minus(1000).toFixed(2));
  expect(lumped.rows.at(-1)?.balance.toFixed(2)).toBe('0.00');
  // 1,000 less debt for thirty months at 9 %: its payments and their interest are saved
  const saved = plain.totalOfPayments.minus(lumped.totalOfPayments).toNumber();
  expect(saved).toBeGreaterThan(1000);
  expect(saved).toBeLessThan(1000 * (1 + 0.09 / 12) ** 30);
});
