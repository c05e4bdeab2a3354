import { describe, expect, test } from 'vitest';
import { appraiseRepair } from '@/lib/appraise/appraise-repair';
import { moneyRangeWords, savingWords } from '@/lib/sheet/money-words';
import { wordsOf } from '@/lib/sheet/phrase';
import { allTexts } from './fixtures/all-texts';
import { beforeAfterOf, readTwice } from './fixtures/documents';

const words = wordsOf('en');
const [visit] = readTwice;
if (visit === undefined) throw new Error('no demo visit was read twice');
const repair = appraiseRepair(visit);
if (repair.kind === 'none') throw new Error(repair.why);
const paper = beforeAfterOf(visit);

function sectionOf(id: string, of = paper) {
  const section = of.sections.find((s) => s.id === id);
  if (section === undefined) throw new Error(`no section ${id}`);
  return section;
}

describe('the sheet after a repair', () => {
  test('wiring: names the repair and the two runs', () => {
    const facts = paper.facts.map((fact) => `${fact.label}: ${fact.text}`).join(' | ');
    expect(facts).toContain('Done: Keep the registers open, new filter');
    expect(facts).toContain('\u201cas found\u201d with \u201cregisters opened\u201d (heating)');
  });

  test('wiring: what improved, in output, power and causes', () => {
    const text = sectionOf('improved').sentences?.join(' ') ?? '';
    expect(text).toContain('Before, the unit gave about 98\u00a0%');
    expect(text).toContain('Now it gives about 100\u00a0%');
    expect(text).toContain('no longer show too little air through the indoor unit');
    expect(text).toMatch(/\d readings are clearly closer/);
  });

  test('wiring: saving read and saving predicted stand side by side, as computed', () => {
    const facts = sectionOf('saving').facts?.map((fact) => fact.text);
    expect(facts).toEqual([
      moneyRangeWords(words, repair.costBeforeUsd).full,
      moneyRangeWords(words, repair.costAfterUsd).full,
      savingWords(words, repair.measuredSavingUsd),
      savingWords(words, repair.predictedSavingUsd ?? { low: 0, likely: 0, high: 0 }),
    ]);
    expect(sectionOf('saving').sentences?.[0]).toContain('agree within their ranges');
  });

  test('wiring: a saving outside the prediction is said, either way, and so is a missing prediction', () => {
    const verdict = (change: object) => sectionOf('saving', beforeAfterOf(visit, change)).sentences?.[0];
    const small = { low: 10, likely: 20, high: 30 };
    const large = { low: 100, likely: 200, high: 300 };
    expect(verdict({ measuredSavingUsd: small, predictedSavingUsd: large })).toMatch(/less than we expected/);
    expect(verdict({ measuredSavingUsd: large, predictedSavingUsd: small })).toMatch(/more than we expected/);
    expect(verdict({ predictedSavingUsd: undefined })).toMatch(/was not predicted/);
  });

  test('wiring: every reading of either run has a row with change and verdict', () => {
    const rows = sectionOf('readings').tables?.[0]?.rows ?? [];
    const row = (name: string) => rows.find(({ cells }) => cells[0] === name)?.cells;
    expect(row('Discharge line temperature')).toEqual([
      'Discharge line temperature',
      '197 \u00b0F',
      '173 \u00b0F',
      '\u221224',
      '127 to 185',
      'now normal',
    ]);
    expect(row('Suction pressure')?.slice(1, 4)).toEqual(['89 psig', '89 psig', '0']);
    expect(rows.length).toBeGreaterThan(25);
  });

  test('wiring: what was not checked is said: bills, the other mode, readings not taken again, how long it lasts', () => {
    const [first, second] = visit.runs;
    if (first === undefined || second === undefined) throw new Error('two runs');
    const { blowerW: _blower, ...less } = second;
    const text = sectionOf('not-verified', beforeAfterOf({ ...visit, runs: [first, less] })).sentences?.join(
      ' ',
    );
    expect(text).toContain('not read off a bill');
    expect(text).toContain('We measured no cooling after the repair.');
    expect(text).toContain('Not read again after the repair: blower watts.');
    expect(text).toContain('of one day');
  });

  test('identity: no text holds an unfilled place, a bare code, NaN or undefined', () => {
    const texts = allTexts({ ...paper, pageOf: '' });
    expect(texts.length).toBeGreaterThan(100);
    expect(texts.filter((text) => /\{\w+\}|NaN|undefined|Infinity/.test(text))).toEqual([]);
    expect(texts.filter((text) => /^[a-z]+(\.[a-z]+)*[A-Z]\w*$/.test(text))).toEqual([]);
  });
});
