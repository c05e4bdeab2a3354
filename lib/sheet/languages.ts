import effectsEn from '../diagnostics/fault-effects/wording/en.json';
import effectsEs from '../diagnostics/fault-effects/wording/es.json';
import diagnosticsEn from '../diagnostics/wording/en.json';
import diagnosticsEs from '../diagnostics/wording/es.json';
import energyEn from '../energy/wording/en.json';
import energyEs from '../energy/wording/es.json';
import financeEn from '../finance/wording/en.json';
import financeEs from '../finance/wording/es.json';
import { type FieldWords, schemaWords } from '../visit/field-words';
import fieldsEs from '../visit/labels/es.json';
import type { Phrases } from '../visit/wording';
import sheetEn from './wording/en.json';
import sheetEs from './wording/es.json';

// A further language is its wording file in every stage's wording/ and one entry in `languages`;
// tests/sheet/languages.test.ts tells which sentences it lacks.

/** The sheet's own sentences; every language has them all. */
export type PhraseCode = keyof typeof sheetEn;

/** A language's sentences, and how it writes numbers and dates. */
export type Language = {
  /** BCP 47. */
  readonly tag: string;
  /** The sheet's own. */
  readonly phrases: Readonly<Record<PhraseCode, string>>;
  /** The earlier stages'; no two stages share a code (checked by tests/sheet/stage-words.test.ts). */
  readonly stages: Phrases;
  /** Fields, assumptions and units of the visit. */
  readonly fields: FieldWords;
};

const stagesEn = printed({
  ...diagnosticsEn,
  ...under('effect', effectsEn),
  ...energyEn,
  ...financeEn,
});

const languages = {
  en: {
    tag: 'en-US',
    phrases: sheetEn,
    stages: stagesEn,
    fields: schemaWords,
  },
  // A sentence that English has and Spanish lacks is told in English; the test names it.
  es: {
    tag: 'es-US',
    phrases: { ...sheetEn, ...sheetEs },
    stages: {
      ...stagesEn,
      ...printed({ ...diagnosticsEs, ...under('effect', effectsEs), ...energyEs, ...financeEs }),
    },
    fields: fieldsEs,
  },
} as const satisfies Readonly<Record<string, Language>>;

/** Languages the sheet can be written in. */
export type Locale = keyof typeof languages;

/** Sentences of a locale: the one way to any words of the sheet. */
export type Words = Language & { readonly locale: Locale };

/** Sentences of a locale. */
export function wordsOf(locale: Locale): Words {
  return { ...languages[locale], locale };
}

/** Every locale there is. */
export const locales = Object.keys(languages) as Locale[];

/** The locale that a name asks for; English when it names none that there is. Check: tests/sheet/languages.test.ts */
export function localeOf(name: string | null | undefined): Locale {
  return locales.find((locale) => locale === name) ?? 'en';
}

/** Codes of a part of a stage under the family they are asked for by. */
function under(family: string, phrases: Phrases): Phrases {
  return Object.fromEntries(Object.entries(phrases).map(([code, text]) => [`${family}.${code}`, text]));
}

/** The stages' sentences as they are printed: curly quotation marks, no line break before a percent sign. */
function printed(phrases: Phrases): Phrases {
  return Object.fromEntries(
    Object.entries(phrases).map(([code, text]) => [
      code,
      text.replace(/"([^"]*)"/g, '\u201c$1\u201d').replaceAll('} %', '}\u00a0%'),
    ]),
  );
}
