import type { ObservationId } from '../../visit/observation';
import type { Visit } from '../../visit/visit';
import limits from '../data/limits.json';
import type { Flag } from '../findings';

/** What is a danger by itself when it is seen, heard or smelt. */
const DANGEROUS: readonly ObservationId[] = [
  'carbonMonoxideAlarm',
  'escapingRefrigerant',
  'shortToGround',
  'burntWires',
  'burntSmell',
  'breakerTrips',
  'stripsStayOn',
  'blowerNotRunning',
  'compressorKnocks',
  'frozenIndoorCoil',
  'bulgedCapacitor',
];

/**
 * Dangers seen rather than measured. Electric heat locked on while the blower stands still, and a leak of a flammable
 * refrigerant, are dangers of their own and take the place of their parts.
 *
 * @param visit  observations, refrigerant, and whether something burns in the house
 * @returns flags of severity danger under `seen.<observation>`; an oil stain on a flammable charge is a doubt
 * Source: data/limits.json, flammable
 * Check: tests/diagnostics/observed-dangers.test.ts
 */
export function observedDangers(visit: Visit): readonly Flag[] {
  const seen = new Set(visit.observations.map(({ id }) => id));
  const flags: Flag[] = [];
  const told = new Set<ObservationId>();
  if (seen.has('stripsStayOn') && seen.has('blowerNotRunning')) {
    flags.push(danger('lockedHeatWithoutAir'));
    told.add('stripsStayOn').add('blowerNotRunning');
  }
  const name = flammableName(visit);
  if (name !== undefined && seen.has('escapingRefrigerant')) {
    const code = visit.site.otherHeat === true ? 'flammableLeakNearFlame' : 'flammableLeak';
    flags.push({ ...danger(code), values: { name } });
    told.add('escapingRefrigerant');
  } else if (name !== undefined && seen.has('oilStain')) {
    flags.push({ code: 'flammableOilStain', severity: 'doubt', readings: [], values: { name } });
  }
  return [
    ...flags,
    ...DANGEROUS.filter((id) => seen.has(id) && !told.has(id)).map((id) => danger(`seen.${id}`)),
  ];
}

function flammableName(visit: Visit): string | undefined {
  const { refrigerant, otherRefrigerant } = visit.unit;
  const name = refrigerant ?? otherRefrigerant?.trim();
  const known = limits.flammable.names.find((burns) => burns.toLowerCase() === name?.toLowerCase());
  return known;
}

function danger(code: string): Flag {
  return { code, severity: 'danger', readings: [] };
}
