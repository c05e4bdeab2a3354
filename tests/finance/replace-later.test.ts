import { describe, expect, test } from 'vitest';
import { compareChoices } from '@/lib/finance/compare-choices';
import { comparisonModel } from '@/lib/finance/comparison-model';
import { capitalRecoveryFactor, levelFactor, presentValueFactor } from '@/lib/finance/discount-factors';
import { equivalentPerYear, presentValue } from '@/lib/finance/measures';
import { money } from '@/lib/finance/money';
import { moneyBasis } from '@/lib/finance/money-basis';
import { likelyDraw } from '@/lib/finance/money-draw';
import { replaceLater } from '@/lib/finance/replace-later';
import { lifeCurve, lifeLeftFrac, survivesFrac } from '@/lib/finance/survival';
import { placeHistory } from '@/lib/finance/unit-in-place';
import { yearRows } from '@/lib/finance/year-rows';
import { type Check, coverTopic, near, num, nums, raw } from './checks';
import {
  allChoices,
  energyOf,
  exampleCosts,
  exampleInput,
  exampleVisit,
  findingsOf,
  leave,
  single,
  variable,
} from './fixtures';

/** Equivalent yearly cost of keeping something n = 1, 2, ... years. */
function yearlyCosts(
  d: number,
  price: number,
  value: readonly number[],
  yearly: readonly number[],
): number[] {
  return yearly.map((_, k) => {
    const total =
      price -
      (value[k] ?? 0) * presentValueFactor(d, k + 1) +
      presentValue([0, ...yearly.slice(0, k + 1)], d);
    return equivalentPerYear(total, d, k + 1);
  });
}

/** Cost of each further year: loss of value, interest on it, and the year's own cost. */
function marginalCosts(
  d: number,
  price: number,
  value: readonly number[],
  yearly: readonly number[],
): number[] {
  return yearly.map((cost, k) => (k === 0 ? price : (value[k - 1] ?? 0)) * (1 + d) - (value[k] ?? 0) + cost);
}

const best = (costs: readonly number[]) => costs.indexOf(Math.min(...costs)) + 1;
const zeros = (n: number) => Array.from({ length: n }, () => 0);

function nearAll(
  got: readonly number[],
  expected: readonly number[],
  tolerance: number | null,
  label: string,
): void {
  expect(got.length, label).toBeGreaterThanOrEqual(expected.length);
  for (const [k, value] of expected.entries())
    near(got[k] ?? Number.NaN, value, tolerance, `${label} ${k + 1}`);
}

/** Cost by year kept, when the costs of the years are the marginal ones. */
const fromMarginal = (d: number, marginal: readonly number[]) => yearlyCosts(d, 0, [], marginal);

