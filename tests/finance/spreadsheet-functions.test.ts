import { describe, expect } from 'vitest';
import { daysBetween } from '@/lib/finance/calendar';
import { levelLoan, levelPayment } from '@/lib/finance/level-loan';
import { exact, money } from '@/lib/finance/money';
import { type Check, checkOf, coverTopic, near, num, nums, raw, rows } from './checks';
import { fv, internalRates, mirr, nper, npv, pmt, pv, rate, xnpv } from './spreadsheet-functions';

/** "0.075/12" or a number. */
function rateOf(c: Check): number {
  const [top, bottom] = String(raw(c, 'inputs.rate')).split('/').map(Number);
  return (top ?? Number.NaN) / (bottom ?? 1);
}

function oneRoot(c: Check): void {
  const roots = internalRates(nums(c, 'inputs.values'));
  expect(roots.some((r) => Math.abs(r - num(c, 'expected.irr')) <= (c.tolerance ?? 0))).toBe(true);
  expect(roots).toHaveLength(c.id === 'npf-irr-3' ? 2 : c.id === 'npf-irr-5' ? 3 : 1);
}

function modified(c: Check): void {
  const got = mirr(nums(c, 'inputs.values'), num(c, 'inputs.finance_rate'), num(c, 'inputs.reinvest_rate'));
  near(got, num(c, 'expected.mirr'), c.tolerance, c.id);
}

