import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nominalRate, presentValueFactor, realRate } from '@/lib/finance/discount-factors';
import type { ExpectedYear } from '@/lib/finance/expected-years';
import { money } from '@/lib/finance/money';
import { moneyBasis } from '@/lib/finance/money-basis';
import type { MoneyDraw } from '@/lib/finance/money-draw';
import { likelyDraw } from '@/lib/finance/money-draw';
import { quotedTotal } from '@/lib/finance/quoted-total';
import { lifeLeftFrac } from '@/lib/finance/survival';
import { inConstantDollars, yearRows } from '@/lib/finance/year-rows';
import { checkOf, near, num } from './checks';
import { energyOf, exampleCosts, exampleVisit, findingsOf } from './fixtures';

const energy = energyOf(exampleCosts);
const plain = likelyDraw(
  moneyBasis(exampleVisit(), findingsOf(), energy),
  energy,
  { scenarioId: 'healthy' },
  [],
);

function drawOf(values: Partial<MoneyDraw['values']>, over: Partial<MoneyDraw> = {}): MoneyDraw {
  return { ...plain, ...over, values: { ...plain.values, ...values } };
}

const year = (over: Partial<ExpectedYear>): ExpectedYear => ({
  energyUsd: 0,
  smallRepairsUsd: 0,
  failsFrac: 0,
  plannedFrac: 0,
  failedByFrac: 0,
  boughtLeftFrac: 0,
  laterLeftFrac: 0,
  ...over,
});

/** The published-style example as the product computes it: a unit bought for 9,500 that never fails. */
function example(timing: 'endOfYear' | 'midYear') {
  const c = checkOf('lcc-constant-vs-current-dollars');
  const [real, inflation, n] = [
    num(c, 'inputs.real_rate'),
    num(c, 'inputs.inflation'),
    num(c, 'inputs.study'),
  ];
  const draw = drawOf({
    discountFracPerYear: nominalRate(real, inflation),
    inflationFracPerYear: inflation,
    electricityEscalationFracPerYear: nominalRate(num(c, 'inputs.energy_real_escalation'), inflation),
    upkeepUsdPerYear: num(c, 'inputs.upkeep'),
  });
  const expected = Array.from({ length: n }, (_, k) =>
    year({ energyUsd: num(c, 'inputs.energy'), boughtLeftFrac: lifeLeftFrac(k + 1, num(c, 'inputs.life')) }),
  );
  const price = money(num(c, 'inputs.initial'));
  const flows = [{ kind: 'price', months: 0, amount: price, usd: price.toNumber() }] as const;
  return { c, real, inflation, draw, expected, price, flows, timing };
}

test('outside: rows give the reference total at year end, in floats and in decimals', () => {
  const { c, draw, expected, price, flows, timing } = example('endOfYear');
  const rows = yearRows(expected, flows, price.toNumber(), draw, timing);
  near(rows.at(-1)?.cumulativePresentValueUsd ?? 0, num(c, 'expected.PV_current'), c.tolerance, 'rows');
  near(
    quotedTotal(expected, flows, price, draw, timing).toNumber(),
    num(c, 'expected.PV_current'),
    c.tolerance,
    'decimal',
  );
});

test('outside: rows give the reference total in the middle of the year', () => {
  const { draw, expected, price, flows, timing } = example('midYear');
  const c = checkOf('lcc-midyear-variants');
  const rows = yearRows(expected, flows, price.toNumber(), draw, timing);
  near(rows.at(-1)?.cumulativePresentValueUsd ?? 0, num(c, 'expected.PV_a'), c.tolerance, 'rows');
  near(
    quotedTotal(expected, flows, price, draw, timing).toNumber(),
    num(c, 'expected.PV_a'),
    c.tolerance,
    'decimal',
  );
});

test('identity: constant dollars at the real rate give the nominal total', () => {
  const timings = ['endOfYear', 'midYear'] as const;
  expect(timings).toHaveLength(2);
  for (const timing of timings) {
    const { draw, expected, price, flows, real, inflation } = example(timing);
    const nominal = yearRows(expected, flows, price.toNumber(), draw, timing);
    const constant = inConstantDollars(nominal, inflation, timing);
    const total = constant.reduce((sum, row) => {
      const running = row.energyUsd + row.upkeepUsd + row.expectedRepairUsd + row.expectedReplacementUsd;
      const time = timing === 'midYear' ? Math.max(0, row.year - 0.5) : row.year;
      return (
        sum +
        row.upFrontUsd +
        running * presentValueFactor(real, time) +
        row.residualUsd * presentValueFactor(real, row.year)
      );
    }, 0);
    near(total, nominal.at(-1)?.cumulativePresentValueUsd ?? 0, 1e-7, timing);
    near(realRate(draw.values.discountFracPerYear, inflation), real, 1e-12, 'rate');
    // yearly upkeep is flat in constant dollars: 120 in every year
    expect(constant.slice(1).every((row) => Math.abs(row.upkeepUsd - 120) < 1e-9)).toBe(true);
  }
});

