import { type Words, wordsOf } from './phrase';

type Named = { readonly kind: string; readonly name: string };

/** The product's own name of leaving it in the language of the document; undefined when the name is another. */
export function leaveNameOf(words: Words, name: string): string | undefined {
  return name === wordsOf('en').stages.leaveName ? words.stages.leaveName : undefined;
}

/**
 * Choices with the name that the product itself gives to leaving it in the language of the document; every other name was
 * typed and stays.
 *
 * @param of  whatever holds the choices
 * Check: tests/sheet/leave-name.test.ts
 */
export function withLeaveName<C extends Named, T extends { readonly choices: readonly C[] }>(
  words: Words,
  of: T & { readonly choices: readonly C[] },
): T {
  const choices = of.choices.map((choice) =>
    choice.kind === 'leave' ? { ...choice, name: leaveNameOf(words, choice.name) ?? choice.name } : choice,
  );
  return { ...of, choices };
}
