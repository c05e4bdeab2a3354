import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lifeCurve, lifeLeftFrac, survivesFrac, yearlyFailureFracs } from '@/lib/finance/survival';
import { placeHistory } from '@/lib/finance/unit-in-place';
import { type Check, coverTopic, near, num, nums } from './checks';
import { backwardCost, simpson } from './independent';

function parts(c: Check) {
  const curve = { shape: num(c, 'inputs.beta'), scaleYears: num(c, 'inputs.eta_years') };
  const [age, years] = [num(c, 'inputs.age'), num(c, 'inputs.study_years')];
  const ratio = c.id === 'weibull-hazard-multiplier' ? num(c, 'inputs.hazard_multiplier') : 1;
  const [d, g] = [num(c, 'inputs.nominal_rate'), num(c, 'inputs.price_escalation')];
  const today = num(c, 'inputs.price_today');
  const cost = (t: number) => today * (1 + g) ** t * (1 + num(c, 'inputs.out_of_hours_premium'));
  const history = placeHistory(
    yearlyFailureFracs(curve, age, years, ratio),
    yearlyFailureFracs(curve, 0, years),
  );
  const value = (weight: (t: number) => number) =>
    history.years.reduce((sum, _, k) => sum + (weight(k) * cost(k + 1)) / (1 + d) ** (k + 1), 0);
  const firstFails = (k: number) =>
    survivesFrac(curve, age, k, ratio) - survivesFrac(curve, age, k + 1, ratio);
  return { curve, age, years, ratio, d, g, today, cost, history, value, firstFails };
}

function failures(c: Check): ReturnType<typeof parts> {
  const p = parts(c);
  near(
    p.value((k) => p.history.years[k]?.failsFrac ?? 0),
    num(c, 'expected.EPV_all_failures'),
    c.tolerance,
    'all',
  );
  near(p.value(p.firstFails), num(c, 'expected.EPV_first_failure_only'), c.tolerance, 'first only');
  // a chance is printed to 8 decimals
  near(p.history.atEnd.firstFrac, num(c, 'expected.chance_no_failure'), 5e-9, 'no failure');
  const backward = backwardCost(
    yearlyFailureFracs(p.curve, p.age, p.years, p.ratio),
    yearlyFailureFracs(p.curve, 0, p.years),
    p.cost,
    p.d,
  );
  near(backward, num(c, 'expected.EPV_all_failures'), c.tolerance, 'backward');
  return p;
}

describe('survival against the outside', () => {
  coverTopic('survival', 6, {
    'weibull-conditional-survival': (c) => {
      const curve = { shape: num(c, 'inputs.beta'), scaleYears: num(c, 'inputs.eta_years') };
      const age = num(c, 'inputs.age');
      const got = nums(c, 'inputs.k').map((k) => survivesFrac(curve, age, k));
      const expected = nums(c, 'expected.conditional_survival');
      expect(got).toHaveLength(3);
      for (const [i, p] of got.entries()) near(p, expected[i] ?? -1, c.tolerance, `k ${i}`);
      near(survivesFrac(curve, 0, age), num(c, 'expected.S_12'), c.tolerance, 'S(12)');
      const mean = simpson((t) => survivesFrac(curve, age, t), 0, 80, 4000);
      near(mean, num(c, 'expected.mean_remaining_life'), c.tolerance, 'mean left');
      near(
        simpson((t) => survivesFrac(curve, 0, t), 0, 90, 4000),
        num(c, 'expected.mean_life_new'),
        c.tolerance,
        'mean',
      );
      near(survivesFrac(curve, age, num(c, 'expected.median_remaining_life')), 0.5, 1e-6, 'median left');
    },
    'weibull-failure-replacement-pv': (c) => {
      const p = failures(c);
      const expected = p.history.years.reduce((sum, y) => sum + y.failsFrac, 0);
      near(expected, num(c, 'expected.expected_number_of_failures'), 5e-9, 'number of failures');
      near(p.history.years[0]?.failsFrac ?? 0, num(c, 'expected.chance_fail_in_year_1'), 5e-9, 'year 1');
    },
    'weibull-hazard-multiplier': (c) => {
      failures(c);
    },
    'weibull-expected-residual': (c) => {
      const p = parts(c);
      const life = num(c, 'inputs.life_for_residual');
      const share = [...p.history.atEnd.laterFracByAge].reduce(
        (sum, f, a) => sum + f * lifeLeftFrac(a, life),
        0,
      );
      const residual = (share * p.today * (1 + p.g) ** p.years) / (1 + p.d) ** p.years;
      near(residual, num(c, 'expected.EPV_residual'), c.tolerance, 'residual');
      const all = p.value((k) => p.history.years[k]?.failsFrac ?? 0);
      near(all - residual, num(c, 'expected.net_EPV'), c.tolerance, 'net');
    },
    'weibull-continuous-bound': (c) => {
      const p = parts(c);
      const yearEnd = p.value(p.firstFails);
      near(yearEnd, num(c, 'expected.year_end_first_failure'), c.tolerance, 'year end');
      // integral by parts of price growth against the survival function: C(t) v^t dF = [..] + r-g integral of S
      const r = Math.log((1 + p.d) / (1 + p.g));
      const tail = survivesFrac(p.curve, p.age, p.years) * Math.exp(-r * p.years);
      const integral = simpson((t) => survivesFrac(p.curve, p.age, t) * Math.exp(-r * t), 0, p.years, 2000);
      near(
        p.cost(0) * (1 - tail - r * integral),
        num(c, 'expected.continuous_first_failure'),
        c.tolerance,
        'continuous',
      );
    },
    'survival-hand-check': (c) => {
      const [q, q0] = [nums(c, 'inputs.q_old'), nums(c, 'inputs.q_new')];
      const [price, d] = [num(c, 'inputs.price'), num(c, 'inputs.rate')];
      const { years } = placeHistory(q, q0);
      const forward = years.reduce((sum, y, k) => sum + (y.failsFrac * price) / (1 + d) ** (k + 1), 0);
      near(forward, num(c, 'expected.EPV'), c.tolerance, 'forward');
      near(
        backwardCost(q, q0, () => price, d),
        num(c, 'expected.EPV'),
        c.tolerance,
        'backward',
      );
    },
  });
});

