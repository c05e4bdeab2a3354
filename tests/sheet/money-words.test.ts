import { describe, expect, test } from 'vitest';
import { estimate } from '@/lib/math/estimate';
import { dollarWords, isZeroMoney, moneyRangeWords, quotedWords, savingWords } from '@/lib/sheet/money-words';
import { wordsOf } from '@/lib/sheet/phrase';

const words = wordsOf('en');

describe('moneyRangeWords', () => {
  test('identity: an estimate is told with its range, rounded to what the range supports', () => {
    const money = moneyRangeWords(words, estimate(1143, 1389, 1781));
    expect(money.full).toBe('about $1,400 (between $1,100 and $1,800)');
    expect(money.likely).toBe('about $1,400');
    expect(money.range).toBe('$1,100 to $1,800');
    expect(money.usd).toEqual({ low: 1100, likely: 1400, high: 1800 });
  });

  test('identity: an estimate without a range says so and is no lone number', () => {
    const money = moneyRangeWords(words, estimate(504, 504, 504));
    expect(money.range).toBeUndefined();
    expect(money.full).toBe('about $500 (range not known)');
  });

  test('identity: zero', () => {
    expect(moneyRangeWords(words, estimate(0, 0, 0)).likely).toBe('about $0');
  });
});

describe('savingWords', () => {
  const cases: readonly [string, [number, number, number], string][] = [
    ['a sure saving', [310, 2730, 5640], 'about $3,000 less (between $200 and $6,000)'],
    [
      'a low end far below its range is not nothing',
      [185, 2230, 4420],
      'about $2,000 less (between $100 and $4,500)',
    ],
    [
      'a low end below the smallest step is nothing',
      [4, 2230, 4420],
      'about $2,000 less (between $0 and $4,500)',
    ],
    ['a likely amount that the step swallows is not told', [185, 420, 6400], 'between $100 and $7,000 less'],
    [
      'an extra cost far below its range is not nothing',
      [-4420, -2230, -185],
      'about $2,000 more (between $100 and $4,500)',
    ],
    ['a clear saving', [1400, 2730, 3100], 'about $2,800 less (between $1,400 and $3,200)'],
    ['a sure extra cost', [-3220, -2100, -870], 'about $2,000 more (between $800 and $3,400)'],
    ['either', [-1210, 2290, 6120], 'between $2,000 more and $7,000 less'],
    ['nothing', [0, 0, 0], 'about the same'],
  ];
  test.each(cases)('identity: %s', (_, [low, likely, high], expected) => {
    expect(savingWords(words, estimate(low, likely, high))).toBe(expected);
  });
});

describe('quotedWords', () => {
  const cases: readonly [string, string][] = [
    ['0.00', '$0.00'],
    ['-0.00', '$0.00'],
    ['7.05', '$7.05'],
    ['1379.23', '$1,379.23'],
    ['12345678901234567.89', '$12,345,678,901,234,567.89'],
    ['-400.00', '\u2212$400.00'],
  ];
  test.each(cases)('identity: %s is printed to the cent as %s', (money, expected) => {
    expect(quotedWords(money)).toBe(expected);
  });

  test('identity: refuses what was not quoted to the cent', () => {
    expect(() => quotedWords('12.5')).toThrow(/money text/);
    expect(() => quotedWords('1e3')).toThrow(/money text/);
  });

  test('identity: nothing is recognised as nothing', () => {
    expect([isZeroMoney('0.00'), isZeroMoney('-0.00'), isZeroMoney('0.01')]).toEqual([true, true, false]);
  });
});

describe('dollarWords', () => {
  test('identity: grouping, sign before the dollar sign, no minus zero', () => {
    expect([1400, -300, 0, -0].map((v) => dollarWords(words, v))).toEqual([
      '$1,400',
      '\u2212$300',
      '$0',
      '$0',
    ]);
  });
});
