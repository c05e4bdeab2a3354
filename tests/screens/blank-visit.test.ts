import { expect, test } from 'vitest';
import { readTyped } from '@/components/appraisal/read-typed';
import { blankVisit, localDate, newVisitId } from '@/components/draft/blank-visit';
import { fieldBook } from '@/components/draft/build-field-book';
import { SCHEMA_VERSION } from '@/lib/visit/visit';

test('wiring: a blank visit lacks kind and size of the unit and nothing else', () => {
  const blank = blankVisit('visit-2026-01-02-0a', '2026-01-02');
  expect(blank.schemaVersion).toBe(SCHEMA_VERSION);
  const { visit, issues } = readTyped(blank, fieldBook());
  expect(visit).toBeUndefined();
  expect(issues.map(({ code, path }) => [code, path])).toEqual([
    ['missing', 'unit.kind'],
    ['missing', 'unit.nominalTons'],
  ]);
  const filled = readTyped({ ...blank, unit: { kind: 'heatPump', nominalTons: '3' } }, fieldBook());
  expect(filled.issues).toEqual([]);
  expect(filled.visit?.choices.map((choice) => choice.id)).toEqual(['leave']);
});

test('wiring: what the shop assumes for new visits is read from a blank visit as it was set', () => {
  const shops = { key: 'medianLifeYears', low: 14, likely: 17, high: 20, source: 'the shop' } as const;
  const blank = blankVisit('visit-2026-01-02-0a', '2026-01-02', [{ ...shops, setBy: 'Ada' }, shops]);
  const { visit, issues } = readTyped(
    { ...blank, unit: { kind: 'heatPump', nominalTons: '3' } },
    fieldBook(),
  );
  expect(issues).toEqual([]);
  expect(visit?.assumptions).toEqual([{ ...shops, setBy: 'Ada' }, shops]);
});

test('wiring: names of new visits carry their date, differ, and are ones the store takes', () => {
  const at = new Date(2026, 0, 2, 23, 59);
  const names = Array.from({ length: 200 }, () => newVisitId(at));
  expect(new Set(names).size).toBe(200);
  expect(names.filter((name) => !/^visit-2026-01-02-[0-9a-f]{12}$/.test(name))).toEqual([]);
  expect(localDate(at)).toBe('2026-01-02');
});
