import { fieldAt, unitWords } from './field-at';

/** What a further language says instead of the schema's own English: by path pattern, assumption key and unit. */
export type FieldWords = {
  /** By path with `*` for every position ("runs.*.suctionPsig"). */
  readonly fields: Readonly<Record<string, string>>;
  readonly assumptions: Readonly<Record<string, string>>;
  /** Where the default of an assumption comes from. */
  readonly sources: Readonly<Record<string, string>>;
  /** Only units whose words differ; "psig" is the same everywhere. */
  readonly units: Readonly<Record<string, string>>;
};

/** The schema speaks English itself. */
export const schemaWords: FieldWords = { fields: {}, assumptions: {}, sources: {}, units: {} };

/**
 * Label of a field in a language.
 *
 * @param path  keys from the root of a visit, array positions as digits
 * @returns the language's words, else the schema's own label
 * Check: tests/visit/field-words.test.ts
 */
export function fieldLabel(words: FieldWords, path: readonly string[]): string {
  const pattern = path.map((key) => (/^\d+$/.test(key) ? '*' : key)).join('.');
  return words.fields[pattern] ?? fieldAt(path).label;
}

/** Unit as a person reads it in a language. Check: tests/visit/field-words.test.ts */
export function unitLabel(words: FieldWords, unit: string): string {
  return words.units[unit] ?? unitWords(unit);
}

/** Name of an assumption in a language. Check: tests/visit/field-words.test.ts */
export function assumptionLabel(
  words: FieldWords,
  assumption: { readonly key: string; readonly label: string },
): string {
  return words.assumptions[assumption.key] ?? assumption.label;
}

/** Source of an assumption in a language; one that was set for the visit was typed and stays. Check: tests/visit/field-words.test.ts */
export function assumptionSource(
  words: FieldWords,
  assumption: { readonly key: string; readonly source: string; readonly setBy: string },
): string {
  const told = assumption.setBy === 'visit' ? undefined : words.sources[assumption.key];
  return told ?? assumption.source;
}
