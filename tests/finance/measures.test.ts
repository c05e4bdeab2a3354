import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Rate, Ratio, Years } from '@/lib/finance/comparison';
import {
  capitalRecoveryFactor,
  growingFactor,
  levelFactor,
  midYearFactor,
  nominalRate,
  presentValueFactor,
} from '@/lib/finance/discount-factors';
import {
  adjustedReturn,
  discountedPayback,
  equivalentPerYear,
  presentValue,
  savingsToInvestment,
  simplePayback,
} from '@/lib/finance/measures';
import { lifeLeftFrac } from '@/lib/finance/survival';
import { type Check, checkOf, coverTopic, near, num, nums, raw, rows } from './checks';
import { internalRates, mirr } from './spreadsheet-functions';

const value = (x: Rate | Ratio | Years): number =>
  x.kind === 'rate'
    ? x.fracPerYear
    : x.kind === 'ratio'
      ? x.ratio
      : x.kind === 'years'
        ? x.years
        : Number.NaN;
const range = (n: number) => Array.from({ length: n }, (_, k) => k + 1);

/** The two designs of the published HVAC example: capital and yearly parts of each, in today's money. */
function hvac(c: Check) {
  const [d, n, upvStar] = [
    num(c, 'inputs.rate'),
    num(c, 'inputs.years'),
    num(c, 'inputs.upv_star_electricity'),
  ];
  const side = (who: string) => ({
    capital:
      num(c, `inputs.${who}.initial`) +
      num(c, `inputs.${who}.replacement_year_12`) * presentValueFactor(d, 12) -
      num(c, `inputs.${who}.residual_year_20`) * presentValueFactor(d, n),
    yearly:
      num(c, `inputs.${who}.electricity_per_year`) * upvStar +
      num(c, `inputs.${who}.omr_per_year`) * levelFactor(d, n),
    first: num(c, `inputs.${who}.initial`),
    firstYear: num(c, `inputs.${who}.electricity_per_year`) + num(c, `inputs.${who}.omr_per_year`),
  });
  return { d, n, base: side('base'), other: side('alternative') };
}

/** The choice of the constant/current example in nominal dollars and in constant ones. */
function constantAndCurrent(c: Check) {
  const [real, inflation, n] = [
    num(c, 'inputs.real_rate'),
    num(c, 'inputs.inflation'),
    num(c, 'inputs.study'),
  ];
  const [initial, energy, upkeep] = [
    num(c, 'inputs.initial'),
    num(c, 'inputs.energy'),
    num(c, 'inputs.upkeep'),
  ];
  const realGrowth = num(c, 'inputs.energy_real_escalation');
  const e = nominalRate(realGrowth, inflation);
  const left = initial * lifeLeftFrac(n, num(c, 'inputs.life'));
  const d = nominalRate(real, inflation);
  const yearlyConstant = energy * growingFactor(real, realGrowth, n) + upkeep * levelFactor(real, n);
  const yearlyCurrent = energy * growingFactor(d, e, n) + upkeep * growingFactor(d, inflation, n);
  return { real, d, n, initial, energy, upkeep, e, left, inflation, yearlyConstant, yearlyCurrent };
}

