import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { appraise } from '@/lib/appraise/appraise';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { readVisit } from '@/lib/visit/read-visit';
import type { ClimateChoice } from '@/lib/visit/site';

function doubts(climate: ClimateChoice, locale: 'en' | 'es' = 'en') {
  const reading = readVisit(JSON.parse(readFileSync('data-demo/low-charge.json', 'utf8')));
  if (!reading.ok) throw new Error('demo');
  const visit = { ...reading.value, site: { ...reading.value.site, climate } };
  return composeSheet({ ...appraise(visit), locale }).pageTwo.doubts;
}

test('regression: an own weather table that could not be used is the first doubt, and names what stands in', () => {
  const { refused, sentences } = doubts({ kind: 'own', bins: [{ outdoorF: 70, yearHours: 8760 }] });
  expect(refused).toEqual([
    'Your own weather table could not be used: it needs at least three temperatures with hours. The weather of Phoenix AZ stands in.',
  ]);
  expect(sentences[0]).toBe(refused[0]);
  expect(new Set(sentences).size).toBe(sentences.length);
  const spanish = doubts({ kind: 'own', bins: [{ outdoorF: 70, yearHours: 8760 }] }, 'es');
  expect(spanish.refused[0]).toMatch(/^Su propia tabla de clima no se pudo usar/);
});

test('wiring: a table that is used is not refused', () => {
  const bins = [40, 70, 100].map((outdoorF) => ({ outdoorF, yearHours: 2920 }));
  expect(doubts({ kind: 'own', bins }).refused).toEqual([]);
});
