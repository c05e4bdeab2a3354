import readability from 'text-readability';
import { describe, expect, test } from 'vitest';
import { appraise } from '@/lib/appraise/appraise';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { demoFiles } from '../appraise/demo-files';
import { beforeAfterOf, readTwice } from './fixtures/documents';
import { sentencesOf } from './fixtures/page-one-sentences';

/** Highest school grade that page one may ask of its reader. Source: issue of the sheet, grade 8. */
const highestGrade = 8;

/** Words of the trade that a customer need not know; none stands on page one without its explanation. */
const jargon = [
  'psig',
  'psia',
  'superheat',
  'subcooling',
  'SEER',
  'SEER2',
  'EER',
  'EER2',
  'HSPF',
  'HSPF2',
  'COP',
  'NPV',
  'IRR',
  'kWh',
  'Btu',
  'Btu/h',
  'cfm',
  'TXV',
  'EEV',
  'RLA',
  'static pressure',
  'enthalpy',
  'condensing',
  'evaporating',
  'compression ratio',
  'isentropic',
  'capacitance',
  'microfarad',
  'hazard',
  'discount rate',
  'present value',
  'residual',
  'sigma',
  'percentile',
  'A2L',
  'non-condensables',
];

/** A word of the trade that may stand there with the words that explain it. */
const explained: readonly (readonly [RegExp, RegExp])[] = [
  [/\bcompressor\b/i, /the pump of the unit/],
  [/\bcapacitor\b/i, /helps? (the|a|the outdoor) ?\w* ?(motor|compressor|fan) run|\(its capacitor\)/],
  [/\breversing valve\b/i, /switches between heating and cooling/],
  [/\bkilowatt-hour\b/i, /the unit on your power bill/],
  [/\btoday\u2019s money\b/i, /a dollar paid in a later year counts for less/],
];

/** Names, amounts and figures taken out, as the rule for reading grades asks. */
function plain(text: string): string {
  return text
    .replace(/\u201c[^\u201d]*\u201d/g, 'it')
    .replace(/\([^)]*\d[^)]*\)/g, '')
    .replace(/[\u2212+]?\$?\d[\d,.]*(\u00a0?%)?/g, 'ten')
    .replace(/\s+/g, ' ');
}

function grade(sentences: readonly string[]): number {
  return readability.fleschKincaidGrade(plain(sentences.join(' ')));
}

describe.each(demoFiles.map((visit) => [visit.id, visit] as const))('page one of %s', (_, visit) => {
  const sheet = composeSheet({ ...appraise(visit), locale: 'en' });
  const sentences = sentencesOf(sheet);
  const whole = sentences.join(' ');

  test('outside: reading grade at most 8 [Flesch-Kincaid, by text-readability]', () => {
    expect(sentences.length).toBeGreaterThan(8);
    expect(grade(sentences)).toBeLessThanOrEqual(highestGrade);
  });

  test('identity: no word of the trade without its explanation', () => {
    const own = plain(whole);
    const words = jargon.filter((word) => new RegExp(`(?<![\\w-])${word}(?![\\w-])`, 'i').test(own));
    expect(words).toEqual([]);
    const bare = explained.filter(([term, meaning]) => term.test(own) && !meaning.test(whole));
    expect(bare.map(([term]) => term.source)).toEqual([]);
  });
});

describe.each(readTwice.map((visit) => [visit.id, visit] as const))('before and after of %s', (_, visit) => {
  test('outside: reading grade at most 8 [Flesch-Kincaid, by text-readability]', () => {
    const { sections } = beforeAfterOf(visit);
    const sentences = sections.filter((s) => s.weight === 'decides').flatMap((s) => s.sentences ?? []);
    expect(sentences.length).toBeGreaterThan(8);
    expect(grade(sentences)).toBeLessThanOrEqual(highestGrade);
  });
});

test('identity: the measure tells hard words from easy ones', () => {
  const hard =
    'The isentropic efficiency deteriorates considerably under disadvantageous operating circumstances.';
  expect(grade([hard])).toBeGreaterThan(12);
  expect(grade(['The unit gives less heat. It costs more to run.'])).toBeLessThan(4);
});
