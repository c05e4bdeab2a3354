/** Something to be said, as data: a code and its values. Words live in `wording/<locale>.json` of each stage. */
export type Saying = { readonly code: string; readonly values?: Readonly<Record<string, string | number>> };

/** Sentences by code; `{name}` is filled from the saying's values. */
export type Phrases = Readonly<Record<string, string>>;

/**
 * Words of a saying.
 *
 * @param phrases sentences by code
 * @param saying  code and values
 * @returns the sentence with its values filled in; an unknown code gives the code itself, so that a gap is seen
 * Check: tests/visit/wording.test.ts
 */
export function say(phrases: Phrases, saying: Saying): string {
  const phrase = phrases[saying.code] ?? saying.code;
  return phrase.replace(/\{(\w+)\}/g, (whole, name: string) => String(saying.values?.[name] ?? whole));
}
