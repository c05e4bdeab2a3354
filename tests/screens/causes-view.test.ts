import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { answerView } from '@/components/appraisal/answer-view';
import type { CausesView } from '@/components/appraisal/view';
import en from '@/components/words/en.json';
import { appraise } from '@/lib/appraise/appraise';
import nextReadings from '@/lib/diagnostics/causes/data/next-readings.json';
import diagnosticsEn from '@/lib/diagnostics/wording/en.json';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { Observation } from '@/lib/visit/observation';
import { readVisit } from '@/lib/visit/read-visit';

function causes(name: string): CausesView {
  const reading = readVisit(JSON.parse(readFileSync(`data-demo/${name}.json`, 'utf8')));
  if (!reading.ok) throw new Error(name);
  const appraisal = appraise(reading.value);
  const view = answerView(appraisal, composeSheet({ ...appraisal, locale: 'en' })).causes;
  if (view === undefined) throw new Error(`no causes for ${name}`);
  return view;
}

const DEMOS = [
  'closed-registers',
  'end-of-life',
  'few-readings',
  'healthy',
  'low-charge',
  'overcharged',
  'restricted-orifice',
  'short-stay',
  'weak-capacitor',
];

describe('causes in the words of the screens', () => {
  test('wiring: a found cause says how sure, how bad, and opens to evidence with value, target and distance', () => {
    const [cause] = causes('low-charge').main;
    expect(cause?.name).toBe('Low charge');
    expect(cause?.chance).toBe('likely (more than 9 in 10)');
    expect(cause?.severity).toBe('severe');
    expect(cause?.speaksFor[0]?.name).toBe('Suction superheat');
    expect(cause?.speaksFor[0]?.value).toMatch(/^\d+ °F$/);
    expect(cause?.speaksFor[0]?.detail).toMatch(/^\d+ °F above the \d+ °F of a healthy unit/);
    expect(cause?.speaksFor[0]?.strength).toBe('speaks very strongly for it');
    expect(cause?.prior).toMatch(/^Before any reading: about \d+ in 100? /);
  });

  test('wiring: no fault found and too few readings are answers of their own', () => {
    expect(causes('healthy').verdictWords).toMatch(/^No fault found.* How sure: about \d in 10\.$/);
    expect(causes('healthy').main).toEqual([]);
    const few = causes('few-readings');
    expect(few.verdictWords).toBe('Too few readings to tell a cause.');
    expect(few.next[0]?.outcomes.length).toBeGreaterThan(1);
    expect(few.next[0]?.outcomes.some(({ meaning }) => meaning.startsWith('then still open; '))).toBe(true);
  });

  test('wiring: a fault that is gone in the last run is said to be gone, run by run', () => {
    expect(causes('closed-registers').mainIsGone).toBe(true);
    expect(causes('low-charge').mainIsGone).toBe(false);
    expect(causes('closed-registers').resolved).toEqual([
      'Low indoor airflow showed in “as found” and no longer shows in “registers opened”.',
    ]);
  });

  test('wiring: a share is told in points, and a slight cause says neither how bad nor anything to the homeowner', () => {
    const [weak] = causes('weak-capacitor').main;
    expect(weak?.speaksFor[0]?.detail).toMatch(/^\d+ points below the −2\u00a0% of a healthy unit/);
    expect(weak?.plain).toMatch(/capacitor/);
    const slight = causes('weak-capacitor').slight;
    expect(slight.length).toBeGreaterThan(0);
    expect(slight.filter((cause) => cause.severity !== undefined || cause.plain !== undefined)).toEqual([]);
  });

  test('wiring: no code and no empty place reaches the screen', () => {
    const texts = DEMOS.flatMap((name) => strings(causes(name)));
    expect(texts.length).toBeGreaterThan(300);
    expect(texts.filter((text) => /\{\w+\}|\bundefined\b|\bNaN\b/.test(text))).toEqual([]);
    expect(texts.filter((text) => /^[a-z]+([A-Z]\w*)?\.\w+/.test(text))).toEqual([]);
  });

  test('wiring: every observation and every outcome of a next reading has words', () => {
    const codes = new Set([...Object.keys(en), ...Object.keys(diagnosticsEn)]);
    const seen = Observation.shape.id.options.map((id) => `option.observation.${id}`);
    const read = Object.keys(nextReadings.readings).flatMap((id) =>
      ['low', 'normal', 'high'].map((outcome) => `outcome.${id}.${outcome}`),
    );
    const tested = Object.keys(nextReadings.tests).flatMap((id) =>
      ['yes', 'no'].map((outcome) => `outcome.${id}.${outcome}`),
    );
    const wanted = [...seen, ...read, ...tested];
    expect(wanted.length).toBeGreaterThan(50);
    expect(wanted.filter((code) => !codes.has(code))).toEqual([]);
  });
});

/** Every text of a view except ids and keys. */
function strings(view: unknown): string[] {
  if (typeof view === 'string') return [view];
  if (typeof view !== 'object' || view === null) return [];
  return Object.entries(view).flatMap(([key, value]) =>
    ['id', 'key', 'verdict'].includes(key) ? [] : strings(value),
  );
}
