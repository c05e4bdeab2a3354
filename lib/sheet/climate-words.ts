import { phrase, type Words } from './phrase';

const testRegion = /^Test-procedure region (\w+)$/;
const ownBins = 'Own bin table';

/**
 * Name of a climate in the language of the sheet; a city keeps its own.
 *
 * @param name  as the energy stage gives it: a city, a region of the test procedure, or the bins typed at the visit
 * Check: tests/sheet/climate-words.test.ts
 */
export function climateWords(words: Words, name: string): string {
  const region = testRegion.exec(name)?.[1];
  if (region !== undefined) return phrase(words, 'climate.testRegion', { region });
  return name === ownBins ? phrase(words, 'climate.ownBins') : name;
}
