import { say } from '@/lib/visit/wording';
import en from './en.json';
import shopEn from './shop.json';

/** The shop's own sentences lie apart, so that a visit's first load does not carry them. */
const words = { ...en, ...shopEn };

type WordCode = keyof typeof words;

/** As `t` of the visits' words, with the shop's sentences too. */
export function t(code: WordCode, values?: Readonly<Record<string, string | number>>): string {
  return say(words, values === undefined ? { code } : { code, values });
}

/** Words for a count: `<code>.one` or `<code>.many`, with `{n}` filled. */
export function tn(code: CountCode, n: number): string {
  return t(`${code}.${n === 1 ? 'one' : 'many'}` as WordCode, { n });
}

type CountCode = WordCode extends infer C ? (C extends `${infer Base}.one` ? Base : never) : never;

/** Words of a code built at run time; a gap shows the code itself. */
export function tCode(code: string): string {
  return say(words, { code });
}
