import { beforeAll, describe, expect, test } from 'vitest';
import { drawableText, drawableTexts } from '@/components/pdf/drawable-text';
import { type SheetFonts, sheetFonts } from '@/components/pdf/sheet-fonts';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { allTexts } from '../sheet/fixtures/all-texts';
import { orificeInput } from '../sheet/fixtures/orifice-heat-pump';

const lrm = '\u200e';
const cases: readonly [string, string, string][] = [
  [
    'English and Spanish stay',
    'A \u201cquote\u201d \u2013 5 % \u00bfQu\u00e9? \u00d1and\u00fa',
    'A \u201cquote\u201d \u2013 5 % \u00bfQu\u00e9? \u00d1and\u00fa',
  ],
  ['other Latin letters stay', '\u0141ukasz \u0106wik \u0159e\u0161', '\u0141ukasz \u0106wik \u0159e\u0161'],
  ['Vietnamese stays', 'Nguy\u1ec5n V\u0103n', 'Nguy\u1ec5n V\u0103n'],
  [
    'Greek and Cyrillic stay',
    '\u0395\u03bb\u03ad\u03bd\u03b7 \u0414\u043e\u043c',
    '\u0395\u03bb\u03ad\u03bd\u03b7 \u0414\u043e\u043c',
  ],
  ['an accent typed apart is joined', 'Jose\u0301', 'Jos\u00e9'],
  [
    'Hebrew stays and keeps its place before a number',
    '\u05e9\u05dc \u05db\u05d4, 12',
    `${lrm}\u05e9\u05dc \u05db\u05d4${lrm}, 12`,
  ],
  ['Arabic stays', '\u0645\u062d\u0645\u062f', `${lrm}\u0645\u062d\u0645\u062f${lrm}`],
  ['letters without a font stand as their numbers', 'a \u738b\u660e b', 'a [U+738B U+660E] b'],
  ['so does an emoji, without its marks', 'Bo \u{1f469}\u200d\u{1f527}\ufe0f', 'Bo [U+1F469 U+1F527]'],
  ['line breaks and tabs become blanks', 'a\nb\tc', 'a b c'],
  ['marks that show nothing go', 'a\u200bb\u202ec', 'abc'],
];

describe('drawableText', () => {
  let fonts: SheetFonts;
  beforeAll(async () => {
    fonts = await sheetFonts(cases.map(([, typed]) => typed.normalize('NFC')).join(' '));
  });

  test.each(cases)('identity: %s', (_, typed, expected) => {
    expect(drawableText(typed, fonts.draws)).toBe(expected);
  });

  test('wiring: the sheet\u2019s own sentences need no stand-in, and only Latin letters are loaded', async () => {
    const sheet = composeSheet(orificeInput);
    const own = await sheetFonts(JSON.stringify(sheet));
    expect(own.families).toEqual(['Atkinson Hyperlegible', 'Atkinson Hyperlegible Ext']);
    expect(allTexts(sheet).filter((text) => drawableText(text, own.draws) !== text)).toEqual([]);
    expect(drawableTexts(sheet, own.draws)).toEqual({ value: sheet, replaced: false });
  });

  test('wiring: a stand-in is told, brackets that were typed are not', () => {
    expect(drawableTexts({ name: '\u738b' }, fonts.draws)).toEqual({
      value: { name: '[U+738B]' },
      replaced: true,
    });
    expect(drawableTexts({ name: '[U+738B]' }, fonts.draws).replaced).toBe(false);
  });
});