describe('spreadsheet functions against the outside', () => {
  coverTopic('spreadsheet functions', 34, {
    'npf-fv': (c) =>
      near(
        fv(rateOf(c), num(c, 'inputs.nper'), num(c, 'inputs.pmt'), num(c, 'inputs.pv')),
        num(c, 'expected.fv'),
        c.tolerance,
        c.id,
      ),
    'npf-pv': (c) =>
      near(
        pv(rateOf(c), num(c, 'inputs.nper'), num(c, 'inputs.pmt'), num(c, 'inputs.fv')),
        num(c, 'expected.pv'),
        c.tolerance,
        c.id,
      ),
    // 28 digits in the source, 17 in a float: a relative 1e-14
    'npf-pv-decimal': (c) =>
      near(
        pv(rateOf(c), num(c, 'inputs.nper'), num(c, 'inputs.pmt')),
        Number(raw(c, 'expected.pv')),
        1e-8,
        c.id,
      ),
    'npf-pmt': (c) =>
      near(
        pmt(rateOf(c), num(c, 'inputs.nper'), num(c, 'inputs.pv')),
        num(c, 'expected.pmt'),
        c.tolerance,
        c.id,
      ),
    'npf-pmt-decimal': (c) => {
      // the product's own payment is a decimal too: all 28 digits but the last two or three,
      // which hold the source's own rounding inside the power
      const payment = levelPayment({ principal: money(15_000), rateFracPerYear: 0.08, termMonths: 60 }).neg();
      expect(
        payment
          .minus(exact(String(raw(c, 'expected.pmt'))))
          .abs()
          .lt('1e-22'),
      ).toBe(true);
    },
    'npf-pmt-zero-rate': (c) =>
      near(pmt(0, num(c, 'inputs.nper'), num(c, 'inputs.pv')), num(c, 'expected.pmt'), c.tolerance, c.id),
    'npf-nper': (c) =>
      near(
        nper(rateOf(c), num(c, 'inputs.pmt'), num(c, 'inputs.pv')),
        num(c, 'expected.nper'),
        c.tolerance,
        c.id,
      ),
    'npf-nper-begin': (c) => {
      const at = (begin: boolean) => nper(rateOf(c), num(c, 'inputs.pmt'), 0, num(c, 'inputs.fv'), begin);
      near(at(false), num(c, 'expected.end'), c.tolerance, 'end');
      near(at(true), num(c, 'expected.begin'), c.tolerance, 'begin');
    },
    'npf-nper-zero-rate': (c) =>
      near(nper(0, num(c, 'inputs.pmt'), num(c, 'inputs.pv')), num(c, 'expected.nper'), c.tolerance, c.id),
    'npf-ipmt-ppmt-schedule': (c) => {
      const [i, n, p] = [rateOf(c), num(c, 'inputs.nper'), num(c, 'inputs.pv')];
      const payment = pmt(i, n, p);
      let balance = p;
      const got = Array.from({ length: n }, (_, k) => {
        const interest = -balance * i;
        balance += payment - interest;
        return [k + 1, payment - interest, interest, balance];
      });
      const expected = rows(c, 'expected.rows');
      expect(got).toHaveLength(12);
      for (const [k, row] of got.entries()) {
        for (const [j, value] of row.entries())
          near(value, expected[k]?.[j] ?? Number.NaN, c.tolerance, `row ${k}`);
      }
      near(
        got.reduce((sum, r) => sum + (r[2] ?? 0), 0),
        num(c, 'expected.interest_total'),
        c.tolerance,
        'interest',
      );
      // the product's schedule in cents stays within half a cent a month of it
      const cents = levelLoan({ principal: money(p), rateFracPerYear: i * 12, termMonths: n });
      expect(
        cents.rows.every((r, k) => Math.abs(r.balance.toNumber() - (got[k]?.[3] ?? 0)) <= 0.005 * (k + 2)),
      ).toBe(true);
    },
    'npf-ppmt-decimal': (c) => {
      const payment = levelPayment({ principal: money(55_000), rateFracPerYear: 0.1, termMonths: 60 });
      const principal = payment.minus(exact(55_000).times(exact('0.1').div(12))).neg();
      expect(
        principal
          .minus(exact(String(raw(c, 'expected.ppmt'))))
          .abs()
          .lt('1e-22'),
      ).toBe(true);
    },
    'npf-ppmt-begin': (c) => {
      // paid at the start of the period: the first payment holds no interest
      const i = rateOf(c);
      near(
        pmt(i, num(c, 'inputs.nper'), num(c, 'inputs.pv')) / (1 + i),
        num(c, 'expected.ppmt'),
        c.tolerance,
        c.id,
      );
    },
    'npf-ipmt-decimal': (c) => {
      const interest = exact(2000).times(exact('0.1').div(12)).neg();
      expect(
        interest
          .minus(exact(String(raw(c, 'expected.ipmt'))))
          .abs()
          .lt('1e-25'),
      ).toBe(true);
    },
    'npf-ipmt-series': (c) => {
      const [i, n, p] = [rateOf(c), num(c, 'inputs.nper'), num(c, 'inputs.pv')];
      const expected = nums(c, 'expected.ipmt');
      const got = nums(c, 'inputs.per').map((per) => i * fv(i, per - 1, pmt(i, n, p), p));
      expect(got).toHaveLength(4);
      for (const [k, value] of got.entries())
        near(value, expected[k] ?? Number.NaN, c.tolerance, `period ${k}`);
    },
    'npf-rate': (c) => {
      const got = rate(num(c, 'inputs.nper'), num(c, 'inputs.pmt'), num(c, 'inputs.pv'), num(c, 'inputs.fv'));
      near(got ?? Number.NaN, num(c, 'expected.rate'), c.tolerance, c.id);
    },
    'npf-rate-infeasible': (c) =>
      expect(
        rate(num(c, 'inputs.nper'), num(c, 'inputs.pmt'), num(c, 'inputs.pv'), num(c, 'inputs.fv')),
      ).toBe(raw(c, 'expected.rate')),
    'npf-npv': (c) =>
      near(npv(rateOf(c), nums(c, 'inputs.values')), num(c, 'expected.npv'), c.tolerance, c.id),
    'npf-npv-2': (c) =>
      near(npv(rateOf(c), nums(c, 'inputs.values')), num(c, 'expected.npv'), c.tolerance, c.id),
    ...Object.fromEntries([1, 2, 3, 4, 5, 6].map((k) => [`npf-irr-${k}`, oneRoot])),
    'npf-irr-none': (c) => {
      expect(raw(c, 'expected.irr')).toBe(null);
      expect(internalRates(nums(c, 'inputs.values'))).toEqual([]);
    },
    ...Object.fromEntries([1, 2, 3, 4, 5, 6].map((k) => [`npf-mirr-${k}`, modified])),
    'sheet-mirr': (c) => {
      const values = nums(c, 'inputs.values');
      const [short, other] = [values.slice(0, 4), nums(c, 'inputs.reinvest_rates')[2] ?? 0];
      const got = [mirr(values, 0.1, 0.12), mirr(short, 0.1, 0.12), mirr(values, 0.1, other)].map((r) =>
        Math.round(r * 100),
      );
      expect(got).toEqual(nums(c, 'expected.percent'));
    },
    'sheet-xirr': (c) => {
      const dates = raw(c, 'inputs.dates') as string[];
      const years = dates.map((d) => daysBetween(dates[0] ?? '', d) / 365);
      const roots = internalRates(nums(c, 'inputs.values'), years);
      expect(roots).toHaveLength(1);
      near(roots[0] ?? Number.NaN, num(c, 'expected.xirr'), c.tolerance, c.id);
    },
    'sheet-xnpv': (c) => {
      const dated = checkOf('sheet-xirr');
      const got = xnpv(
        num(c, 'inputs.rate'),
        raw(dated, 'inputs.dates') as string[],
        nums(dated, 'inputs.values'),
      );
      near(got, num(c, 'expected.xnpv'), c.tolerance, c.id);
    },
  });
});
