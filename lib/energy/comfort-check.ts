import type { Mode } from '../visit/run';
import type { Visit } from '../visit/visit';
import type { Saying } from '../visit/wording';
import defaults from './data/load-defaults.json';
import type { EnergyTotals } from './energy-result';

/**
 * What the customer says about comfort against the hours the model leaves unmet as found.
 *
 * @param visit   comfort of the site; the observation "never keeps up" speaks for a mode nobody was asked about
 * @param asFound likely year of the unit as found
 * @param heats   the unit has to heat the house
 * @returns a note where the two do not fit
 * Source: limits in data/load-defaults.json `comfort`, status assumption
 * Check: tests/energy/comfort-check.test.ts
 */
export function comfortCheck(visit: Visit, asFound: EnergyTotals, heats: boolean): Saying[] {
  const { heatingComfort, coolingComfort } = visit.site;
  const notes = [
    ...(heats ? checkOf('heating', heatingComfort, asFound.unmetHeatingHours) : []),
    ...checkOf('cooling', coolingComfort, asFound.unmetCoolingHours),
  ];
  const asked = heatingComfort !== undefined || coolingComfort !== undefined;
  const seen = visit.observations.some((o) => o.id === 'neverKeepsUp');
  const hours = Math.round(asFound.unmetHours);
  if (seen && !asked && asFound.unmetHours < defaults.comfort.fewUnmetHours) {
    notes.push({ code: 'comfortNeverKeepsUp', values: { hours } });
  }
  return notes;
}

function checkOf(mode: Mode, said: Visit['site']['heatingComfort'], unmetHours: number): Saying[] {
  const { manyUnmetHours, fewUnmetHours } = defaults.comfort;
  const values = { mode, hours: Math.round(unmetHours) };
  if (said === 'keepsUp' && unmetHours > manyUnmetHours) return [{ code: 'comfortKeepsUp', values }];
  if (said === 'fallsShort' && unmetHours < fewUnmetHours) return [{ code: 'comfortFallsShort', values }];
  return [];
}
