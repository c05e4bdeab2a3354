import type { Region } from '../diagnostics/healthy-unit/seasonal-rating';
import type { Basis } from '../visit/basis';
import { findClimateCity } from '../visit/climate-city';
import type { ClimateChoice } from '../visit/site';
import type { Saying } from '../visit/wording';
import data from './data/cities.json';

export type City = {
  readonly slug: string;
  readonly city: string;
  readonly state: string;
  readonly heatingDesignF: number;
  readonly coolingDesignF: number;
  readonly hdd65Fday: number;
  readonly cdd65Fday: number;
};

/** Cities with a typical year, in order of their slugs. */
export const cities: readonly City[] = data.cities;

/**
 * The listed city a text means, by the rules of `findClimateCity`.
 *
 * @returns undefined if no listed city is meant
 * Check: tests/energy/climate.test.ts
 */
export function findCity(text: string): City | undefined {
  const slug = findClimateCity(text)?.slug;
  return slug === undefined ? undefined : cities.find((c) => c.slug === slug);
}

export type ChosenCity = {
  /** City whose file is needed. */
  readonly slug: string;
  /** Set when the climate is a test-procedure region and the city only lends its calendar. */
  readonly region?: Region;
  readonly basis: Basis;
  readonly notes: readonly Saying[];
};

/**
 * Which typical year a choice of climate needs.
 *
 * @param choice  what the visit says; may be missing
 * @param stateCode  two-letter state, for a stand-in
 * @returns slug, region if any, and whether it is a stand-in (basis `assumed`, with a note)
 * Check: tests/energy/climate.test.ts
 */
export function chosenCity(choice: ClimateChoice | undefined, stateCode?: string): ChosenCity {
  if (choice?.kind === 'region') {
    const slug = data.regionCalendar[choice.region];
    return { slug, region: choice.region, basis: 'measured', notes: [{ code: 'climateRegionCalendar' }] };
  }
  const wanted = choice?.kind === 'own' ? choice.calendarCity : choice?.city;
  const found = wanted === undefined ? undefined : findCity(wanted);
  if (found !== undefined) return { slug: found.slug, basis: 'measured', notes: [] };
  const unknown: readonly Saying[] =
    wanted === undefined ? [] : [{ code: 'climateUnknownCity', values: { city: wanted } }];
  const nearest: Readonly<Record<string, string>> = data.nearestByState;
  const slug = stateCode === undefined ? undefined : nearest[stateCode];
  if (slug !== undefined) {
    return {
      slug,
      basis: 'assumed',
      notes: [...unknown, { code: 'climateByState', values: { city: nameOf(slug) } }],
    };
  }
  return {
    slug: data.regionCalendar.IV,
    region: 'IV',
    basis: 'assumed',
    notes: [...unknown, { code: 'climateAssumedRegion' }],
  };
}

function nameOf(slug: string): string {
  const city = cities.find((c) => c.slug === slug);
  return city === undefined ? slug : `${city.city} ${city.state}`;
}
