import type { ClimateChoice } from '../visit/site';
import { type CityFile, cityClimate } from './city-climate';
import type { ChosenCity } from './city-list';
import type { Climate } from './climate-model';
import { ownClimate } from './own-climate';
import { regionClimate } from './region-climate';

/**
 * The climate of a choice, once the file of its city is at hand: the city itself, a region or own bins on its calendar.
 *
 * @param chosen  from `chosenCity`
 * @param file    the city's file
 * @param choice  what the visit says
 * @returns the climate; own bins that cannot be used leave the city in their place, marked assumed, with a note
 * Check: tests/energy/own-climate.test.ts
 */
export function chosenClimate(
  chosen: ChosenCity,
  file: CityFile,
  choice: ClimateChoice | undefined,
): Climate {
  const city = cityClimate(file);
  const climate = chosen.region === undefined ? city : regionClimate(chosen.region, city);
  if (choice?.kind !== 'own') return { ...climate, basis: chosen.basis, notes: chosen.notes };
  const own = ownClimate(choice.bins, city);
  if (own.kind === 'climate') return own.climate;
  const refused = own.notes.map((note) =>
    note.code === 'ownBinsTooFew' ? { ...note, values: { climate: climate.name } } : note,
  );
  // a climate was chosen: what stands in for it is told with the refusal
  const unknown = chosen.notes.filter(({ code }) => code === 'climateUnknownCity');
  return { ...climate, basis: 'assumed', notes: [...refused, ...unknown] };
}
