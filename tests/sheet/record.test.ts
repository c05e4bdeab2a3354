import { describe, expect, test } from 'vitest';
import { appraise } from '@/lib/appraise/appraise';
import { wordsOf } from '@/lib/sheet/phrase';
import { quantityWords } from '@/lib/sheet/reading-words';
import { rawReadings } from '@/lib/sheet/readings-section';
import { demoFiles } from '../appraise/demo-files';
import { allTexts } from './fixtures/all-texts';
import { recordOf } from './fixtures/documents';

const words = wordsOf('en');

describe.each(demoFiles.map((visit) => [visit.id, visit] as const))('the record of %s', (_, visit) => {
  const record = recordOf(visit);
  const appraisal = appraise(visit);
  const cells = record.sections.flatMap((s) => (s.tables ?? []).flatMap((t) => t.rows.map((r) => r.cells)));

  test('wiring: holds every reading, derived value with its source, target and assumption', () => {
    for (const run of visit.runs) {
      const missing = rawReadings(words, run).filter(
        (r) => !cells.some((c) => c[0] === r.label && c[1] === quantityWords(words, r.value, r.unit)),
      );
      expect(missing).toEqual([]);
    }
    const derived = appraisal.findings.runs.flatMap((run) => run.derived);
    expect(
      derived.filter((d) => !cells.some((c) => c[4] === d.source && c[3]?.startsWith(d.formula))),
    ).toEqual([]);
    const sources = cells.map((c) => c.at(-1));
    const unsourced = appraisal.assumptions.filter((a) => !sources.some((text) => text?.includes(a.source)));
    expect(unsourced.map((a) => a.key)).toEqual([]);
    const targets = record.sections.filter((s) => s.id.startsWith('targets-'));
    const count = targets.flatMap((s) => s.tables?.[0]?.rows ?? []).length;
    expect(count).toBe(appraisal.findings.runs.flatMap((run) => run.targets).length);
  });

  test('wiring: holds every cause, flag, choice and yearly cost', () => {
    const rowsOf = (id: string) => record.sections.find((s) => s.id === id)?.tables?.[0]?.rows.length ?? 0;
    expect(rowsOf('causes')).toBe(appraisal.findings.causes?.causes.length);
    expect(rowsOf('energy')).toBe(appraisal.energy.scenarios.length);
    expect(rowsOf('choices')).toBe(appraisal.comparison.choices.length);
    const flags = record.sections.find((s) => s.id === 'flags')?.sentences?.length ?? 0;
    expect(flags).toBeGreaterThanOrEqual(Math.min(1, appraisal.findings.flags.length));
  });

  test('identity: no bare code, unfilled place, NaN or undefined', () => {
    const texts = allTexts(record.sections).concat(allTexts(record.facts));
    expect(texts.length).toBeGreaterThan(100);
    const code = /\b(?!kWh|pH)[a-z]+(\.[a-z]+)*[A-Z][A-Za-z]+\b/;
    expect(texts.filter((text) => code.test(text) || /\{\w+\}|NaN|undefined|Infinity/.test(text))).toEqual(
      [],
    );
  });
});

test('wiring: a note of any length is kept whole', () => {
  const [visit] = demoFiles;
  if (visit === undefined) throw new Error('no demo visit');
  const note = `${'Long note. '.repeat(360)}The end.`;
  expect(allTexts(recordOf({ ...visit, note }))).toContain(note);
});
