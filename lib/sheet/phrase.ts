import { invariant } from '../math/invariant';
import { say } from '../visit/wording';
import type { PhraseCode, Words } from './languages';

export { type Locale, localeOf, type PhraseCode, type Words, wordsOf } from './languages';

/**
 * A sentence of the sheet with its values filled in. Every text of the sheet comes out of here.
 *
 * @param code    name of the sentence in wording/<locale>.json
 * @param values  words or whole numbers, already in the words of the locale
 * @throws invariant if a value named by the sentence is missing: a gap must never reach a customer
 * Check: tests/sheet/phrase.test.ts
 */
export function phrase(
  words: Words,
  code: PhraseCode,
  values: Readonly<Record<string, string | number>> = {},
): string {
  const text = words.phrases[code];
  for (const [, name] of text.matchAll(/\{(\w+)\}/g)) {
    invariant(name !== undefined && values[name] !== undefined, `sentence ${code} lacks ${name}`);
  }
  return say(words.phrases, { code, values });
}

/** Sentences that come in two forms, `<stem>.one` and `<stem>.other`. */
export type CountedStem = {
  [K in PhraseCode]: K extends `${infer Stem}.one`
    ? `${Stem}.other` extends PhraseCode
      ? Stem
      : never
    : never;
}[PhraseCode];

/**
 * A sentence in the form its count asks for; `{count}` is filled in.
 *
 * @param stem   the sentence's name without `.one` or `.other`
 * @param count  any number; 1 takes the singular
 * Check: tests/sheet/phrase.test.ts
 */
export function counted(
  words: Words,
  stem: CountedStem,
  count: number,
  values: Readonly<Record<string, string | number>> = {},
): string {
  const form = new Intl.PluralRules(words.tag).select(count) === 'one' ? 'one' : 'other';
  return phrase(words, `${stem}.${form}` as PhraseCode, { count: plainNumber(words, count), ...values });
}

/** A number as the locale writes it, with at most so many decimals and no trailing zeros. */
export function plainNumber(words: Words, value: number, decimals = 1): string {
  const text = new Intl.NumberFormat(words.tag, { maximumFractionDigits: decimals }).format(value);
  return text === '-0' ? '0' : text.replace(/^-/, '\u2212');
}

/** A calendar date as the locale writes it ("November 25, 2026"). */
export function dateWords(words: Words, isoDate: string): string {
  return new Intl.DateTimeFormat(words.tag, { dateStyle: 'long', timeZone: 'UTC' }).format(
    new Date(`${isoDate}T00:00:00Z`),
  );
}

/** A label inside a sentence: "Suction pressure" becomes "suction pressure", "SEER" stays. */
export function lowerFirst(text: string): string {
  return /^\p{Lu}\p{Ll}/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** Words joined by commas and a last "and". */
export function listWords(words: Words, items: readonly string[]): string {
  return new Intl.ListFormat(words.tag, { type: 'conjunction' }).format(items);
}
