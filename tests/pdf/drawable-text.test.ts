import { describe, expect, test } from 'vitest';
import { drawableSheet, drawableText } from '@/components/pdf/drawable-text';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { allTexts } from '../sheet/fixtures/all-texts';
import { orificeInput } from '../sheet/fixtures/orifice-heat-pump';

describe('drawableText', () => {
  const cases: readonly [string, string, string][] = [
    [
      'English and Spanish stay',
      'A \u201cquote\u201d \u2013 5 % \u00bfQu\u00e9? \u00d1and\u00fa',
      'A \u201cquote\u201d \u2013 5 % \u00bfQu\u00e9? \u00d1and\u00fa',
    ],
    [
      'other Latin letters stay',
      '\u0141ukasz \u0106wik \u0159e\u0161',
      '\u0141ukasz \u0106wik \u0159e\u0161',
    ],
    ['an accent typed apart is joined', 'Jose\u0301', 'Jos\u00e9'],
    ['an unknown accent leaves its letter', '\u1e2b\u1ea1', 'ha'],
    ['other scripts become question marks', '\u05e9\u05dc \u{1f600}', '?? ?'],
    ['line breaks and tabs become blanks', 'a\nb\tc', 'a b c'],
    ['marks that show nothing go', 'a\u200bb\u202ec', 'abc'],
  ];
  test.each(cases)('identity: %s', (_, typed, expected) => {
    expect(drawableText(typed)).toBe(expected);
  });

  test('wiring: the sheet\u2019s own sentences need no stand-in', () => {
    const sheet = composeSheet(orificeInput);
    const changed = allTexts(sheet).filter((text) => drawableText(text) !== text);
    expect(changed).toEqual([]);
    expect(drawableSheet(sheet)).toEqual(sheet);
  });
});
