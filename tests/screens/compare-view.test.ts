import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { compareTable } from '@/components/appraisal/compare-view';
import { appraise } from '@/lib/appraise/appraise';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { readVisit } from '@/lib/visit/read-visit';

it('wiring: a breakdown is told in days without heat or cooling as well, a range with it', () => {
  const reading = readVisit(JSON.parse(readFileSync('data-demo/low-charge.json', 'utf8')));
  if (!reading.ok) throw new Error('low-charge');
  const appraisal = appraise(reading.value);
  const table = compareTable(composeSheet({ ...appraisal, locale: 'en' }), appraisal.comparison);
  const told = table.rows.find(({ id }) => id === 'breakdown')?.cells.map((cell) => cell.details.at(-1));
  expect(told?.length).toBe(appraisal.comparison.choices.length);
  expect(
    told?.filter(
      (line) => !/^on average [\d.]+ days without heat or cooling \([\d.]+ to [\d.]+\)$/.test(line ?? ''),
    ),
  ).toEqual([]);
});
