import { describe, expect, test } from 'vitest';
import { appraise } from '@/lib/appraise/appraise';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { wordsOf } from '@/lib/sheet/phrase';
import type { Sheet } from '@/lib/sheet/sheet';
import { demoFiles } from '../appraise/demo-files';
import { allTexts } from './fixtures/all-texts';
import { beforeAfterOf, readTwice, recordOf } from './fixtures/documents';
import { sentencesOf } from './fixtures/page-one-sentences';
import { fernandezHuerta, syllables } from './fixtures/spanish-grade';

/** Reading ease that asks for no more than grade 8 on the scale of the formula. */
const leastEase = 60;

/** Every number of a text in the order of size; a date in words has the same two in either language. */
function numbersIn(text: string): string[] {
  return (text.match(/[$\u2212+]?\$?\d[\d,.]*\d|[$\u2212+]?\$?\d/g) ?? []).sort();
}

/** Words that only English has. */
const english = /\b(the|of|and|with|without|not|is|are|was|were|from|by|this|that|your|than|which|when)\b/i;

/** What was typed at the visit, what names a source, and what is the same word in both languages. */
const same = new Set(['normal', 'no', 'sigma', 'Plan', 'motor PSC', 'motor ECM']);

/** A text without the names that were typed. */
function withoutTyped(text: string, typed: readonly string[]): string {
  return typed.reduce((rest, name) => rest.replaceAll(name, ''), text);
}

function typedIn(visit: unknown): string[] {
  return allTexts(visit)
    .filter((text) => text.length > 2 && text !== 'Leave as is')
    .sort((a, b) => b.length - a.length);
}

/** Texts of the Spanish one that say the same letters as the English one, or hold English words. */
function leftInEnglish(own: readonly string[], other: readonly string[], typed: readonly string[]): string[] {
  return other.filter((text, i) => {
    const rest = withoutTyped(text, typed);
    const units = rest.replace(
      /\b(psig|cfm|kWh|kW|Btu|ton|APR|in|min|EPA|COP|Wh|SEER2?|HSPF2?|EER2?)\b/g,
      '',
    );
    const unchanged = text === own[i] && /\p{L}{3}/u.test(units) && !same.has(text);
    return unchanged || english.test(rest);
  });
}

function withoutSources(sheet: Sheet): Sheet {
  const rows = sheet.pageTwo.assumptions.rows.map((row) => ({ ...row, source: '' }));
  return { ...sheet, pageTwo: { ...sheet.pageTwo, assumptions: { ...sheet.pageTwo.assumptions, rows } } };
}

/** Names, amounts and figures taken out, as for the English grade. */
function plain(text: string): string {
  return text
    .replace(/\u201c[^\u201d]*\u201d/g, 'esto')
    .replace(/\([^)]*\d[^)]*\)/g, '')
    .replace(/[\u2212+]?\$?\d[\d,.]*(\u00a0?%)?/g, 'diez');
}

describe.each(demoFiles.map((visit) => [visit.id, visit] as const))('the sheet of %s', (_, visit) => {
  const appraisal = appraise(visit);
  const en = composeSheet({ ...appraisal, locale: 'en' });
  const es = composeSheet({ ...appraisal, locale: 'es' });
  const [own, other] = [allTexts(en), allTexts(es)];
  const typed = [visit.id, ...typedIn(visit)];

  test('identity: the same texts with the same numbers and amounts in both languages', () => {
    expect(other.length).toBe(own.length);
    const unequal = other.filter((text, i) => numbersIn(text).join() !== numbersIn(own[i] ?? '').join());
    expect(unequal).toEqual([]);
    expect(own.flatMap(numbersIn).length).toBeGreaterThan(150);
  });

  test('identity: nothing that the product says is left in English', () => {
    const [a, b] = [allTexts(withoutSources(en)), allTexts(withoutSources(es))];
    expect(leftInEnglish(a, b, typed)).toEqual([]);
  });

  test('outside: page one asks for no more than grade 8 [Fernández Huerta, status memory]', () => {
    expect(fernandezHuerta(plain(sentencesOf(es).join(' ')))).toBeGreaterThanOrEqual(leastEase);
  });

  test('identity: page one holds no word of the trade without its explanation', () => {
    const one = withoutTyped(allTexts(es.pageOne).join(' '), typed);
    expect(one).not.toMatch(/\b(psig|sobrecalentamiento|subenfriamiento|SEER2?|kWh|Btu|cfm|estática)\b/i);
    const compressors = one.match(/compresor/g) ?? [];
    expect(compressors.length > 0 && !/la bomba del equipo/.test(one)).toBe(false);
    const capacitors = one.match(/capacitor/g) ?? [];
    expect(capacitors.length > 0 && !/pieza que ayuda|pieza eléctrica/.test(one)).toBe(false);
  });

  test('wiring: the document says that it is Spanish', () => {
    expect([es.locale, es.languageTag]).toEqual(['es', 'es-US']);
  });
});

describe('Spanish by the earlier English', () => {
  test('identity: a sentence that was left in English is told', () => {
    expect(leftInEnglish(['Running it'], ['Running it'], [])).toEqual(['Running it']);
    expect(leftInEnglish(['a'], ['El costo of esto'], [])).toEqual(['El costo of esto']);
    expect(leftInEnglish(['Ann', '12 psig'], ['Ann', '12 psig'], ['Ann'])).toEqual([]);
    expect(numbersIn('unos $1,400 (1.5 %)')).toEqual(['$1,400', '1.5']);
  });

  test('outside: syllables of words [divided by the dictionary, status memory]', () => {
    const words = { equipo: 3, energía: 4, guerra: 2, país: 2, ciudad: 2, muy: 1, refrigerante: 5, aire: 2 };
    expect(Object.fromEntries(Object.keys(words).map((word) => [word, syllables(word)]))).toEqual(words);
    const hard =
      'Consecuentemente, la administración gubernamental reglamentará obligatoriamente la comercialización internacional.';
    expect(fernandezHuerta(hard)).toBeLessThan(20);
    expect(fernandezHuerta('El aire pasa. La casa se enfría. No hay prisa.')).toBeGreaterThan(85);
  });

  test('wiring: a stage that has no Spanish for a code would fall back to English; none does', () => {
    const [en, es] = [wordsOf('en'), wordsOf('es')];
    const alike = Object.keys(en.stages).filter((code) => en.stages[code] === es.stages[code]);
    expect(alike).toEqual([]);
  });
});

describe.each(demoFiles.map((visit) => [visit.id, visit] as const))('the record of %s', (_, visit) => {
  test('identity: the same numbers in both languages', () => {
    const [own, other] = (['en', 'es'] as const).map((locale) => allTexts(recordOf(visit, locale)));
    const unequal = other?.filter((text, i) => numbersIn(text).join() !== numbersIn(own?.[i] ?? '').join());
    expect(other?.length).toBe(own?.length);
    expect(unequal).toEqual([]);
  });
});

describe.each(readTwice.map((visit) => [visit.id, visit] as const))('before and after of %s', (_, visit) => {
  const [own, other] = (['en', 'es'] as const).map((locale) => allTexts(beforeAfterOf(visit, { locale })));

  test('identity: the same numbers, and nothing left in English', () => {
    const unequal = other?.filter((text, i) => numbersIn(text).join() !== numbersIn(own?.[i] ?? '').join());
    expect(unequal).toEqual([]);
    expect(leftInEnglish(own ?? [], other ?? [], [visit.id, ...typedIn(visit)])).toEqual([]);
  });
});