describe('replacement against the outside', () => {
  coverTopic('replacement', 12, {
    'replace-newnan-13-1': (c) => {
      const operation = nums(c, 'inputs.operation');
      const yearly = nums(c, 'inputs.maintenance').map((m, k) => m + (operation[k] ?? 0));
      const costs = yearlyCosts(num(c, 'inputs.rate'), num(c, 'inputs.price'), [], yearly);
      expect(best(costs)).toBe(num(c, 'expected.best_life'));
      near(Math.min(...costs), num(c, 'expected.EUAC_min'), c.tolerance, 'lowest');
    },
    'replace-newnan-13-4': (c) => {
      const marginal = nums(c, 'inputs.defender_marginal');
      const decisions = marginal.map((m) => (m < num(c, 'inputs.challenger_min_EUAC') ? 'keep' : 'replace'));
      expect(decisions).toEqual(raw(c, 'expected.decisions'));
      expect(decisions.indexOf('replace')).toBe(num(c, 'expected.keep_years'));
    },
    'replace-newnan-13-5-trap': (c) => {
      const costs = fromMarginal(num(c, 'inputs.rate_assumed'), nums(c, 'inputs.defender_marginal'));
      expect(best(costs)).toBe(num(c, 'expected.lowest_EUAC_life'));
      near(Math.min(...costs), num(c, 'expected.lowest_EUAC'), c.tolerance, 'lowest');
      const challenger = num(c, 'inputs.challenger_min_EUAC');
      expect(
        [(costs[0] ?? 0) > challenger, Math.min(...costs) < challenger],
        'the one-year rule is wrong',
      ).toEqual([true, true]);
    },
    'replace-newnan-overhaul': (c) => {
      const [d, overhaul] = [num(c, 'inputs.rate'), num(c, 'inputs.overhaul')];
      const marginal = marginalCosts(d, overhaul, [], nums(c, 'inputs.maintenance'));
      nearAll(marginal, nums(c, 'expected.marginal'), c.tolerance, 'marginal');
      const after = marginal.findIndex((m, k) => k > 0 && m > num(c, 'inputs.challenger_min_EUAC'));
      expect(after).toBe(num(c, 'expected.keep_years'));
    },
    'replace-esl-13000': (c) => {
      const costs = yearlyCosts(
        num(c, 'inputs.rate'),
        num(c, 'inputs.price'),
        nums(c, 'inputs.market_value'),
        nums(c, 'inputs.operating'),
      );
      nearAll(costs, nums(c, 'expected.annual_worth_first_3'), c.tolerance, 'yearly cost');
      expect(best(costs)).toBe(num(c, 'expected.economic_life'));
    },
    'replace-esl-25000': (c) => {
      const [d, price] = [num(c, 'inputs.rate'), num(c, 'inputs.price')];
      const [value, yearly] = [nums(c, 'inputs.salvage'), nums(c, 'inputs.om')];
      nearAll(yearlyCosts(d, price, value, yearly), nums(c, 'expected.EAC'), c.tolerance, 'yearly cost');
      nearAll(marginalCosts(d, price, value, yearly), nums(c, 'expected.marginal'), c.tolerance, 'marginal');
      expect(best(yearlyCosts(d, price, value, yearly))).toBe(num(c, 'expected.economic_life'));
    },
    'replace-keep-one-year': (c) => {
      const d = num(c, 'inputs.rate');
      const [now = 0, ...value] = nums(c, 'inputs.market_value');
      const yearly = nums(c, 'inputs.expenses');
      nearAll(marginalCosts(d, now, value, yearly), nums(c, 'expected.marginal'), c.tolerance, 'marginal');
      const costs = yearlyCosts(d, now, value, yearly);
      nearAll(costs, nums(c, 'expected.EUAC'), c.tolerance, 'yearly cost');
      const [price = 0, life = 0, left = 0, running = 0] = nums(c, 'inputs.challenger');
      const challenger = equivalentPerYear(price - left * presentValueFactor(d, life), d, life) + running;
      near(challenger, num(c, 'expected.challenger_EUAC'), c.tolerance, 'challenger');
      // decided by 5.46 dollars: nothing may be rounded before the comparison
      expect(costs.filter((x) => x < challenger)).toHaveLength(num(c, 'expected.keep_years'));
    },
    'replace-white-11-3': (c) => {
      const d = num(c, 'inputs.rate');
      const keep = [0, ...nums(c, 'inputs.keep.om_first5'), ...nums(c, 'inputs.keep.om_next5')];
      keep[5] = (keep[5] ?? 0) + num(c, 'inputs.keep.net_outlay_year5');
      keep[10] = (keep[10] ?? 0) - num(c, 'inputs.keep.salvage_year10');
      const replace = [num(c, 'inputs.replace.net_outlay_now'), ...nums(c, 'inputs.replace.om')];
      replace[10] = (replace[10] ?? 0) - num(c, 'inputs.replace.salvage_year10');
      const perYear = (flows: number[]) => equivalentPerYear(presentValue(flows, d), d, 10);
      near(perYear(keep), num(c, 'expected.EUAC_keep'), c.tolerance, 'keep');
      near(perYear(replace), num(c, 'expected.EUAC_replace'), c.tolerance, 'replace');
      near(perYear(keep) - perYear(replace), num(c, 'expected.difference'), c.tolerance, 'difference');
    },
    'replace-white-11-10': (c) => {
      const d = num(c, 'inputs.rate');
      near(
        -equivalentPerYear(presentValue(nums(c, 'inputs.incremental'), d), d, 5),
        num(c, 'expected.EUAC_increment'),
        c.tolerance,
        'increment',
      );
    },
    'replace-white-11-9': (c) => {
      const [d, n] = [num(c, 'inputs.rate'), num(c, 'inputs.years')];
      const extra = num(c, 'inputs.extra_cost') - num(c, 'inputs.salvage') * presentValueFactor(d, n);
      near(
        extra * capitalRecoveryFactor(d, n) - num(c, 'inputs.saving'),
        num(c, 'expected.EUAC_increment'),
        c.tolerance,
        'increment',
      );
    },
    'replace-injection-molding': (c) => {
      const [d, life] = [num(c, 'inputs.rate'), 8];
      const yearly = zeros(life).map(
        (_, k) => num(c, 'inputs.operating_first') + k * num(c, 'inputs.gradient'),
      );
      const costs = yearlyCosts(
        d,
        num(c, 'inputs.price'),
        zeros(life).map(() => num(c, 'inputs.salvage')),
        yearly,
      );
      const lives = nums(c, 'inputs.lives');
      nearAll(
        lives.map((n) => costs[n - 1] ?? 0),
        nums(c, 'expected.EUAC'),
        c.tolerance,
        'yearly cost',
      );
      expect(best(costs)).toBe(num(c, 'expected.economic_life'));
    },
    'best-year-to-replace': (c) => {
      const n = num(c, 'inputs.study');
      const totals = Array.from({ length: n + 1 }, (_, k) => plannedTotal(c, k));
      nearAll(totals, nums(c, 'expected.PV_by_k'), c.tolerance, 'k');
      expect(totals.indexOf(Math.min(...totals))).toBe(num(c, 'expected.best_k'));
      near(
        levelFactor(num(c, 'inputs.rate'), n) * num(c, 'expected.EAC_best'),
        Math.min(...totals),
        0.05,
        'per year',
      );
    },
  });
});

