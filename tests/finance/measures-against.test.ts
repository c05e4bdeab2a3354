import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareChoices } from '@/lib/finance/compare-choices';
import { anyInput } from './arbitraries';
import { near } from './checks';
import { energyOf, exampleCosts, exampleInput, leave, single, variable } from './fixtures';

test('outside: simple payback of a replacement by hand', () => {
  const c = compareChoices(exampleInput()).choices.find((x) => x.id === 'variable');
  // net price 12,150; year 1: energy (1890 - 940) x 1.025, small repairs (140 - 40) x 1.025, the same upkeep
  near(
    c?.simplePayback.kind === 'years' ? c.simplePayback.years : 0,
    12_150 / ((950 + 100) * 1.025),
    1e-9,
    'payback',
  );
});

test('identity: ratio, return, payback and net saving never contradict each other', () => {
  fc.assert(
    fc.property(anyInput, (input) => {
      const comparison = compareChoices(input);
      const d = comparison.discountFracPerYear;
      const rest = comparison.choices.slice(1);
      const ok = rest.map((c) => {
        const saves = c.netSavingUsd.likely > 1e-6;
        const loses = c.netSavingUsd.likely < -1e-6;
        const ratio = c.savingsToInvestment.kind === 'ratio' ? c.savingsToInvestment.ratio : saves ? 2 : 0;
        const rate = c.adjustedReturn.kind === 'rate' ? c.adjustedReturn.fracPerYear : saves ? d + 1 : d - 1;
        const paidBack = c.discountedPayback.kind === 'years';
        const dear =
          c.discountedPayback.kind === 'none' && c.discountedPayback.why.code === 'notPaidBackInStay';
        const meaning = c.savingsToInvestment.kind === 'ratio';
        return (
          !(meaning && saves && ratio < 1) &&
          !(meaning && loses && ratio > 1) &&
          !(meaning && saves && rate < d - 1e-9) &&
          !(meaning && loses && rate > d + 1e-9) &&
          !(paidBack && loses) &&
          !(dear && saves)
        );
      });
      expect(ok.every(Boolean)).toBe(true);
    }),
    { numRuns: 80 },
  );
});

test('identity: net saving = (ratio - 1) x extra capital, by the rows', () => {
  const c = compareChoices(exampleInput({ choices: [leave, { ...single, financing: { kind: 'cash' } }] }));
  const [base, other] = c.choices;
  const running = (x: typeof base) =>
    (x?.rows ?? []).reduce(
      (sum, r) => sum + (r.energyUsd + r.upkeepUsd + r.expectedRepairUsd) / 1.05 ** r.year,
      0,
    );
  const saved = running(base) - running(other);
  const extra = saved - (other?.netSavingUsd.likely ?? 0);
  near(
    other?.savingsToInvestment.kind === 'ratio' ? other.savingsToInvestment.ratio : 0,
    saved / extra,
    1e-9,
    'ratio',
  );
});

test('property: leaving it is the base, and a choice that costs less at the start says so', () => {
  const free = { ...variable, id: 'single', priceLines: [], rebates: [] };
  const c = compareChoices({ ...exampleInput({ choices: [leave, free] }), energy: energyOf(exampleCosts) });
  expect(c.choices[0]?.adjustedReturn).toEqual({ kind: 'none', why: { code: 'isTheBase' } });
  expect(c.choices[1]?.simplePayback).toEqual({ kind: 'none', why: { code: 'costsLessUpFront' } });
  expect(c.choices[1]?.discountedPayback).toEqual({ kind: 'none', why: { code: 'costsLessUpFront' } });
  expect(c.choices[1]?.savingsToInvestment).toEqual({ kind: 'none', why: { code: 'costsNoExtraCapital' } });
});
