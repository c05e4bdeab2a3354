/** Longest text repeated in a message: enough to recognise what was typed. Our own choice. */
const LONGEST = 60;

/**
 * Text cut to what a message can repeat.
 *
 * @returns the text, or its first characters with an ellipsis, at most 60 characters in all
 * Check: tests/visit/typed-value.test.ts
 */
export function shortened(text: string): string {
  const characters = Array.from(text);
  return characters.length <= LONGEST ? text : `${characters.slice(0, LONGEST - 1).join('')}…`;
}

/**
 * A value as a message shows it: a text or number as typed, cut when long; anything else by its kind.
 *
 * Check: tests/visit/typed-value.test.ts
 */
export function valueWords(typed: unknown): string {
  if (Array.isArray(typed)) return 'a list';
  if (typed === null) return 'null';
  if (typeof typed === 'object') return 'a group of fields';
  return shortened(String(typed));
}
