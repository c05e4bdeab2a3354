import { invariant } from '../math/invariant';
import type { ClimateChoice } from '../visit/site';
import { chosenClimate } from './chosen-climate';
import type { CityFile } from './city-climate';
import { chosenCity } from './city-list';
import type { Climate } from './climate-model';

const loaders: Readonly<Record<string, () => Promise<{ readonly default: CityFile }>>> = {
  'atlanta-ga': () => import('./data/climate/atlanta-ga.json'),
  'baltimore-md': () => import('./data/climate/baltimore-md.json'),
  'burlington-vt': () => import('./data/climate/burlington-vt.json'),
  'cape-may-nj': () => import('./data/climate/cape-may-nj.json'),
  'cedar-rapids-ia': () => import('./data/climate/cedar-rapids-ia.json'),
  'charlotte-nc': () => import('./data/climate/charlotte-nc.json'),
  'chicago-ohare-il': () => import('./data/climate/chicago-ohare-il.json'),
  'colorado-springs-co': () => import('./data/climate/colorado-springs-co.json'),
  'dallas-fort-worth-tx': () => import('./data/climate/dallas-fort-worth-tx.json'),
  'denver-co': () => import('./data/climate/denver-co.json'),
  'detroit-mi': () => import('./data/climate/detroit-mi.json'),
  'duluth-mn': () => import('./data/climate/duluth-mn.json'),
  'fayetteville-ar': () => import('./data/climate/fayetteville-ar.json'),
  'helena-mt': () => import('./data/climate/helena-mt.json'),
  'honolulu-hi': () => import('./data/climate/honolulu-hi.json'),
  'houston-tx': () => import('./data/climate/houston-tx.json'),
  'lafayette-in': () => import('./data/climate/lafayette-in.json'),
  'las-vegas-nv': () => import('./data/climate/las-vegas-nv.json'),
  'miami-fl': () => import('./data/climate/miami-fl.json'),
  'new-york-jfk-ny': () => import('./data/climate/new-york-jfk-ny.json'),
  'oklahoma-city-ok': () => import('./data/climate/oklahoma-city-ok.json'),
  'phoenix-az': () => import('./data/climate/phoenix-az.json'),
  'portland-or': () => import('./data/climate/portland-or.json'),
  'raleigh-durham-nc': () => import('./data/climate/raleigh-durham-nc.json'),
  'san-francisco-ca': () => import('./data/climate/san-francisco-ca.json'),
  'seattle-wa': () => import('./data/climate/seattle-wa.json'),
  'st-louis-mo': () => import('./data/climate/st-louis-mo.json'),
  'tampa-fl': () => import('./data/climate/tampa-fl.json'),
  'wilmington-de': () => import('./data/climate/wilmington-de.json'),
};

/**
 * Climate to compute the year in, loading only the one city needed (about 3 kB); same answer as `climateFor`.
 *
 * @param choice  city, test-procedure region or own bins; left out or an unknown city = a stand-in, marked assumed
 * @param stateCode  two-letter state, picks the stand-in
 * Check: tests/energy/climate.test.ts
 */
export async function loadClimate(choice: ClimateChoice | undefined, stateCode?: string): Promise<Climate> {
  const chosen = chosenCity(choice, stateCode);
  const load = loaders[chosen.slug];
  invariant(load !== undefined, `no climate file for ${chosen.slug}`);
  return chosenClimate(chosen, (await load()).default, choice);
}
