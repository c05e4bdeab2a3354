/** Whether a font at hand draws the character. */
export type Draws = (codePoint: number) => boolean;

/** Keeps what follows a name written from right to left in its place; it shows nothing. */
const leftToRightMark = '\u200e';
/** Marks without ink: those that turn the direction of what follows never stay, joiners only where letters join. */
const inkless =
  /[\u200b\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff]|[\ufe00-\ufe0f]|(?<!\p{Script=Arabic})[\u200c\u200d]/gu;
const ignorable = /^[\p{Mark}\p{Default_Ignorable_Code_Point}]$/u;
const rightToLeftRun =
  /[\p{Script=Hebrew}\p{Script=Arabic}](?:[^\p{Script=Latin}\p{N}]*[\p{Script=Hebrew}\p{Script=Arabic}\p{Mark}])*/gu;

/**
 * Text with only such characters as the fonts can draw; others would print over one another.
 * A letter with an unknown accent keeps its letter; anything else stands as its number in the Unicode table, in
 * brackets, so that nothing is lost. Line breaks and tabs become blanks.
 *
 * Check: tests/pdf/drawable-text.test.ts
 */
export function drawableText(text: string, draws: Draws): string {
  const written = text
    .normalize('NFC')
    .replace(inkless, '')
    .replace(/\s/g, (blank) => (blank === '\u00a0' ? blank : ' '))
    .replace(rightToLeftRun, (run) => `${leftToRightMark}${run}${leftToRightMark}`);
  let drawn = '';
  let numbers: string[] = [];
  for (const character of written) {
    const code = character.codePointAt(0) ?? 0;
    const shown = draws(code) ? character : withoutAccent(character, draws);
    if (shown === undefined) {
      numbers.push(`U+${code.toString(16).toUpperCase().padStart(4, '0')}`);
      continue;
    }
    if (shown === '') continue;
    drawn += inBrackets(numbers) + shown;
    numbers = [];
  }
  return drawn + inBrackets(numbers);
}

function inBrackets(numbers: readonly string[]): string {
  return numbers.length === 0 ? '' : `[${numbers.join(' ')}]`;
}

/** The bare letter, nothing for a mark that shows nothing, `undefined` when there is no letter to show. */
function withoutAccent(character: string, draws: Draws): string | undefined {
  if (ignorable.test(character)) return '';
  const [base = '', ...marks] = character.normalize('NFKD');
  return marks.length > 0 && draws(base.codePointAt(0) ?? 0) ? base : undefined;
}

/** A value with every text in it made drawable, and whether letters had to be replaced. */
export function drawableTexts<T>(value: T, draws: Draws): { readonly value: T; readonly replaced: boolean } {
  let replaced = false;
  const mapped = (inner: unknown): unknown => {
    if (typeof inner === 'string') {
      const drawn = drawableText(inner, draws);
      replaced ||= drawn !== inner && /\[U\+[0-9A-F]{4,6}[\] ]/.test(drawn);
      return drawn;
    }
    if (Array.isArray(inner)) return inner.map(mapped);
    if (typeof inner !== 'object' || inner === null) return inner;
    return Object.fromEntries(Object.entries(inner).map(([key, deep]) => [key, mapped(deep)]));
  };
  return { value: mapped(value) as T, replaced };
}
