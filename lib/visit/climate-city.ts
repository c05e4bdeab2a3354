import data from './data/climate-cities.json';

export type ClimateCity = { readonly slug: string; readonly city: string; readonly state: string };

/** Cities with a typical year, in order of their slugs. */
export const climateCities: readonly ClimateCity[] = data.cities;

/**
 * The listed city a text means: its slug or its name, with or without the state and whatever follows the first
 * words ("New York", "new york, NY", "Chicago" for Chicago OHare), in any case.
 *
 * @returns undefined if no listed city is meant
 * Check: tests/visit/climate-city.test.ts
 */
export function findClimateCity(text: string): ClimateCity | undefined {
  const wanted = plain(text);
  if (wanted === '') return undefined;
  return climateCities.find((c) => {
    const name = plain(c.city);
    const state = ` ${c.state.toLowerCase()}`;
    const bare = wanted.endsWith(state) ? wanted.slice(0, -state.length) : wanted;
    return plain(c.slug) === wanted || name === bare || name.startsWith(`${bare} `);
  });
}

function plain(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();
}