describe('properties of survival', () => {
  const age = fc.double({ min: 0, max: 60, noNaN: true });
  const median = fc.double({ min: 3, max: 60, noNaN: true });
  const shape = fc.double({ min: 1, max: 8, noNaN: true });

  test('outside: the worked life of the assumption table (shape 3, median 18: scale 20.34, mean 18.16)', () => {
    const curve = lifeCurve(18, 3);
    near(curve.scaleYears, 20.34, 0.005, 'scale');
    near(
      simpson((t) => survivesFrac(curve, 0, t), 0, 100, 4000),
      18.16,
      0.005,
      'mean',
    );
  });

  test('identity: half of the units reach the median life', () => {
    fc.assert(
      fc.property(median, shape, (m, s) => {
        expect(survivesFrac(lifeCurve(m, s), 0, m)).toBeCloseTo(0.5, 12);
      }),
    );
  });

  test('property: chances stay within 0..1, fall with a longer life and rise with risk and age', () => {
    fc.assert(
      fc.property(age, median, shape, fc.double({ min: 1, max: 20, noNaN: true }), (a, m, s, ratio) => {
        const [base, risky] = [
          yearlyFailureFracs(lifeCurve(m, s), a, 25),
          yearlyFailureFracs(lifeCurve(m, s), a, 25, ratio),
        ];
        const longer = yearlyFailureFracs(lifeCurve(m * 1.2, s), a, 25);
        expect(base).toHaveLength(25);
        expect(base.every((q, k) => q >= 0 && q <= 1 && q <= (risky[k] ?? -1) && q >= (longer[k] ?? 2))).toBe(
          true,
        );
        expect(base.every((q, k) => k === 0 || q >= (base[k - 1] ?? 2) - 1e-12)).toBe(true);
      }),
    );
  });

  test('property: an age far beyond any life still gives a number', () => {
    expect(survivesFrac(lifeCurve(10, 8), 60, 1)).toBeGreaterThanOrEqual(0);
    expect([...yearlyFailureFracs(lifeCurve(10, 8), 60, 3)]).toEqual([1, 1, 1]);
    expect(() => survivesFrac(lifeCurve(10, 3), -1, 1)).toThrow('age');
    expect(() => survivesFrac(lifeCurve(10, 3), 1, 1, 0)).toThrow('hazard');
    expect(() => lifeCurve(0, 3)).toThrow('median');
    expect(() => lifeCurve(10, 0)).toThrow('shape');
  });
});
