import { describe, expect, test } from 'vitest';
import { estimate } from '@/lib/math/estimate';
import { chanceBase, chanceRangeWords, chanceWords } from '@/lib/sheet/chance-words';
import { wordsOf } from '@/lib/sheet/phrase';

const words = wordsOf('en');

describe('chanceWords', () => {
  const cases: readonly [number, 10 | 100, string][] = [
    [0, 10, 'less than 1 in 100'],
    [0.0099, 10, 'less than 1 in 100'],
    [0.01, 10, '1 in 100'],
    [0.04, 10, '4 in 100'],
    [0.0949, 10, '9 in 100'],
    [0.095, 10, '1 in 10'],
    [0.3, 10, '3 in 10'],
    [0.349, 10, '3 in 10'],
    [0.35, 10, '4 in 10'],
    [0.949, 10, '9 in 10'],
    [0.951, 10, 'more than 9 in 10'],
    [1, 10, 'more than 9 in 10'],
    [0.3, 100, '30 in 100'],
    [0.58, 100, '60 in 100'],
    [0.005, 100, 'less than 1 in 100'],
    [0.99, 100, 'more than 99 in 100'],
  ];
  test.each(cases)('identity: %s out of %s is told as "%s"', (chance, base, expected) => {
    expect(chanceWords(words, chance, base)).toBe(expected);
  });

  test('identity: refuses what is no chance', () => {
    expect(() => chanceWords(words, 1.01)).toThrow(/chance/);
    expect(() => chanceWords(words, -0.01)).toThrow(/chance/);
  });
});

describe('one denominator for a row', () => {
  test('identity: out of ten unless one of them is below one in ten', () => {
    expect(chanceBase([0.3, 0.6])).toBe(10);
    expect(chanceBase([0.3, 0.095])).toBe(10);
    expect(chanceBase([0.3, 0.05])).toBe(100);
    expect(chanceBase([])).toBe(10);
  });
});

describe('chanceRangeWords', () => {
  test('identity: low end down, high end up, steps of five above ten in a hundred', () => {
    expect(chanceRangeWords(words, estimate(0.41, 0.58, 0.76), 10)).toBe('4 to 8 in 10');
    expect(chanceRangeWords(words, estimate(0.41, 0.58, 0.76), 100)).toBe('40 to 80 in 100');
    expect(chanceRangeWords(words, estimate(0.021, 0.05, 0.089), 100)).toBe('2 to 9 in 100');
  });

  test('identity: an end that already lies on a step stays there', () => {
    expect(chanceRangeWords(words, estimate(0.3, 0.5, 0.7), 10)).toBe('3 to 7 in 10');
  });

  test('identity: no range is told when both ends read the same', () => {
    expect(chanceRangeWords(words, estimate(0.3, 0.3, 0.3), 10)).toBeUndefined();
  });
});
