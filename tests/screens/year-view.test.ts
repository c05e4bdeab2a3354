import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { answerView } from '@/components/appraisal/answer-view';
import { appraise } from '@/lib/appraise/appraise';
import { monthUsd, yearByUse } from '@/lib/energy/year-by-use';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { readVisit } from '@/lib/visit/read-visit';
import type { Visit } from '@/lib/visit/visit';

function answer(name: string, change: (visit: Visit) => Partial<Visit> = () => ({})) {
  const reading = readVisit(JSON.parse(readFileSync(`data-demo/${name}.json`, 'utf8')));
  if (!reading.ok) throw new Error(name);
  const appraisal = appraise({ ...reading.value, ...change(reading.value) });
  return { appraisal, view: answerView(appraisal, composeSheet({ ...appraisal, locale: 'en' })) };
}

test('wiring: as found stands first, then the healthy unit and each choice, all on one scale from zero', () => {
  const { appraisal, view } = answer('restricted-orifice');
  const { year } = view;
  const choices = appraisal.comparison.choices.filter(({ kind }) => kind !== 'leave');
  expect(year.panels.map(({ name }) => name)).toEqual([
    'As found',
    'Healthy unit',
    ...choices.map(({ name }) => name),
  ]);
  const months = appraisal.energy.scenarios.flatMap(({ likely }) => yearByUse(likely).months.map(monthUsd));
  expect(year.axis.ticks[0]?.at).toBe(0);
  expect(year.axis.max).toBeGreaterThanOrEqual(Math.max(...months));
  expect(year.panels.every((panel) => panel.months.length === 12)).toBe(true);
});

test('wiring: dollars come first and kWh small; what is not met and carbon dioxide have rows of their own', () => {
  const { year } = answer('restricted-orifice').view;
  const strip = year.rows.find(({ use }) => use === 'strip');
  expect(strip?.cells[0]?.main).toMatch(/^\$[\d,]+$/);
  expect(strip?.cells[0]?.small).toMatch(/^[\d,]+ kWh$/);
  expect(year.rows.map(({ name }) => name)).toContain('All energy');
  expect(year.rows.at(-1)?.name).toBe('Carbon dioxide');
  expect(year.rows.at(-1)?.cells[0]?.main).toMatch(/^[\d,]+ lb$/);
  expect(year.rows.every(({ cells }) => cells.length === year.panels.length)).toBe(true);
});

test('wiring: the price of the next kWh and the grid factor are named, and the average is the option', () => {
  const marginal = answer('restricted-orifice').view.year;
  expect(marginal.notes.join(' ')).toMatch(/price of the next kWh, [\d.]+¢ here/);
  expect(marginal.notes.join(' ')).toMatch(/by the marginal factor: .*lb \(/);
  const average = answer('restricted-orifice', ({ site }) => ({
    site: { ...site, co2Factor: 'average' },
  })).view.year;
  expect(average.co2Used).toBe('average');
  expect(average.notes.join(' ')).toMatch(/by the average factor/);
  expect(average.rows.at(-1)?.cells[0]?.main).not.toBe(marginal.rows.at(-1)?.cells[0]?.main);
});

test('wiring: the first sentence says what the fault costs a year; a healthy unit costs no more', () => {
  expect(answer('restricted-orifice').view.year.sentences[0]).toMatch(
    /^As found, the unit costs about \$[\d,]+ a year more to run than a healthy one\. Most of that is [a-z ]+: about \$[\d,]+\.$/,
  );
  expect(answer('restricted-orifice').view.year.sentences[1]).toMatch(/^The dearest month as found is [A-Z]/);
});

test('wiring: the balance chart says below what the unit cannot keep up, and shades what strips must give', () => {
  const { appraisal, view } = answer('restricted-orifice');
  const { balance } = view;
  const found = appraisal.energy.scenarios.find(({ id }) => id === 'asFound')?.balancePointF ?? Number.NaN;
  expect(balance?.message).toContain(`Below about ${Math.round(found)} °F the unit alone can’t keep up.`);
  expect(balance?.shade?.label).toBe('strip heat');
  const shade = balance?.shade?.points ?? [];
  expect(shade.length).toBeGreaterThan(3);
  expect(shade.every(({ between: [low, high] }) => low <= high)).toBe(true);
});