test('property: each row adds up, and rows add up to the total', () => {
  const frac = fc.double({ min: 0, max: 1, noNaN: true });
  const one = fc.record({
    energyUsd: fc.double({ min: 0, max: 6000, noNaN: true }),
    smallRepairsUsd: fc.double({ min: 0, max: 500, noNaN: true }),
    failsFrac: frac,
    plannedFrac: frac,
    failedByFrac: frac,
    boughtLeftFrac: frac,
    laterLeftFrac: frac,
  });
  const flow = fc.record({
    kind: fc.constantFrom('price' as const, 'loan' as const, 'rebate' as const),
    months: fc.integer({ min: 0, max: 320 }),
    cents: fc.integer({ min: -100_000, max: 1_000_000 }),
  });
  fc.assert(
    fc.property(
      fc.array(one, { minLength: 1, maxLength: 25 }),
      fc.array(flow, { maxLength: 20 }),
      fc.constantFrom('endOfYear' as const, 'midYear' as const),
      fc.constantFrom(0, 0.4, 1),
      (expected, list, timing, valueLeftFrac) => {
        const flows = list.map((f) => ({
          kind: f.kind,
          months: f.months,
          amount: money(f.cents / 100),
          usd: f.cents / 100,
        }));
        const draw = { ...plain, valueLeftFrac };
        const rows = yearRows(expected, flows, 9000, draw, timing);
        expect(rows).toHaveLength(expected.length + 1);
        const parts = rows.map(
          (r) =>
            r.upFrontUsd +
            r.loanUsd +
            r.energyUsd +
            r.upkeepUsd +
            r.expectedRepairUsd +
            r.expectedReplacementUsd +
            r.residualUsd,
        );
        expect(rows.every((r, k) => Math.abs(r.totalUsd - (parts[k] ?? Number.NaN)) < 1e-6)).toBe(true);
        const total = rows.reduce((sum, r) => sum + r.presentValueUsd, 0);
        const last = rows.at(-1)?.cumulativePresentValueUsd ?? Number.NaN;
        expect(Math.abs(total - last)).toBeLessThan(1e-6);
        const paid = flows.reduce((sum, f) => sum + f.usd, 0);
        expect(Math.abs(rows.reduce((sum, r) => sum + r.upFrontUsd + r.loanUsd, 0) - paid)).toBeLessThan(
          1e-6,
        );
        expect(
          Math.abs(quotedTotal(expected, flows, money(9000), draw, timing).toNumber() - last),
        ).toBeLessThan(0.00501);
      },
    ),
  );
});

test('property: a flow stands in its year and is discounted from its month', () => {
  const payment = (months: number) => [{ kind: 'loan', months, amount: money(100), usd: 100 }] as const;
  const rowsOf = (months: number) =>
    yearRows(
      [year({}), year({}), year({})],
      payment(months),
      0,
      drawOf({ upkeepUsdPerYear: 0, discountFracPerYear: 0.1 }),
      'endOfYear',
    );
  expect(rowsOf(12).map((r) => r.loanUsd)).toEqual([0, 100, 0, 0]);
  expect(rowsOf(13).map((r) => r.loanUsd)).toEqual([0, 0, 100, 0]);
  expect(rowsOf(0).map((r) => r.loanUsd)).toEqual([100, 0, 0, 0]);
  expect(rowsOf(36).at(-1)?.cumulativePresentValueUsd).toBeCloseTo(100 / 1.1 ** 3, 9);
  expect(rowsOf(6).at(-1)?.cumulativePresentValueUsd).toBeCloseTo(100 / 1.1 ** 0.5, 9);
  // after the stay: in the last row, but from its own day
  expect(rowsOf(48).map((r) => r.loanUsd)).toEqual([0, 0, 0, 100]);
  expect(rowsOf(48).at(-1)?.cumulativePresentValueUsd).toBeCloseTo(100 / 1.1 ** 4, 9);
});