describe('life-cycle cost against the outside', () => {
  coverTopic('life-cycle cost', 5, {
    'lcc-hvac-two-alternatives': (c) => {
      const { base, other } = hvac(c);
      near(base.capital + base.yearly, num(c, 'expected.LCC_base'), c.tolerance, 'base');
      near(other.capital + other.yearly, num(c, 'expected.LCC_alternative'), c.tolerance, 'alternative');
      const saving = base.capital + base.yearly - other.capital - other.yearly;
      near(saving, num(c, 'expected.net_savings'), c.tolerance, 'net saving');
    },
    'lcc-hvac-measures': (c) => {
      const { d, n, base, other } = hvac(checkOf('lcc-hvac-two-alternatives'));
      const [savings, extra] = [base.yearly - other.yearly, other.capital - base.capital];
      const ratio = savingsToInvestment(savings, extra);
      near(savings, num(c, 'expected.pv_operational_savings'), c.tolerance, 'savings');
      near(extra, num(c, 'expected.pv_extra_investment'), c.tolerance, 'extra');
      near(value(ratio), num(c, 'expected.SIR'), 1e-6, 'SIR');
      near(value(adjustedReturn(ratio, d, n)), num(c, 'expected.AIRR'), 1e-8, 'AIRR');
      near((value(ratio) - 1) * extra, num(c, 'expected.net_savings'), c.tolerance, 'NS = (SIR - 1) extra');
      const payback = simplePayback(other.first - base.first, base.firstYear - other.firstYear);
      near(value(payback), num(c, 'expected.simple_payback_years'), 1e-6, 'payback');
    },
    'lcc-constant-vs-current-dollars': (c) => {
      const p = constantAndCurrent(c);
      const constant = p.initial + p.yearlyConstant - p.left * presentValueFactor(p.real, p.n);
      const current =
        p.initial + p.yearlyCurrent - p.left * (1 + p.inflation) ** p.n * presentValueFactor(p.d, p.n);
      near(constant, num(c, 'expected.PV_constant'), c.tolerance, 'constant');
      near(current, num(c, 'expected.PV_current'), c.tolerance, 'current');
      near(constant, current, 1e-8, 'both views');
      const trap = p.initial + p.yearlyCurrent - p.left * presentValueFactor(p.d, p.n);
      near(trap, num(c, 'expected.PV_if_residual_is_forgotten_to_be_inflated'), c.tolerance, 'trap');
    },
    'lcc-midyear-variants': (c) => {
      // the product follows (a): prices grow up to the middle of the year, so that both views agree; (b) leaves the
      // year's amount as it is, and then nominal and constant dollars part by the inflation of half a year
      const p = constantAndCurrent(checkOf('lcc-constant-vs-current-dollars'));
      const left = p.left * (1 + p.inflation) ** p.n * presentValueFactor(p.d, p.n);
      const halfYear = (growth: number) => midYearFactor(p.d) / midYearFactor(growth);
      const { energy, upkeep, e } = p;
      const mid =
        energy * growingFactor(p.d, e, p.n) * halfYear(e) +
        upkeep * growingFactor(p.d, p.inflation, p.n) * halfYear(p.inflation);
      near(p.initial + mid - left, num(c, 'expected.PV_a'), c.tolerance, '(a)');
      near(
        p.initial + p.yearlyConstant * midYearFactor(p.real) - left,
        num(c, 'expected.PV_b'),
        c.tolerance,
        '(b)',
      );
      near(p.initial + p.yearlyCurrent - left, num(c, 'expected.PV_end_of_year'), c.tolerance, 'end of year');
    },
    'residual-linear': (c) => {
      const expected = nums(c, 'expected.residual');
      const got = rows(c, 'inputs.cases').map(
        ([cost = 0, life = 0, used = 0]) => cost * lifeLeftFrac(used, life),
      );
      expect(got).toHaveLength(4);
      for (const [k, left] of got.entries()) near(left, expected[k] ?? Number.NaN, c.tolerance, `case ${k}`);
    },
  });
});

describe('measures against the outside', () => {
  coverTopic('measures', 5, {
    'measures-simple-project': (c) => {
      const [cost, saving, d, n] = ['cost', 'saving', 'rate', 'years'].map((k) => num(c, `inputs.${k}`)) as [
        number,
        number,
        number,
        number,
      ];
      const flows = [-cost, ...range(n).map(() => saving)];
      const ratio = savingsToInvestment(saving * levelFactor(d, n), cost);
      near(presentValue(flows, d), num(c, 'expected.NS'), c.tolerance, 'NS');
      near(value(ratio), num(c, 'expected.SIR'), c.tolerance, 'SIR');
      near(value(adjustedReturn(ratio, d, n)), num(c, 'expected.AIRR'), c.tolerance, 'AIRR');
      near(internalRates(flows)[0] ?? Number.NaN, num(c, 'expected.IRR'), c.tolerance, 'IRR');
      near(value(simplePayback(cost, saving)), num(c, 'expected.simple_payback'), c.tolerance, 'payback');
      const yearly = range(n).map((t) => saving * presentValueFactor(d, t));
      expect(value(discountedPayback(cost, yearly))).toBe(
        num(c, 'expected.discounted_payback_first_whole_year'),
      );
    },
    'measures-payback-never': (c) => {
      const [cost, saving, d] = [num(c, 'inputs.cost'), num(c, 'inputs.saving'), num(c, 'inputs.rate')];
      near(value(simplePayback(cost, saving)), num(c, 'expected.simple_payback'), c.tolerance, 'payback');
      expect(raw(c, 'expected.discounted_payback')).toBe(null);
      const yearly = range(400).map((t) => saving * presentValueFactor(d, t));
      expect(discountedPayback(cost, yearly)).toEqual({ kind: 'none', why: { code: 'notPaidBackInStay' } });
    },
    'measures-airr-of-sir-1': (c) => {
      const ratio: Ratio = { kind: 'ratio', ratio: num(c, 'inputs.SIR') };
      near(
        value(adjustedReturn(ratio, num(c, 'inputs.rate'), num(c, 'inputs.years'))),
        num(c, 'expected.AIRR'),
        c.tolerance,
        'AIRR',
      );
    },
    'airr-regulation-definition': (c) => {
      const [saving, n, d, cost] = ['saving', 'years', 'rate', 'cost'].map((k) => num(c, `inputs.${k}`)) as [
        number,
        number,
        number,
        number,
      ];
      const terminal = range(n).reduce((sum, t) => sum + saving * (1 + d) ** (n - t), 0);
      near(terminal, num(c, 'expected.terminal_value'), c.tolerance, 'terminal value');
      near((terminal / cost) ** (1 / n) - 1, num(c, 'expected.AIRR'), 1e-8, 'by its definition');
      const product = adjustedReturn(savingsToInvestment(saving * levelFactor(d, n), cost), d, n);
      near(value(product), num(c, 'expected.AIRR'), 1e-8, 'by the ratio');
    },
    'airr-equals-mirr': (c) => {
      const [values, d] = [nums(c, 'inputs.values'), num(c, 'inputs.rate')];
      const ratio = savingsToInvestment(presentValue([0, ...values.slice(1)], d), -(values[0] ?? 0));
      near(value(adjustedReturn(ratio, d, values.length - 1)), num(c, 'expected.AIRR'), c.tolerance, 'AIRR');
      near(mirr(values, d, d), num(c, 'expected.AIRR'), c.tolerance, 'MIRR');
    },
  });
});