/** Replacement at the end of year k in the reference case, by the product's recursion and rows; nothing fails. */
function plannedTotal(c: Check, k: number): number {
  const [n, g] = [num(c, 'inputs.study'), 1 + num(c, 'inputs.inflation')];
  const history = placeHistory(zeros(n), zeros(n), k === 0 || k === n ? undefined : k);
  const price = num(c, 'inputs.price') * g ** k;
  const oldYear = (t: number) =>
    num(c, 'inputs.old_energy') * g ** t +
    num(c, 'inputs.old_upkeep') * (1 + num(c, 'inputs.old_upkeep_growth')) ** t;
  const newYear = (t: number) => (num(c, 'inputs.new_energy') + num(c, 'inputs.new_upkeep')) * g ** t;
  const years = history.years.map((year, i) => {
    const oldFrac = k === 0 ? 0 : year.firstFrac;
    return {
      energyUsd: oldFrac * oldYear(i + 1) + (1 - oldFrac) * newYear(i + 1),
      smallRepairsUsd: 0,
      failsFrac: 0,
      plannedFrac: year.plannedFrac,
      failedByFrac: 0,
      boughtLeftFrac: k === n ? 0 : lifeLeftFrac(n - k, num(c, 'inputs.life')),
      laterLeftFrac: 0,
    };
  });
  const energy = energyOf(exampleCosts);
  const basis = moneyBasis(exampleVisit(), findingsOf(), energy);
  const plain = likelyDraw(basis, energy, { quotedUsd: price, scenarioId: 'healthy' }, []);
  const values = {
    ...plain.values,
    discountFracPerYear: num(c, 'inputs.rate'),
    inflationFracPerYear: 0,
    electricityEscalationFracPerYear: 0,
    upkeepUsdPerYear: 0,
  };
  const now = k === 0 ? price : 0;
  const flows = [{ kind: 'price', months: 0, amount: money(now), usd: now }] as const;
  return (
    yearRows(years, flows, price, { ...plain, values }, 'endOfYear').at(-1)?.cumulativePresentValueUsd ?? 0
  );
}

