import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  capitalRecoveryFactor,
  growingFactor,
  levelFactor,
  midYearFactor,
  nominalRate,
  partYearRate,
  presentValueFactor,
  realRate,
} from '@/lib/finance/discount-factors';
import { type Check, coverTopic, near, num, nums } from './checks';

const years = (n: number) => Array.from({ length: n }, (_, i) => i + 1);
const sum = (xs: readonly number[]) => xs.reduce((a, b) => a + b, 0);

function levelAndSingle(c: Check): void {
  const [d, n] = [num(c, 'inputs.rate'), num(c, 'inputs.years')];
  near(presentValueFactor(d, n), num(c, 'expected.SPV'), c.tolerance, c.id);
  near(levelFactor(d, n), num(c, 'expected.UPV'), c.tolerance, c.id);
}

function growing(c: Check): void {
  const [d, e, n] = [num(c, 'inputs.rate'), num(c, 'inputs.escalation'), num(c, 'inputs.years')];
  near(growingFactor(d, e, n), num(c, 'expected.UPVstar'), c.tolerance, c.id);
}

const levelIds = [3, 6, 7].flatMap((pct) => [1, 5, 10, 15, 20, 25].map((n) => `factor-${pct}pct-${n}y`));
const growingIds = [
  '0.03-e0.01-n15',
  '0.03-e-0.005-n15',
  '0.06-e0.03-n10',
  '0.06-e0.06-n10',
  '0.05-e0.07-n20',
];

describe('discount factors against the outside', () => {
  coverTopic('discount factors', 26, {
    ...Object.fromEntries(levelIds.map((id) => [id, levelAndSingle])),
    ...Object.fromEntries(growingIds.map((id) => [`factor-upvstar-d${id}`, growing])),
    'factor-textbook-15pct': (c) => {
      const d = num(c, 'inputs.rate');
      const rising = sum(years(5).map((t) => (t - 1) * presentValueFactor(d, t)));
      const risingTen = sum(years(10).map((t) => (t - 1) * presentValueFactor(d, t)));
      near(levelFactor(d, 5), num(c, 'expected.PA_5'), c.tolerance, 'PA 5');
      near(rising, num(c, 'expected.PG_5'), c.tolerance, 'PG 5');
      near(presentValueFactor(d, 5), num(c, 'expected.PF_5'), c.tolerance, 'PF 5');
      near(presentValueFactor(d, 10), num(c, 'expected.PF_10'), c.tolerance, 'PF 10');
      near(capitalRecoveryFactor(d, 10), num(c, 'expected.AP_10'), c.tolerance, 'AP 10');
      near(capitalRecoveryFactor(d, 5), num(c, 'expected.AP_5'), c.tolerance, 'AP 5');
      near(risingTen * capitalRecoveryFactor(d, 10), num(c, 'expected.AG_10'), c.tolerance, 'AG 10');
      near(capitalRecoveryFactor(d, 10) - d, num(c, 'expected.AF_10'), c.tolerance, 'AF 10');
      near(capitalRecoveryFactor(d, 5) - d, num(c, 'expected.AF_5'), c.tolerance, 'AF 5');
    },
    'factor-table-10pct-fv': (c) => {
      const expected = nums(c, 'expected.FV');
      const got = nums(c, 'inputs.years').map((n) => 1 / presentValueFactor(num(c, 'inputs.rate'), n));
      expect(got).toHaveLength(6);
      // 17.449402 is printed to 6 decimals: half a unit of the last place, as the entry says
      for (const [i, fv] of got.entries()) near(fv, expected[i] ?? 0, c.tolerance, `FV ${i}`);
    },
    'factor-midyear': (c) => {
      const [d, n] = [num(c, 'inputs.rate'), num(c, 'inputs.years')];
      near(levelFactor(d, n), num(c, 'expected.UPV_end'), c.tolerance, 'end');
      near(levelFactor(d, n) * midYearFactor(d), num(c, 'expected.UPV_mid'), c.tolerance, 'mid');
      near(
        sum(years(n).map((t) => presentValueFactor(d, t - 0.5))),
        num(c, 'expected.UPV_mid'),
        c.tolerance,
        'sum',
      );
    },
  });
});

describe('rates against the outside', () => {
  coverTopic(
    'rates',
    4,
    {
      'rate-real-nominal-fisher': (c) => {
        const [real, inflation] = [num(c, 'inputs.real'), num(c, 'inputs.inflation')];
        near(nominalRate(real, inflation), num(c, 'expected.nominal'), c.tolerance, 'nominal');
        near(realRate(num(c, 'expected.nominal'), inflation), real, c.tolerance, 'real');
      },
    },
    {
      'rate-femp-2010': 'published rates are each rounded: a matter of record, nothing here computes them',
      'rate-10cfr436-bounds': 'rule for a federal rate; the household rate is the customer’s own',
      'rate-a94-interpolation': 'rule for a federal table that the product does not carry',
    },
  );
});

describe('properties of the factors', () => {
  const rate = fc.double({ min: -0.2, max: 0.6, noNaN: true });
  const whole = fc.integer({ min: 1, max: 60 });

  test('identity: every closed form is the sum of its terms', () => {
    fc.assert(
      fc.property(rate, rate, whole, (d, e, n) => {
        const terms = sum(years(n).map((t) => (1 + e) ** t * presentValueFactor(d, t)));
        // both rates near each other lose digits in the closed form: 1e-6 of the value is far below a cent per $1,000
        expect(Math.abs(growingFactor(d, e, n) - terms)).toBeLessThan(1e-6 * (1 + Math.abs(terms)));
      }),
    );
  });

  test('identity: real and nominal discounting of a cost that grows with inflation agree', () => {
    fc.assert(
      fc.property(
        rate,
        fc.double({ min: -0.02, max: 0.1, noNaN: true }),
        rate,
        whole,
        (real, inflation, e, n) => {
          const nominal = growingFactor(nominalRate(real, inflation), nominalRate(e, inflation), n);
          const constant = growingFactor(real, e, n);
          expect(Math.abs(nominal - constant)).toBeLessThan(1e-6 * (1 + Math.abs(constant)));
        },
      ),
    );
  });

  test('identity: a monthly rate compounds back to the yearly one', () => {
    fc.assert(
      fc.property(rate, (d) => {
        expect((1 + partYearRate(d, 12)) ** 12 - 1).toBeCloseTo(d, 12);
      }),
    );
  });

  test('property: a higher rate never raises a present value', () => {
    fc.assert(
      fc.property(rate, fc.double({ min: 1e-4, max: 0.3, noNaN: true }), rate, whole, (d, more, e, n) => {
        expect(growingFactor(d + more, e, n)).toBeLessThan(growingFactor(d, e, n));
      }),
    );
  });

  test('property: rates at and below -100 % are refused, just above is not', () => {
    expect(() => presentValueFactor(-1, 3)).toThrow('rate');
    expect(() => levelFactor(-1.5, 3)).toThrow('rate');
    expect(() => growingFactor(0.05, -1, 3)).toThrow('rate');
    expect(Number.isFinite(presentValueFactor(-0.999, 3))).toBe(true);
    expect(() => levelFactor(0.05, 2.5)).toThrow('years');
    expect(levelFactor(0.05, 0)).toBe(0);
    expect(() => capitalRecoveryFactor(0.05, 0)).toThrow('years');
    expect(levelFactor(0, 7)).toBe(7);
  });
});
