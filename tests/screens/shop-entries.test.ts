import { expect, test } from 'vitest';
import { buildFieldBook } from '@/components/draft/build-field-book';
import type { FieldEntry } from '@/components/draft/field-book';
import { checkNumber, markErrors, numberWords } from '@/components/shop/check-entry';
import { DEFAULT_GROUPS } from '@/components/shop/default-groups';
import visitWords from '@/components/words/en.json';
import shopWords from '@/components/words/shop.json';
import { defaultPriceBook } from '@/lib/finance/default-price-book';
import { assumptionKeys } from '@/lib/visit/assumption-keys';
import { PriceBook } from '@/lib/visit/price-book';
import { ruleKeys, ShopRuleValues } from '@/lib/visit/shop-rules';

const en = { ...visitWords, ...shopWords };
const rules = buildFieldBook(ShopRuleValues);
const entry = (key: string): FieldEntry => {
  const found = rules[key];
  if (found === undefined) throw new Error(key);
  return found;
};

test('wiring: every threshold has a label, limits and a sentence on why it matters', () => {
  const words: Readonly<Record<string, string>> = en;
  expect(ruleKeys.length).toBeGreaterThan(5);
  expect(ruleKeys.filter((key) => rules[key]?.label === undefined || rules[key]?.max === undefined)).toEqual(
    [],
  );
  expect(ruleKeys.filter((key) => words[`shop.rule.${key}`] === undefined)).toEqual([]);
});

test('wiring: every unit and every test of the price book has words', () => {
  const words: Readonly<Record<string, string>> = en;
  const needed = [
    ...(buildFieldBook(PriceBook)['items.*.per']?.options ?? []).map((per) => `shop.per.${per}`),
    ...defaultPriceBook.entries.flatMap(({ subject }) =>
      subject.kind === 'test' ? [`shop.test.${subject.test}`] : [],
    ),
  ];
  expect(needed.length).toBeGreaterThan(15);
  expect(needed.filter((code) => words[code] === undefined)).toEqual([]);
});

test('property: percent is kept as a fraction, money in dollars, an empty box as no value', () => {
  expect(checkNumber('60', entry('leastChanceCheapestFrac'))).toEqual({ ok: true, value: 0.6 });
  expect(checkNumber('7.25', entry('leastChanceCheapestFrac'))).toEqual({ ok: true, value: 0.0725 });
  expect(checkNumber('$1,500', entry('costlyRepairUsd'))).toEqual({ ok: true, value: 1500 });
  expect(checkNumber(' ', entry('costlyRepairUsd'))).toEqual({ ok: true });
  expect(checkNumber('', entry('costlyRepairUsd'), true).ok).toBe(false);
});

test('property: what cannot be used names field, value and limit', () => {
  const told = (typed: string, key: string) => {
    const check = checkNumber(typed, entry(key));
    return check.ok ? 'taken' : check.words;
  };
  expect(told('101', 'leastChanceCheapestFrac')).toBe(
    'Smallest chance of being cheapest must be between 0 and 100 %, but 101 was typed. Check the number and its unit.',
  );
  expect(told('-1', 'smallestNetSavingUsd')).toContain('between $0 and $20,000');
  expect(told('soon', 'longestPaybackYears')).toContain('“soon”');
  expect(numberWords(0.6, entry('leastChanceCheapestFrac'))).toBe('60 %');
  expect(numberWords(1500, entry('costlyRepairUsd'))).toBe('$1,500');
});

test('property: a change needs a date, a name and a reason', () => {
  expect(Object.keys(markErrors({ fromDate: '', setBy: ' ', why: '' }))).toEqual([
    'fromDate',
    'setBy',
    'why',
  ]);
  expect(markErrors({ fromDate: '2026-12-01', setBy: 'Ada', why: 'dearer' })).toEqual({});
});

test('wiring: every assumption stands in exactly one group of the page, and every verdict has words', () => {
  const grouped = DEFAULT_GROUPS.flatMap(({ keys }) => keys);
  expect([...grouped].sort()).toEqual([...assumptionKeys].sort());
  const words: Readonly<Record<string, string>> = en;
  const codes = [
    ...DEFAULT_GROUPS.map(({ id }) => `shop.defaults.group.${id}`),
    ...['worked', 'failed', 'notJudged'].map((verdict) => `shop.outcomes.verdict.${verdict}`),
  ];
  expect(codes.filter((code) => words[code] === undefined)).toEqual([]);
});
