import { fieldLabel, unitLabel } from '../visit/field-words';
import { Run } from '../visit/run';
import { type PhraseCode, phrase, plainNumber, type Words } from './phrase';

/** Decimals a reading or derived value is printed with, by unit; a unit not listed gets one. Status: as instruments show them. */
const decimalsOf: Readonly<Record<string, number>> = {
  psig: 0,
  psia: 1,
  F: 0,
  Fd: 0,
  V: 0,
  W: 0,
  cfm: 0,
  'cfm/ton': 0,
  'Btu/h': 0,
  'lb/h': 0,
  fpm: 0,
  min: 0,
  in2: 0,
  'in. w.c.': 2,
  ratio: 2,
  frac: 0,
};

/** Steps of what is never read but always worked out: more figures would only look exact. Status: ours, a tenth of the usual uncertainty. */
const stepOf: Readonly<Record<string, number>> = { 'Btu/h': 100 };

/**
 * Plain name of a reading or derived value: the visit's own label, or the earlier stage's words.
 *
 * @param id  field name of a run ("suctionPsig") or id of a derived value ("suctionSuperheatFd")
 * @returns the name, or `undefined` when nobody has words for it
 * Check: tests/sheet/reading-words.test.ts
 */
export function quantityName(words: Words, id: string): string | undefined {
  const told = words.stages[`derived.${id}`];
  if (told !== undefined) return told;
  return id in Run.shape ? fieldLabel(words.fields, ['runs', '0', id]) : undefined;
}

/** Plain name of what was read, also where a derived value goes by the same id; else of the derived value. */
export function readingName(words: Words, id: string): string | undefined {
  return id in Run.shape ? fieldLabel(words.fields, ['runs', '0', id]) : quantityName(words, id);
}

/** An option of the schema in words; a name that was typed stays as it is. */
export function optionWords(words: Words, value: string): string {
  const code = `record.value.${value}`;
  return code in words.phrases ? phrase(words, code as PhraseCode) : value;
}

/** Number and unit as printed: "118 psig", "0.45 in. w.c.", "70 %". */
export function quantityWords(words: Words, value: number, unit: string): string {
  if (unit === 'frac') return phrase(words, 'percent.value', { value: plainNumber(words, value * 100, 0) });
  const shown = unitLabel(words.fields, unit);
  const number = quantityNumber(words, value, unit);
  return shown === '' ? number : phrase(words, 'readings.withUnit', { value: number, unit: shown });
}

/** The number alone. */
export function quantityNumber(words: Words, value: number, unit: string): string {
  const step = stepOf[unit] ?? 0;
  const shown = step > 0 ? Math.round(value / step) * step : value;
  return plainNumber(words, unit === 'frac' ? shown * 100 : shown, decimalsOf[unit] ?? 1);
}

/** Range of a target with its unit once: "65 to 72 psig". */
export function quantityRangeWords(words: Words, low: number, high: number, unit: string): string {
  const ends = { low: quantityNumber(words, low, unit), high: quantityNumber(words, high, unit) };
  const shown = unit === 'frac' ? '%' : unitLabel(words.fields, unit);
  return shown === ''
    ? phrase(words, 'assumptions.range', ends)
    : phrase(words, 'readings.target', { ...ends, unit: shown });
}
