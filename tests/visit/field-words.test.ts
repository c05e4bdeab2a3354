import { describe, expect, test } from 'vitest';
import { fieldBook } from '@/components/draft/build-field-book';
import { resolveAssumption } from '@/lib/visit/assumption';
import { assumptionKeys } from '@/lib/visit/assumption-keys';
import {
  assumptionLabel,
  assumptionSource,
  fieldLabel,
  schemaWords,
  unitLabel,
} from '@/lib/visit/field-words';
import es from '@/lib/visit/labels/es.json';

/** Labels that are the same in Spanish: names of ratings, and one word. */
const same = ['SEER', 'EER', 'HSPF', 'SEER2', 'EER2', 'HSPF2', 'Refrigerant'];

describe('labels of the visit in Spanish', () => {
  test('wiring: every field of the schema has one, and no label is left over', () => {
    expect(Object.keys(es.fields).sort()).toEqual(Object.keys(fieldBook()).sort());
  });

  test('identity: none is left in English but names of ratings', () => {
    const labels: Readonly<Record<string, string>> = es.fields;
    const alike = Object.entries(fieldBook()).filter(
      ([path, entry]) => labels[path] === entry.label && !same.includes(entry.label),
    );
    expect(alike).toEqual([]);
  });

  test('wiring: every assumption has one', () => {
    expect(Object.keys(es.assumptions).sort()).toEqual([...assumptionKeys].sort());
    expect(Object.keys(es.sources).sort()).toEqual([...assumptionKeys].sort());
  });
});

describe('words of a field', () => {
  const path = ['runs', '3', 'suctionPsig'];

  test('wiring: by its place in the visit, whatever the position in a list', () => {
    expect(fieldLabel(es, path)).toBe('Presión de succión');
    expect(fieldLabel(schemaWords, path)).toBe('Suction pressure');
  });

  test('wiring: the source of a default is told in the language with its own figures, a typed one stays', () => {
    const source = (key: (typeof assumptionKeys)[number]) => assumptionSource(es, resolveAssumption([], key));
    const figures = (text: string) => (text.match(/\d[\d,.]*\d|\d/g) ?? []).sort().join();
    const unequal = assumptionKeys.filter(
      (key) => figures(source(key)) !== figures(resolveAssumption([], key).source),
    );
    expect(unequal).toEqual([]);
    const own = { ...resolveAssumption([], 'stayYears'), source: 'said at the table', setBy: 'visit' };
    expect(assumptionSource(es, own)).toBe('said at the table');
    expect(assumptionSource(schemaWords, resolveAssumption([], 'ageYears'))).toMatch(/^Judgement/);
  });

  test('wiring: units and assumptions; what a language lacks is told in English', () => {
    expect([unitLabel(es, 'ton'), unitLabel(es, 'psig'), unitLabel(schemaWords, 'ton')]).toEqual([
      'toneladas',
      'psig',
      'tons',
    ]);
    const stay = resolveAssumption([], 'stayYears');
    expect([assumptionLabel(es, stay), assumptionLabel(schemaWords, stay)]).toEqual([
      'Años que el cliente piensa quedarse',
      'Years the customer expects to stay',
    ]);
  });
});
