import { describe, expect, test } from 'vitest';
import { counted, dateWords, listWords, lowerFirst, phrase, plainNumber, wordsOf } from '@/lib/sheet/phrase';

const words = wordsOf('en');

describe('phrase', () => {
  test('identity: values are filled in', () => {
    expect(phrase(words, 'money.range', { low: '$1', high: '$2' })).toBe('$1 to $2');
  });

  test('identity: a sentence never goes out with a gap', () => {
    expect(() => phrase(words, 'money.range', { low: '$1' })).toThrow(/lacks high/);
  });

  test('identity: text of a customer is not taken for a placeholder', () => {
    const named = phrase(words, 'advice.recommended', { name: '{low} $& $1' });
    expect(named).toBe('We recommend \u201c{low} $& $1\u201d.');
  });
});

describe('counted', () => {
  test('identity: singular, plural and zero', () => {
    expect(counted(words, 'years', 1)).toBe('1 year');
    expect(counted(words, 'years', 7)).toBe('7 years');
    expect(counted(words, 'years', 0)).toBe('0 years');
    expect(counted(words, 'years', 2.5)).toBe('2.5 years');
    expect(counted(words, 'stay.asked', 1)).toBe('your 1 year');
    expect(counted(words, 'assumptions.omitted', 1)).toBe('1 more is there too.');
  });

  test('identity: every sentence that has one form for one has another for more', () => {
    const stems = Object.keys(words.phrases)
      .filter((code) => code.endsWith('.one'))
      .map((code) => code.slice(0, -4));
    expect(stems.length).toBeGreaterThan(5);
    expect(stems.filter((stem) => !(`${stem}.other` in words.phrases))).toEqual([]);
  });
});

describe('numbers, dates, lists', () => {
  test('identity: numbers as the locale writes them', () => {
    expect([1234.56, -0.04, 0.45].map((v) => plainNumber(words, v))).toEqual(['1,234.6', '0', '0.5']);
    expect(plainNumber(words, -12.34, 2)).toBe('\u221212.34');
  });

  test('identity: a date stays the day it is, whatever the machine\u2019s zone', () => {
    expect(dateWords(words, '2026-01-01')).toBe('January 1, 2026');
    expect(dateWords(words, '2024-02-29')).toBe('February 29, 2024');
  });

  test('identity: lists of one, two, three', () => {
    expect(listWords(words, ['a'])).toBe('a');
    expect(listWords(words, ['a', 'b'])).toBe('a and b');
    expect(listWords(words, ['a', 'b', 'c'])).toBe('a, b, and c');
  });

  test('identity: a label inside a sentence', () => {
    expect(['Suction pressure', 'SEER2', 'pressure'].map(lowerFirst)).toEqual([
      'suction pressure',
      'SEER2',
      'pressure',
    ]);
  });
});
