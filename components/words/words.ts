import { say } from '@/lib/visit/wording';
import en from './en.json';

/** Every sentence of the screens has a code; another language is one more file of the same codes. */
export type WordCode = keyof typeof en;

/**
 * Words of the screens.
 *
 * @param code   code of the sentence
 * @param values what its `{places}` are filled with
 */
export function t(code: WordCode, values?: Readonly<Record<string, string | number>>): string {
  return say(en, values === undefined ? { code } : { code, values });
}

/** Words for a count: `<code>.one` or `<code>.many`, with `{n}` filled. */
export function tn(code: CountCode, n: number): string {
  return t(`${code}.${n === 1 ? 'one' : 'many'}` as WordCode, { n });
}

type CountCode = WordCode extends infer C ? (C extends `${infer Base}.one` ? Base : never) : never;

/** Words of a code built at run time (an option of the schema); a gap shows the code itself. */
export function tCode(code: string): string {
  return say(en, { code });
}
