import type { Saying } from '../visit/wording';
import { say } from '../visit/wording';
import { quotedWords } from './money-words';
import { plainNumber, type Words } from './phrase';
import { roundUsdToRange } from './round-to-range';
import { stagePhrases } from './stage-phrases';

/** What a saying's values may name: choices by id, causes by id, readings by field name. */
export type Names = {
  readonly choice: (id: string) => string | undefined;
  readonly cause: (id: string) => string | undefined;
  readonly reading: (name: string) => string | undefined;
};

/**
 * Words of a saying of an earlier stage, its values written as a reader expects them.
 * Values are told by the unit in their name: money is rounded, shares become percent, ids become names.
 *
 * @param saying  code and values as the stage gave them
 * @param names   words for ids
 * @returns a sentence; a code without words is shown as the code, so that the gap is seen
 * Check: tests/sheet/stage-words.test.ts
 */
export function stageWords(words: Words, saying: Saying, names: Names): string {
  const values = Object.fromEntries(
    Object.entries(saying.values ?? {}).map(([name, value]) => [name, valueWords(words, name, value, names)]),
  );
  return say(stagePhrases[words.locale], { code: saying.code, values });
}

function valueWords(words: Words, name: string, value: string | number, names: Names): string {
  if (typeof value === 'number') return numberWords(words, name, value);
  if (/^-?\d+\.\d{2}$/.test(value)) return quotedWords(value).replace('$', '');
  return names.choice(value) ?? names.cause(value) ?? names.reading(value) ?? value;
}

function numberWords(words: Words, name: string, value: number): string {
  if (/Usd(PerYear|PerMonth)?$/.test(name)) {
    const rounded = roundUsdToRange({ low: value, likely: value, high: value });
    return plainNumber(words, rounded.likely, 0);
  }
  if (/UsdPerKwh$/.test(name)) return plainNumber(words, value, 3);
  if (/Frac(PerYear)?$/.test(name)) return plainNumber(words, value * 100, 0);
  if (/(Psig|Psia|Btuh|Cfm|W|Kwh)$/.test(name)) return plainNumber(words, value, 0);
  return plainNumber(words, value, 1);
}
