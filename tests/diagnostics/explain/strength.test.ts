import { describe, expect, it } from 'vitest';
import { strengthOf } from '@/lib/diagnostics/explain/strength';

describe('words for the strength of evidence', () => {
  // Kass and Raftery 1995, twice the logarithm of the Bayes factor at 2, 6 and 10: status memory.
  it.each([
    [0.3, 'weak'],
    [0.99, 'weak'],
    [1, 'clear'],
    [2.9, 'clear'],
    [3, 'strong'],
    [-4.9, 'strong'],
    [5, 'veryStrong'],
    [-8, 'veryStrong'],
  ])('outside: %f in odds is %s', (weight, word) => {
    expect(strengthOf(weight)).toBe(word);
  });
});
