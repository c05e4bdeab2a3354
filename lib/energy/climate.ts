import { invariant } from '../math/invariant';
import type { ClimateChoice } from '../visit/site';
import { chosenClimate } from './chosen-climate';
import type { CityFile } from './city-climate';
import { chosenCity } from './city-list';
import type { Climate } from './climate-model';
import atlantaGa from './data/climate/atlanta-ga.json';
import baltimoreMd from './data/climate/baltimore-md.json';
import burlingtonVt from './data/climate/burlington-vt.json';
import capeMayNj from './data/climate/cape-may-nj.json';
import cedarRapidsIa from './data/climate/cedar-rapids-ia.json';
import charlotteNc from './data/climate/charlotte-nc.json';
import chicagoOhareIl from './data/climate/chicago-ohare-il.json';
import coloradoSpringsCo from './data/climate/colorado-springs-co.json';
import dallasFortWorthTx from './data/climate/dallas-fort-worth-tx.json';
import denverCo from './data/climate/denver-co.json';
import detroitMi from './data/climate/detroit-mi.json';
import duluthMn from './data/climate/duluth-mn.json';
import fayettevilleAr from './data/climate/fayetteville-ar.json';
import helenaMt from './data/climate/helena-mt.json';
import honoluluHi from './data/climate/honolulu-hi.json';
import houstonTx from './data/climate/houston-tx.json';
import lafayetteIn from './data/climate/lafayette-in.json';
import lasVegasNv from './data/climate/las-vegas-nv.json';
import miamiFl from './data/climate/miami-fl.json';
import newYorkJfkNy from './data/climate/new-york-jfk-ny.json';
import oklahomaCityOk from './data/climate/oklahoma-city-ok.json';
import phoenixAz from './data/climate/phoenix-az.json';
import portlandOr from './data/climate/portland-or.json';
import raleighDurhamNc from './data/climate/raleigh-durham-nc.json';
import sanFranciscoCa from './data/climate/san-francisco-ca.json';
import seattleWa from './data/climate/seattle-wa.json';
import stLouisMo from './data/climate/st-louis-mo.json';
import tampaFl from './data/climate/tampa-fl.json';
import wilmingtonDe from './data/climate/wilmington-de.json';

const files: Readonly<Record<string, CityFile>> = {
  'atlanta-ga': atlantaGa,
  'baltimore-md': baltimoreMd,
  'burlington-vt': burlingtonVt,
  'cape-may-nj': capeMayNj,
  'cedar-rapids-ia': cedarRapidsIa,
  'charlotte-nc': charlotteNc,
  'chicago-ohare-il': chicagoOhareIl,
  'colorado-springs-co': coloradoSpringsCo,
  'dallas-fort-worth-tx': dallasFortWorthTx,
  'denver-co': denverCo,
  'detroit-mi': detroitMi,
  'duluth-mn': duluthMn,
  'fayetteville-ar': fayettevilleAr,
  'helena-mt': helenaMt,
  'honolulu-hi': honoluluHi,
  'houston-tx': houstonTx,
  'lafayette-in': lafayetteIn,
  'las-vegas-nv': lasVegasNv,
  'miami-fl': miamiFl,
  'new-york-jfk-ny': newYorkJfkNy,
  'oklahoma-city-ok': oklahomaCityOk,
  'phoenix-az': phoenixAz,
  'portland-or': portlandOr,
  'raleigh-durham-nc': raleighDurhamNc,
  'san-francisco-ca': sanFranciscoCa,
  'seattle-wa': seattleWa,
  'st-louis-mo': stLouisMo,
  'tampa-fl': tampaFl,
  'wilmington-de': wilmingtonDe,
};

/**
 * Climate to compute the year in, at once: every city is part of this module (about 90 kB). A page that needs
 * one city takes `loadClimate` in load-climate.ts instead.
 *
 * @param choice  city, test-procedure region or own bins; left out or an unknown city = a stand-in, marked assumed
 * @param stateCode  two-letter state, picks the stand-in; unknown = region IV, the one ratings refer to
 * @returns hours by month, hour of day and temperature bin, design temperatures, source
 * Source: data/cities.json and diagnostics/healthy-unit/data/test-procedure.json
 * Check: tests/energy/climate.test.ts
 */
export function climateFor(choice: ClimateChoice | undefined, stateCode?: string): Climate {
  const chosen = chosenCity(choice, stateCode);
  const file = files[chosen.slug];
  invariant(file !== undefined, `no climate file for ${chosen.slug}`);
  return chosenClimate(chosen, file, choice);
}