describe('replacing later', () => {
  const cash = [leave, { ...single, financing: { kind: 'cash' } } as const];
  const model = comparisonModel(exampleInput({ choices: cash }));
  const quoted = model.choices[1];
  if (quoted === undefined) throw new Error('no replacement');
  const later = replaceLater(model, quoted);

  test('identity: now is the replacement itself, never is leaving it', () => {
    const comparison = compareChoices(exampleInput({ choices: cash }));
    expect(later.byYear).toHaveLength(11);
    near(later.byYear[0]?.totalTodayUsd ?? 0, comparison.choices[1]?.totalTodayUsd.likely ?? 1, 1e-9, 'now');
    near(
      later.byYear[10]?.totalTodayUsd ?? 0,
      comparison.choices[0]?.totalTodayUsd.likely ?? 1,
      1e-9,
      'never',
    );
    expect(comparison.replaceLater).toEqual(later);
    const none = compareChoices(exampleInput({ choices: cash, convention: { residual: 'none' } }));
    near(
      later.byYear[0]?.withoutValueLeftUsd ?? 0,
      none.choices[1]?.totalTodayUsd.likely ?? 1,
      1e-9,
      'now, none left',
    );
    near(
      later.byYear[10]?.withoutValueLeftUsd ?? 0,
      none.choices[0]?.totalTodayUsd.likely ?? 1,
      1e-9,
      'never, none left',
    );
  });

  test('outside: replacing after four years, by backward recursion with the plan written into it', () => {
    const { values } = model.likely;
    const curve = lifeCurve(values.medianLifeYears, values.survivalShape);
    const [g, e] = [1 + values.inflationFracPerYear, 1 + values.electricityEscalationFracPerYear];
    const repairs = (age: number) => 40 + 100 * Math.min(1, age / 10);
    const price = 9002.05;
    const worth = (t: number, first: boolean, age: number): number => {
      if (t === 10) return first ? 0 : -price * g ** 10 * Math.max(0, 1 - age / values.medianLifeYears);
      const q = 1 - survivesFrac(curve, age, 1, first ? 1.2 : 1);
      const running = (first ? 1890 : 1180) * e ** (t + 1) + (150 + repairs(age)) * g ** (t + 1);
      const bought = worth(t + 1, false, 0);
      const failed = price * 1.1 * g ** (t + 1) + bought;
      const kept = first && t + 1 === 4 ? price * g ** 4 + bought : worth(t + 1, first, age + 1);
      return (running + q * failed + (1 - q) * kept) / (1 + values.discountFracPerYear);
    };
    near(later.byYear[4]?.totalTodayUsd ?? 0, worth(0, true, 15), 1e-6, 'after four years');
  });

  test('property: the best year has the lowest total and stands among those about the same', () => {
    const lowest = Math.min(...later.byYear.map((y) => y.totalTodayUsd));
    expect(later.byYear[later.bestAfterYears]?.totalTodayUsd).toBe(lowest);
    expect(later.aboutTheSameYears).toContain(later.bestAfterYears);
  });

  test('property: a unit sure to fail next year is as good as replaced then, at the premium', () => {
    const set = { key: 'medianLifeYears', low: 3, likely: 3, high: 3, source: 'test' } as const;
    const old = comparisonModel(
      exampleInput({
        choices: cash,
        assumptions: [set],
        unit: { kind: 'heatPump', nominalTons: 3, manufactureYear: 1970 },
      }),
    );
    const priced = old.choices[1];
    if (priced === undefined) throw new Error('no replacement');
    const totals = replaceLater(old, priced).byYear.map((y) => y.totalTodayUsd);
    expect(new Set(totals.slice(1).map((t) => t.toFixed(6))).size).toBe(1);
  });

  test('property: taken for the cheapest replacement in total; absent without one', () => {
    const all = compareChoices(exampleInput({ choices: allChoices }));
    const totals = all.choices
      .filter((c) => c.kind === 'replace')
      .sort((a, b) => a.totalTodayUsd.likely - b.totalTodayUsd.likely);
    expect(all.replaceLater?.choiceId).toBe(totals[0]?.id);
    expect(compareChoices(exampleInput({ choices: [leave] })).replaceLater).toBeUndefined();
    const free = { ...variable, priceLines: [] };
    expect(compareChoices(exampleInput({ choices: [leave, free] })).replaceLater).toBeUndefined();
  });
});
