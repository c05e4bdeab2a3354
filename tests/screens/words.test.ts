import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { fieldBook } from '@/components/draft/build-field-book';
import decide from '@/components/words/decide.json';
import visitWords from '@/components/words/en.json';
import shopWords from '@/components/words/shop.json';

const sources = ['app', 'components'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => readFileSync(path.join(folder, file), 'utf8')),
);
const en = { ...visitWords, ...shopWords };
const codes = new Set(Object.keys(en));

test('wiring: every sentence named on a screen exists', () => {
  const used = sources.flatMap((text) =>
    [...text.matchAll(/\bt\(\s*'([\w.]+)'/g)].map(([, code]) => code ?? ''),
  );
  expect(used.length).toBeGreaterThan(100);
  expect(used.filter((code) => !codes.has(code))).toEqual([]);
});

test('wiring: every answer of the schema has words', () => {
  const groups: Readonly<Record<string, string>> = {
    'unit.kind': 'unitKind',
    'unit.metering': 'metering',
    'unit.blower': 'blower',
    'unit.coilCountedIn': 'coilCountedIn',
    'runs.*.mode': 'mode',
    'observations.*.id': 'observation',
    'suspectedCause.cause': 'cause',
    'tariff.periods.*.days': 'days',
    'site.insulation': 'insulation',
    'site.co2Factor': 'co2Factor',
    'site.heatingComfort': 'comfort',
    'site.coolingComfort': 'comfort',
    'convention.timing': 'timing',
    'convention.residual': 'residual',
    'choices.*.priceLines.*.kind': 'lineKind',
    'choices.*.actions.*': 'repair',
    'choices.*.tier': 'tier',
    'choices.*.kind': 'choiceKind',
    'choices.*.furnace.fuel': 'fuel',
    'choices.*.financing.expectedEnding': 'ending',
    'choices.*.unitKind': 'unitKind',
  };
  const wanted = Object.entries(groups).flatMap(([path, group]) =>
    (fieldBook()[path]?.options ?? []).map((option) => `option.${group}.${option}`),
  );
  expect(wanted.length).toBeGreaterThan(50);
  expect(wanted.filter((code) => !codes.has(code))).toEqual([]);
});

test('wiring: no sentence of the screens uses words that blame, beg or press', () => {
  const banned = /\b(please|sorry|oops|simply|guaranteed|urgent|invalid|obsolete)\b/i;
  expect(Object.entries({ ...en, ...decide }).filter(([, sentence]) => banned.test(sentence))).toEqual([]);
});
