import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equalParts, exact, money, moneyRoundedUp, moneyText, usdOf } from '@/lib/finance/money';
import { checkOf, coverTopic, num, raw } from './checks';

describe('rounding against the outside', () => {
  coverTopic('rounding', 5, {
    'round-cents': (c) => {
      const values = raw(c, 'inputs.values') as string[];
      expect(values).toHaveLength(9);
      expect(values.map((v) => moneyText(v))).toEqual(raw(c, 'expected.half_up'));
    },
    'round-binary-traps': (c) => {
      expect([moneyText('1.005'), moneyText('2.675')]).toEqual(
        (raw(c, 'expected.right') as unknown[]).slice(0, 2),
      );
      expect([moneyText(1.005), moneyText(2.675)]).toEqual(['1.01', '2.68']);
      const wrong = [Math.round(1.005 * 100) / 100, (2.675).toFixed(2), Math.round(-2.5)];
      expect(wrong, 'the traps are real on this engine').toEqual(raw(c, 'expected.wrong'));
    },
    'round-rule-table': (c) => {
      const values = raw(c, 'inputs.values') as number[];
      const halves = values.map((v) => usdOf(money(exact(v).div(100))) * 100);
      expect(halves).toEqual(raw(c, 'expected.half_up'));
    },
    'round-sum-of-parts': (c) => {
      const parts = equalParts(String(raw(c, 'inputs.total')), num(c, 'inputs.parts'));
      expect(parts.map((p) => moneyText(p))).toEqual(raw(c, 'expected.parts'));
    },
    'loan-half-up-vs-half-even': (c) => {
      // checked with whole schedules in level-loan.test.ts; here only that a tie goes up: 1,050 x 0.5 % = 5.25,
      // and 20.125 is a tie of the kind that separates the two rules
      expect(moneyText(exact(num(c, 'inputs.principal')).times('0.005'))).toBe('5.25');
      expect(moneyText('20.125')).toBe('20.13');
    },
  });
});

describe('properties of money', () => {
  const cents = fc.integer({ min: -1e9, max: 1e9 });

  test('identity: text and number of the same cents agree both ways', () => {
    fc.assert(
      fc.property(cents, (c) => {
        const text = moneyText(exact(c).div(100));
        expect(money(usdOf(text)).eq(text)).toBe(true);
        expect(text).toMatch(/^-?\d+\.\d\d$/);
      }),
    );
  });

  test('property: equal parts add up exactly and differ by at most a cent', () => {
    fc.assert(
      fc.property(cents, fc.integer({ min: 1, max: 360 }), (c, n) => {
        const total = exact(c).div(100);
        const parts = equalParts(total, n);
        expect(parts).toHaveLength(n);
        expect(parts.reduce((a, b) => a.plus(b), exact(0)).eq(total)).toBe(true);
        expect(
          Decimal.max(...parts)
            .minus(Decimal.min(...parts))
            .lte('0.01'),
        ).toBe(true);
      }),
    );
  });

  test('property: rounding up never gives less, and less than a cent more', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e9 }).map((n) => n / 1e5),
        (x) => {
          const up = moneyRoundedUp(x);
          expect(up.gte(exact(x)) && up.minus(exact(x)).lt('0.01')).toBe(true);
        },
      ),
    );
  });

  test('property: nothing prints as minus zero, and what is no number is refused', () => {
    expect(moneyText('-0.001')).toBe('0.00');
    expect(Object.is(usdOf(money('-0.004')), 0)).toBe(true);
    expect(() => exact(Number.NaN)).toThrow('money');
    expect(() => exact(Number.POSITIVE_INFINITY)).toThrow('money');
    expect(() => exact('12,5')).toThrow('money');
    expect(() => exact('')).toThrow('money');
    expect(() => equalParts('1.00', 0)).toThrow('parts');
  });

  test('property: settings of the shared decimal type cannot change a price', () => {
    Decimal.set({ precision: 3, rounding: Decimal.ROUND_DOWN });
    const price = moneyText(exact('12345.675'));
    Decimal.set({ precision: 20, rounding: Decimal.ROUND_HALF_UP });
    expect(price).toBe('12345.68');
    expect(checkOf('round-cents').status).toBe('computed');
  });
});