describe('equivalent annual cost against the outside', () => {
  coverTopic('equivalent annual cost', 1, {
    'eac-unequal-lives': (c) => {
      const d = num(c, 'inputs.rate');
      const sides = ['A', 'B'];
      expect(sides).toHaveLength(2);
      for (const who of sides) {
        const [price = 0, life = 0, yearly = 0] = nums(c, `inputs.${who}`);
        const perYear = equivalentPerYear(price + yearly * levelFactor(d, life), d, life);
        near(perYear, num(c, `expected.EAC_${who}`), c.tolerance, `EAC ${who}`);
        const chain = Array.from({ length: 30 / life }, (_, k) => price * presentValueFactor(d, k * life));
        const thirty = chain.reduce((a, b) => a + b, 0) + yearly * levelFactor(d, 30);
        near(thirty, num(c, `expected.PV30_${who}`), c.tolerance, `30 years ${who}`);
        near(equivalentPerYear(thirty, d, 30), perYear, 1e-9, `chain ${who}`);
      }
    },
  });
});

describe('properties of the measures', () => {
  const usd = fc.double({ min: -20_000, max: 20_000, noNaN: true });
  const d = fc.double({ min: 0.001, max: 0.3, noNaN: true });

  test('identity: the four tests of one choice against another say the same', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20_000, noNaN: true }),
        fc.double({ min: 1, max: 40_000, noNaN: true }),
        d,
        fc.integer({ min: 1, max: 25 }),
        (extra, savings, rate, n) => {
          fc.pre(Math.abs(savings / extra - 1) > 1e-9);
          const ratio = savingsToInvestment(savings, extra);
          const better = savings - extra > 0;
          expect(value(ratio) > 1).toBe(better);
          expect(value(adjustedReturn(ratio, rate, n)) > rate).toBe(better);
        },
      ),
    );
  });

  test('property: where there is no answer the reason is given, never a number', () => {
    expect(savingsToInvestment(100, 0)).toEqual({ kind: 'none', why: { code: 'costsNoExtraCapital' } });
    expect(savingsToInvestment(100, -5).kind).toBe('none');
    expect(adjustedReturn({ kind: 'ratio', ratio: 0 }, 0.05, 10)).toEqual({
      kind: 'none',
      why: { code: 'savesNothing' },
    });
    expect(adjustedReturn({ kind: 'ratio', ratio: -2 }, 0.05, 10).kind).toBe('none');
    expect(simplePayback(0, 10)).toEqual({ kind: 'none', why: { code: 'costsLessUpFront' } });
    expect(simplePayback(10, 0)).toEqual({ kind: 'none', why: { code: 'savesNothing' } });
    expect(discountedPayback(0, [1])).toEqual({ kind: 'none', why: { code: 'costsLessUpFront' } });
    expect(value(discountedPayback(10, [9.99, 0.01]))).toBe(2);
    expect(value(discountedPayback(10, [12, -5, 4])), 'paid back for good').toBe(3);
    expect(discountedPayback(10, [12, -5]).kind).toBe('none');
  });

  test('property: a total spread over the years is worth the total', () => {
    fc.assert(
      fc.property(usd, d, fc.integer({ min: 1, max: 25 }), (total, rate, n) => {
        const perYear = equivalentPerYear(total, rate, n);
        expect(presentValue([0, ...range(n).map(() => perYear)], rate)).toBeCloseTo(total, 6);
        expect(perYear).toBeCloseTo(total * capitalRecoveryFactor(rate, n), 9);
      }),
    );
  });
});
