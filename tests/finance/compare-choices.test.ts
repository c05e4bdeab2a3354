import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareChoices } from '@/lib/finance/compare-choices';
import type { ComparedChoice, Comparison } from '@/lib/finance/comparison';
import { lifeCurve, survivesFrac } from '@/lib/finance/survival';
import table from '@/lib/visit/data/assumptions.json';
import { Visit } from '@/lib/visit/visit';
import { anyInput } from './arbitraries';
import { near } from './checks';
import {
  allChoices,
  drier,
  energyOf,
  exampleCosts,
  exampleInput,
  exampleVisit,
  findingsOf,
  hotDischarge,
  leave,
  orifice,
  single,
  variable,
} from './fixtures';
import { backwardTotal } from './independent';

const byId = (c: Comparison, id: string): ComparedChoice => {
  const found = c.choices.find((x) => x.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};
const likely = (key: keyof typeof table.values) => table.values[key].likely;

/** The likely total of a choice that runs one unit from the start, by backward recursion from the assumption table. */
function second(plan: {
  age: number;
  risk: number;
  firstEnergy: number;
  ownPrice: number;
  paidToday: number;
  replacement: number;
  laterEnergy: number;
}) {
  const curve = lifeCurve(likely('medianLifeYears'), likely('survivalShape'));
  const [g, e] = [1 + likely('inflationFracPerYear'), 1 + likely('electricityEscalationFracPerYear')];
  const start = (first: boolean) => (first ? plan.age : 0);
  const [young, old] = [likely('smallRepairsNewUsdPerYear'), likely('smallRepairsOldUsdPerYear')];
  const repairs = (age: number) => young + (old - young) * Math.min(1, age / 10);
  const life = likely('medianLifeYears');
  return (
    plan.paidToday +
    backwardTotal({
      years: 10,
      d: likely('discountFracPerYear'),
      fails: (first, age) => 1 - survivesFrac(curve, start(first) + age, 1, first ? plan.risk : 1),
      running: (t, first, age) =>
        (first ? plan.firstEnergy : plan.laterEnergy) * e ** t +
        (likely('upkeepUsdPerYear') + repairs(start(first) + age)) * g ** t,
      replacement: (t) => plan.replacement * (1 + likely('outOfHoursPremiumFrac')) * g ** t,
      left: (first, age) =>
        (first ? plan.ownPrice : plan.replacement) * Math.max(0, 1 - age / life) * g ** 10,
    })
  );
}

describe('the likely total a second way', () => {
  // prices by hand: single 6,240 + 1,980 = 8,220; tax 637.05; permit 145: 9,002.05
  const replacement = 9002.05;
  const comparison = compareChoices(exampleInput());

  test('outside: leave as is, by backward recursion', () => {
    const total = second({
      age: 15,
      risk: 1.2,
      firstEnergy: 1890,
      ownPrice: 0,
      paidToday: 0,
      replacement,
      laterEnergy: 1180,
    });
    near(byId(comparison, 'leave').totalTodayUsd.likely, total, 1e-6, 'leave');
  });

  test('outside: a repair that may not cure, by backward recursion', () => {
    const at = (risk: number, firstEnergy: number) =>
      second({ age: 15, risk, firstEnergy, ownPrice: 0, paidToday: 405, replacement, laterEnergy: 1180 });
    const s = likely('repairSuccessFrac');
    near(
      byId(comparison, 'orifice').totalTodayUsd.likely,
      s * at(1, 1510) + (1 - s) * at(1.2, 1890),
      1e-6,
      'orifice',
    );
  });

  test('outside: a replacement for cash with a later rebate, by backward recursion', () => {
    const paidToday = 14_250 - 600 - 1500 / 1.05 ** (7 / 12);
    const total = second({
      age: 0,
      risk: 1,
      firstEnergy: 940,
      ownPrice: 14_250 - 2100,
      paidToday,
      replacement,
      laterEnergy: 1180,
    });
    near(byId(comparison, 'variable').totalTodayUsd.likely, total, 1e-6, 'variable');
  });

  test('outside: a replacement on a loan, by backward recursion and the payments as quoted', () => {
    const { loan, totalTodayUsd } = byId(comparison, 'single');
    const payments = Array.from(
      { length: 84 },
      (_, k) => Number(k === 83 ? loan?.lastPaymentUsd : loan?.paymentUsd) / 1.05 ** ((k + 1) / 12),
    );
    const paidToday = 1150 + payments.reduce((a, b) => a + b, 0);
    near(
      totalTodayUsd.likely,
      second({
        age: 0,
        risk: 1,
        firstEnergy: 1180,
        ownPrice: 9002.05,
        paidToday,
        replacement,
        laterEnergy: 1180,
      }),
      1e-6,
      'single',
    );
  });
});

describe('shape of the comparison', () => {
  const comparison = compareChoices(exampleInput());

  test('property: leave first, repairs by price, replacements by price', () => {
    expect(comparison.choices.map((c) => c.id)).toEqual(['leave', 'orifice', 'drier', 'single', 'variable']);
    expect(comparison.choices.map((c) => c.priceUsd)).toEqual([
      '0.00',
      '405.00',
      '872.94',
      '9002.05',
      '14250.00',
    ]);
    expect(comparison.choices.map((c) => c.upFrontUsd)).toEqual([
      '0.00',
      '405.00',
      '872.94',
      '1150.00',
      '13650.00',
    ]);
    expect(byId(comparison, 'variable').rebateUsd).toBe('2100.00');
  });

  test('identity: net saving, lowest and ranges fit together', () => {
    const base = byId(comparison, 'leave').totalTodayUsd.likely;
    expect(comparison.choices).toHaveLength(5);
    for (const c of comparison.choices) {
      near(c.netSavingUsd.likely, base - c.totalTodayUsd.likely, 1e-9, c.id);
      expect(c.rows).toHaveLength(11);
      expect(c.rows.at(-1)?.cumulativePresentValueUsd).toBe(c.totalTodayUsd.likely);
      expect(c.overLowestUsd.likely).toBeGreaterThanOrEqual(0);
      near(c.perMonthUsd * 12, c.perYearUsd, 1e-9, 'per month');
    }
    expect(byId(comparison, comparison.lowestTotalId).overLowestUsd).toEqual({ low: 0, likely: 0, high: 0 });
    expect(byId(comparison, 'leave').netSavingUsd).toEqual({ low: 0, likely: 0, high: 0 });
  });

  test('property: a difference varies less than the totals it is made of, since both move together', () => {
    const width = (e: { low: number; high: number }) => e.high - e.low;
    const { netSavingUsd, totalTodayUsd } = byId(comparison, 'drier');
    expect(width(netSavingUsd)).toBeLessThan(
      width(totalTodayUsd) + width(byId(comparison, 'leave').totalTodayUsd),
    );
    expect(width(netSavingUsd)).toBeLessThan(0.9 * width(totalTodayUsd));
  });

  test('property: a visit without "leave as is" gets one, under a free id', () => {
    const added = compareChoices(exampleInput({ choices: allChoices.filter((c) => c.kind !== 'leave') }));
    expect(added.choices.map((c) => c.id)).toEqual(comparison.choices.map((c) => c.id));
    expect(added.notes.map((n) => n.code)).toContain('leaveAdded');
    expect(byId(added, 'leave').totalTodayUsd).toEqual(byId(comparison, 'leave').totalTodayUsd);
    const taken = { ...drier, id: 'leave' };
    const input = { ...exampleInput({ choices: [taken] }), energy: energyOf(exampleCosts) };
    expect(compareChoices(input).choices.map((c) => [c.id, c.kind])).toEqual([
      ['leave-as-is', 'leave'],
      ['leave', 'repair'],
    ]);
  });

  test('property: the order of the choices in the visit does not matter', () => {
    expect(compareChoices(exampleInput({ choices: [...allChoices].reverse() }))).toEqual(comparison);
  });

  test('property: the same visit gives the same bytes, and it survives JSON', () => {
    expect(JSON.parse(JSON.stringify(compareChoices(exampleInput())))).toEqual(comparison);
  });

  test('wiring: the example is a visit the schema accepts', () => {
    expect(Visit.safeParse(exampleVisit()).success).toBe(true);
  });
});

describe('properties over any visit', () => {
  const finite = (value: unknown): boolean =>
    typeof value === 'number'
      ? Number.isFinite(value)
      : typeof value !== 'object' || value === null || Object.values(value).every(finite);

  test('property: every number is finite, every range in order, for anything the schema lets through', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const comparison = compareChoices(input);
        expect(finite(comparison)).toBe(true);
        const ranges = comparison.choices.flatMap((c) => [
          c.totalTodayUsd,
          c.netSavingUsd,
          c.overLowestUsd,
          c.yearlyEnergyUsd,
          c.failsWithinStayFrac,
        ]);
        expect(ranges.every((r) => r.low <= r.likely && r.likely <= r.high)).toBe(true);
        expect(
          comparison.choices.every((c) => c.failsWithinStayFrac.low >= 0 && c.failsWithinStayFrac.high <= 1),
        ).toBe(true);
        expect(comparison.choices[0]?.kind).toBe('leave');
        expect(comparison.lowestByStay).toHaveLength(25);
        expect(comparison.aboutTheSameIds).not.toContain(comparison.lowestTotalId);
      }),
      { numRuns: 100 },
    );
  });

  test('property: adding a cost never lowers a total', () => {
    const extra = { kind: 'other', label: 'extra', amount: 1, unitPriceUsd: 250 } as const;
    const visits = allChoices.map((choice) => {
      const more = allChoices.map((c) =>
        c.id === choice.id ? { ...c, priceLines: [...c.priceLines, extra] } : c,
      );
      return { id: choice.id, more: compareChoices(exampleInput({ choices: more })) };
    });
    const plain = compareChoices(exampleInput());
    expect(visits).toHaveLength(5);
    for (const { id, more } of visits) {
      expect(
        more.choices.every((c) => c.totalTodayUsd.likely >= byId(plain, c.id).totalTodayUsd.likely - 1e-9),
        id,
      ).toBe(true);
    }
    const dearer = byId(visits.find((v) => v.id === 'drier')?.more ?? plain, 'drier');
    near(
      dearer.totalTodayUsd.likely - byId(plain, 'drier').totalTodayUsd.likely,
      250,
      1e-6,
      'a repair paid in cash',
    );
  });

  test('property: dearer energy, upkeep, small repairs, premium and a shorter life never lower a total', () => {
    const plain = compareChoices(exampleInput());
    const set = (key: keyof typeof table.values, factor: number) => {
      const row = table.values[key];
      const assumptions = [
        { key, low: row.low * factor, likely: row.likely * factor, high: row.high * factor, source: 'test' },
      ];
      return compareChoices(exampleInput({ assumptions }));
    };
    const dearer = [
      set('upkeepUsdPerYear', 1.5),
      set('smallRepairsOldUsdPerYear', 1.5),
      set('smallRepairsNewUsdPerYear', 1.5),
      set('outOfHoursPremiumFrac', 1.5),
      set('electricityEscalationFracPerYear', 1.5),
      set('medianLifeYears', 0.8),
    ];
    expect(dearer).toHaveLength(6);
    for (const [k, other] of dearer.entries()) {
      expect(
        other.choices.every((c) => c.totalTodayUsd.likely > byId(plain, c.id).totalTodayUsd.likely),
        `case ${k}`,
      ).toBe(true);
    }
  });

  test('property: present value falls with the discount rate, for costs', () => {
    const at = (likelyRate: number) =>
      compareChoices(
        exampleInput({
          convention: { residual: 'none' },
          choices: [leave, drier, orifice, { ...single, financing: { kind: 'cash' } }],
          assumptions: [
            {
              key: 'discountFracPerYear',
              low: likelyRate,
              likely: likelyRate,
              high: likelyRate,
              source: 'test',
            },
          ],
        }),
      );
    const [low, high] = [at(0.03), at(0.08)];
    expect(low.choices).toHaveLength(4);
    expect(high.choices.every((c) => c.totalTodayUsd.likely < byId(low, c.id).totalTodayUsd.likely)).toBe(
      true,
    );
  });

  test('property: a loan at the discount rate with no fees leaves the total as it is for cash', () => {
    const rateFracPerYear = 12 * (1.05 ** (1 / 12) - 1);
    const withLoan = (termMonths: number, downPaymentUsd: number) =>
      compareChoices(
        exampleInput({
          choices: [
            {
              ...variable,
              rebates: [],
              financing: { kind: 'levelLoan', rateFracPerYear, termMonths, downPaymentUsd },
            },
          ],
        }),
      );
    const cash = byId(compareChoices(exampleInput({ choices: [{ ...variable, rebates: [] }] })), 'variable');
    const loans = [withLoan(60, 0), withLoan(120, 2000), withLoan(1, 0), withLoan(240, 0)];
    expect(loans).toHaveLength(4);
    // rounding the payment to a cent moves the value by less than half a cent a month; the 240-month loan outlasts
    // the stay and its balance is paid off at the end, which is worth the same
    for (const c of loans)
      near(byId(c, 'variable').totalTodayUsd.likely, cash.totalTodayUsd.likely, 1.2, 'loan');
  });
});

