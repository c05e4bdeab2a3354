import fc from 'fast-check';
import { expect, test } from 'vitest';
import { deferredInterest } from '@/lib/finance/deferred-interest';
import { exact, money } from '@/lib/finance/money';

const plan = (payment: string, months = 18) => deferredInterest(money(8000), 0.2699, months, money(payment));

test('property: a cent less than the clearing payment brings the interest down on the customer', () => {
  expect(plan('444.44').left.toFixed(2)).toBe('0.08');
  expect(plan('444.44').interestSimple.toNumber()).toBeGreaterThan(1500);
  expect(plan('444.45').interestSimple.toFixed(2)).toBe('0.00');
});

test('identity: simple interest is i (n P - p n (n - 1) / 2) while something is left', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 48 }), fc.integer({ min: 0, max: 16_000 }), (n, cents) => {
      const p = exact(cents).div(100);
      fc.pre(p.times(n).lt(8000));
      const i = exact('0.2699').div(12);
      const closed = i.times(
        exact(8000)
          .times(n)
          .minus(
            p
              .times(n)
              .times(n - 1)
              .div(2),
          ),
      );
      const got = deferredInterest(money(8000), 0.2699, n, money(p));
      expect(got.interestSimple.minus(closed).abs().lte('0.005')).toBe(true);
      expect(got.interestCompounded.gte(got.interestSimple)).toBe(true);
      expect(got.left.eq(exact(8000).minus(p.times(n)))).toBe(true);
    }),
  );
});

test('property: the clearing payment clears, and is the smallest in whole cents that does', () => {
  fc.assert(
    fc.property(fc.integer({ min: 100, max: 2_000_000 }), fc.integer({ min: 1, max: 60 }), (cents, n) => {
      const principal = money(exact(cents).div(100));
      const { clearingPayment } = deferredInterest(principal, 0.3, n, money(0));
      expect(deferredInterest(principal, 0.3, n, clearingPayment).left.isZero()).toBe(true);
      expect(deferredInterest(principal, 0.3, n, clearingPayment.minus('0.01')).left.isZero()).toBe(false);
    }),
  );
});

test('property: a promotion of no months and a negative rate are refused', () => {
  expect(() => plan('1', 0)).toThrow('promotion');
  expect(() => deferredInterest(money(1), -0.1, 6, money(1))).toThrow('rate');
});
