import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { localeOf, locales, wordsOf } from '@/lib/sheet/languages';

const lib = new URL('../../lib/', import.meta.url);
const base = 'en';

type Phrases = Readonly<Record<string, string>>;

/** Folders of sentences, each with its files by language. */
const folders = readdirSync(lib, { recursive: true, encoding: 'utf8' })
  .filter((path) => /(^|\/)wording$/.test(path))
  .map((stage) => {
    const folder = new URL(`${stage}/`, lib);
    const files = readdirSync(folder).filter((file) => file.endsWith('.json'));
    return {
      stage,
      files: files.map((file) => [file.replace('.json', ''), phrasesIn(file, folder)] as const),
    };
  });

function phrasesIn(file: string, folder: URL): Phrases {
  return JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as Phrases;
}

function placesOf(text: string): string {
  return [...new Set([...text.matchAll(/\{(\w+)\}/g)].map(([place]) => place))].sort().join(' ');
}

/** What a language lacks, has too much, or fills in other places than the base language. */
function differences(own: Phrases, other: Phrases): string[] {
  const codes = [...new Set([...Object.keys(own), ...Object.keys(other)])];
  return codes.flatMap((code) => {
    const [a, b] = [own[code], other[code]];
    if (b === undefined) return [`${code} is missing`];
    if (a === undefined) return [`${code} is unknown`];
    return placesOf(a) === placesOf(b) ? [] : [`${code} fills other places`];
  });
}

describe('languages', () => {
  test('wiring: every stage with sentences has them in every language, with the same places to fill', () => {
    expect(folders.length).toBeGreaterThanOrEqual(5);
    const told = folders.flatMap(({ stage, files }) => {
      const own = files.find(([language]) => language === base)?.[1] ?? {};
      const missing = locales.filter((locale) => files.every(([language]) => language !== locale));
      return [
        ...missing.map((locale) => `${stage} has no ${locale}.json`),
        ...files.flatMap(([language, phrases]) =>
          differences(own, phrases).map((difference) => `${stage}/${language}: ${difference}`),
        ),
      ];
    });
    expect(told).toEqual([]);
  });

  test('identity: a missing, an unknown and a wrongly filled sentence are all told', () => {
    const own = { a: 'A {x}', b: 'B' };
    expect(differences(own, { a: 'A {y}', c: 'C' })).toEqual([
      'a fills other places',
      'b is missing',
      'c is unknown',
    ]);
    expect(differences(own, { a: 'x: {x}', b: 'b' })).toEqual([]);
  });

  test('wiring: every language can be asked for by its name and has a tag', () => {
    expect(locales).toContain(base);
    expect(locales.map((locale) => wordsOf(locale).tag.slice(0, 2))).toEqual(locales);
    expect(['es', 'en', 'fr', null, undefined].map(localeOf)).toEqual(['es', 'en', 'en', 'en', 'en']);
  });
});
