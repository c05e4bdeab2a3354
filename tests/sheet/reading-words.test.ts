import { describe, expect, test } from 'vitest';
import { wordsOf } from '@/lib/sheet/phrase';
import { quantityName, quantityRangeWords, quantityWords } from '@/lib/sheet/reading-words';

const words = wordsOf('en');

describe('reading words', () => {
  test('wiring: names come from the diagnosis, else from the visit', () => {
    expect(quantityName(words, 'suctionSuperheatFd')).toBe('Suction superheat');
    expect(quantityName(words, 'suctionPsig')).toBe('Suction pressure');
    expect(quantityName(words, 'noSuchReading')).toBeUndefined();
  });

  const cases: readonly [number, string, string][] = [
    [118.4, 'psig', '118 psig'],
    [0.453, 'in. w.c.', '0.45 in. w.c.'],
    [11.24, 'A', '11.2 A'],
    [0.643, 'frac', '64\u00a0%'],
    [1.234, 'ratio', '1.23'],
    [-3.2, 'Fd', '\u22123 \u00b0F'],
    [31709, 'Btu/h', '31,700 Btu/h'],
  ];
  test.each(cases)('identity: %s %s is printed as "%s"', (value, unit, expected) => {
    expect(quantityWords(words, value, unit)).toBe(expected);
  });

  test('identity: a range names its unit once', () => {
    expect(quantityRangeWords(words, 52.2, 60.4, 'psig')).toBe('52 to 60 psig');
    expect(quantityRangeWords(words, 0.85, 1.1, 'ratio')).toBe('0.85 to 1.1');
    expect(quantityRangeWords(words, 0.486, 0.683, 'frac')).toBe('49 to 68 %');
  });
});