describe('risk of failing', () => {
  const chance = (c: Comparison, id: string) => byId(c, id).failsWithinStayFrac.likely;

  test('property: a fault left in the circuit raises it, a repair aimed at it takes that back', () => {
    const none = compareChoices({ ...exampleInput(), findings: findingsOf() });
    const ailing = compareChoices(exampleInput());
    expect(chance(ailing, 'leave')).toBeGreaterThan(chance(none, 'leave'));
    expect(chance(ailing, 'orifice')).toBeLessThan(chance(ailing, 'leave'));
    expect(chance(ailing, 'orifice')).toBeGreaterThan(chance(none, 'orifice'));
    expect(chance(ailing, 'single')).toBe(chance(none, 'single'));
    expect(none.notes.map((n) => n.code)).not.toContain('faultRaisesRisk');
  });

  test('property: a repair aimed at another cause takes nothing back', () => {
    const aside = { ...orifice, actions: ['leakRepairAndRecharge' as const] };
    const c = compareChoices(exampleInput({ choices: [leave, aside] }));
    near(chance(c, 'orifice'), chance(c, 'leave'), 1e-12, 'same risk');
  });

  test('property: a discharge line in danger raises it further; the larger of both counts', () => {
    const hot = compareChoices({
      ...exampleInput(),
      findings: findingsOf('meteringRestriction', [hotDischarge]),
    });
    const only = compareChoices({ ...exampleInput(), findings: findingsOf(undefined, [hotDischarge]) });
    expect(chance(hot, 'leave')).toBeGreaterThan(chance(compareChoices(exampleInput()), 'leave'));
    near(chance(hot, 'leave'), chance(only, 'leave'), 1e-12, 'larger of both');
    const doubt = { ...hotDischarge, severity: 'doubt' } as const;
    const aside = { ...exampleInput(), findings: findingsOf(undefined, [doubt]) };
    expect(chance(compareChoices(aside), 'leave')).toBeLessThan(chance(only, 'leave'));
  });
});
