import type { Saying } from '../visit/wording';
import { say } from '../visit/wording';
import { quotedWords } from './money-words';
import { monthRunWords } from './month-words';
import { listWords, lowerFirst, phrase, plainNumber, type Words } from './phrase';
import { roundUsdToRange } from './round-to-range';

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
  return say(words.stages, { code: codeInNumber(words, saying), values });
}

const countNames = ['years', 'months', 'hours', 'minutes', 'count'];

/** A sentence that counts something may have its own form for one, under `<code>.one`. */
function codeInNumber(words: Words, saying: Saying): string {
  const code = knownCode(words, saying.code);
  const one = countNames.some((name) => saying.values?.[name] === 1);
  return one && words.stages[`${code}.one`] !== undefined ? `${code}.one` : code;
}

/** Some stages leave out the family of a code, since the field it stands in tells it. */
function knownCode(words: Words, code: string): string {
  const phrases = words.stages;
  return (
    [code, `note.${code}`, `flag.${code}`, `hint.${code}`].find(
      (candidate) => phrases[candidate] !== undefined,
    ) ?? code
  );
}

function valueWords(words: Words, name: string, value: string | number, names: Names): string {
  if (typeof value === 'number') return numberWords(words, name, value);
  if (/^-?\d+\.\d{2}$/.test(value)) return quotedWords(value).replace('$', '');
  if (name === 'months') return monthRunWords(words, value);
  if (name === 'mode' || name === 'from') return modeWords(words, value);
  const known = names.choice(value) ?? names.cause(value) ?? names.reading(value);
  if (known !== undefined) return known;
  if (name !== 'readings') return value;
  const listed = value.split(', ').map((reading) => names.reading(reading) ?? reading);
  return listWords(words, listed.map(lowerFirst));
}

function modeWords(words: Words, mode: string): string {
  if (mode === 'heating') return phrase(words, 'readings.modeHeating');
  return mode === 'cooling' ? phrase(words, 'readings.modeCooling') : mode;
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
