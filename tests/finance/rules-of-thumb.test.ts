import { describe, expect, test } from 'vitest';
import { compareChoices } from '@/lib/finance/compare-choices';
import { rulesOfThumb, thumbDiffers, type UnseenByThumb } from '@/lib/finance/rules-of-thumb';
import en from '@/lib/finance/wording/en.json';
import { say } from '@/lib/visit/wording';
import { coverTopic, near, nums, raw, rows } from './checks';
import { exampleInput } from './fixtures';

describe('rules of thumb against their usual wording', () => {
  coverTopic('rules of thumb', 2, {
    'thumb-5000': (c) => {
      const got = rows(c, 'inputs.cases').map(([age = 0, price = 0]) => rulesOfThumb(age, price, 9500));
      expect(got.map((r) => r.ageTimesPriceUsd)).toEqual(nums(c, 'expected.product'));
      expect(got.map((r) => r.ageTimesPriceSays === 'replace')).toEqual(raw(c, 'expected.replace'));
    },
    'thumb-50pct': (c) => {
      const got = rows(c, 'inputs.cases').map(([price = 0, unit = 0]) => rulesOfThumb(10, price, unit));
      const shares = nums(c, 'expected.share');
      expect(got).toHaveLength(3);
      for (const [k, r] of got.entries())
        near(r.priceShareFrac, shares[k] ?? Number.NaN, c.tolerance, `share ${k}`);
      expect(got.map((r) => r.priceShareSays === 'replace')).toEqual(raw(c, 'expected.replace'));
    },
  });
});

test('wiring: shown beside each priced repair, by its price and the price of a new unit', () => {
  const { choices } = compareChoices(exampleInput());
  expect(choices.filter((c) => c.rulesOfThumb !== undefined).map((c) => c.id)).toEqual(['orifice', 'drier']);
  const drier = choices.find((c) => c.id === 'drier')?.rulesOfThumb;
  near(drier?.ageTimesPriceUsd ?? 0, 15 * 872.94, 1e-9, '15 years');
  near(drier?.priceShareFrac ?? 0, 872.94 / 9002.05, 1e-12, 'share');
  expect([drier?.ageTimesPriceSays, drier?.priceShareSays]).toEqual(['replace', 'repair']);
});

test('property: each rule that parts from the full analysis says so with what it does not see, and only then', () => {
  const rules = rulesOfThumb(15, 3000, 9000);
  const seen = { choice: 'Fix', stayYears: 4, curesFrac: 0.9, extraEnergyUsdPerYear: 300 };
  expect(thumbDiffers(rules, { ...seen, fullSays: 'repair' }).map((s) => s.code)).toEqual([
    'thumbAge.repair.stay',
  ]);
  const codes = (over: Partial<UnseenByThumb>) =>
    thumbDiffers(rules, { ...seen, fullSays: 'replace', ...over }).map((s) => s.code);
  expect(codes({})).toEqual(['thumbShare.replace.energy']);
  expect(codes({ curesFrac: 0.2 })).toEqual(['thumbShare.replace.cause']);
  const all = Object.keys(en).filter((code) => code.startsWith('thumb'));
  expect(all).toHaveLength(8);
  const said = thumbDiffers(rules, { ...seen, fullSays: 'replace' }).map((s) => say(en, s));
  expect(said[0]).toContain('$300 a year');
});
