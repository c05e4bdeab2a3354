import type { Basis } from '../../visit/basis';
import type { Ratings, Unit } from '../../visit/unit';
import type { Saying } from '../../visit/wording';
import defaults from './data/unit-defaults.json';
import type { DefaultRatings } from './default-ratings';
import type { ModePerformance, Tier, UnitFact } from './healthy-unit-model';
import type { Procedure } from './seasonal-rating';
import { solveCooling } from './solve-cooling';
import { solveHeating } from './solve-heating';

/** What is known so far while the model is put together. */
export type Build = {
  readonly unit: Unit;
  readonly tier: Tier;
  readonly ratings: Ratings;
  readonly yearBasis: Basis;
  readonly standard: DefaultRatings;
  readonly cooling95Btuh: number;
  readonly airflowCfm: number;
  readonly cutOutF: number;
  readonly facts: UnitFact[];
  readonly notes: Saying[];
};

type Seasonal = {
  readonly value: number;
  readonly procedure: Procedure;
  readonly basis: Basis;
  readonly source: string;
  readonly status: string;
};

/** The seasonal rating of one mode: newer if given, older if given, else the minimum of the year. */
function seasonalOf(build: Build, mode: 'cooling' | 'heating'): Seasonal {
  const keys =
    mode === 'cooling'
      ? (['seer2BtuPerWh', 'seerBtuPerWh'] as const)
      : (['hspf2BtuPerWh', 'hspfBtuPerWh'] as const);
  const newer = build.ratings[keys[0]];
  const older = build.ratings[keys[1]];
  if (newer !== undefined && older !== undefined) build.notes.push({ code: 'bothRatings', values: { mode } });
  const given = { basis: 'nameplate', source: 'Rating given', status: 'read' } as const;
  if (newer !== undefined) return { ...given, value: newer, procedure: 'newer' };
  if (older !== undefined) return { ...given, value: older, procedure: 'older' };
  const { source, status } = build.standard;
  const minimum = build.standard[keys[0]];
  build.notes.push({ code: 'minimumOfYear', values: { mode } });
  if (minimum !== undefined) return { value: minimum, procedure: 'newer', basis: 'assumed', source, status };
  return { value: build.standard[keys[1]] ?? 0, procedure: 'older', basis: 'assumed', source, status };
}

/**
 * Cooling of the healthy unit, solved from its seasonal rating.
 *
 * @param build  gathered so far; facts and notes are added to it
 * Check: tests/diagnostics/healthy-unit/healthy-unit.test.ts
 */
export function coolingPerformance(build: Build): ModePerformance {
  const seasonal = seasonalOf(build, 'cooling');
  noteSeasonal(build, 'coolingSeasonalRating', seasonal);
  const cyclicFrac = cyclicOf(build.tier, 'cooling', seasonal);
  noteCyclic(build, 'coolingCyclicFrac', cyclicFrac);
  const at95BtuPerWh = at95Of(build, seasonal);
  const curve = build.unit.kind === 'heatPump' ? 'heatPumpCooling' : 'airConditioner';
  const solved = solveCooling({
    curve,
    tier: build.tier,
    procedure: seasonal.procedure,
    seasonalBtuPerWh: seasonal.value,
    ...(at95BtuPerWh === undefined ? {} : { at95BtuPerWh }),
    cooling95Btuh: build.cooling95Btuh,
    airflowCfm: ratedAirflowCfm(build),
    cyclicFrac,
  });
  if (solved.ratingsDisagree) build.notes.push({ code: 'ratingsDisagree', values: { mode: 'cooling' } });
  if (solved.outOfReach) build.notes.push({ code: 'ratingOutOfReach', values: { mode: 'cooling' } });
  if (build.tier !== 'singleSpeed') build.notes.push({ code: 'equivalentSingleSpeed' });
  const capacitySd =
    build.ratings.cooling95Btuh === undefined ? defaults.sdLn.capacityNominal : defaults.sdLn.capacityRated;
  return {
    curve,
    grossCapacityBtuh: solved.grossCapacityBtuh,
    outdoorUnitW: solved.outdoorUnitW,
    cyclicFrac,
    ...(solved.powerTilt === undefined ? {} : { powerTilt: solved.powerTilt }),
    procedure: seasonal.procedure,
    seasonalBtuPerWh: seasonal.value,
    basis: seasonal.basis,
    equivalentSingleSpeed: build.tier !== 'singleSpeed',
    sdLnCapacity: Math.hypot(capacitySd, defaults.sdLn.curve),
    sdLnPower: powerSd(build, seasonal, capacitySd),
  };
}

/**
 * Heating of the healthy heat pump, solved from its seasonal rating by that rating's own procedure.
 *
 * @param build  gathered so far; facts and notes are added to it
 * Check: tests/diagnostics/healthy-unit/healthy-unit.test.ts
 */
export function heatingPerformance(build: Build): ModePerformance {
  const seasonal = seasonalOf(build, 'heating');
  noteSeasonal(build, 'heatingSeasonalRating', seasonal);
  const cyclicFrac = cyclicOf(build.tier, 'heating', seasonal);
  noteCyclic(build, 'heatingCyclicFrac', cyclicFrac);
  const rated = build.ratings.heating47Btuh;
  const heating47Btuh = rated ?? defaults.heating47PerCooling95.value * build.cooling95Btuh;
  build.facts.push({
    name: 'heating47Btuh',
    value: heating47Btuh,
    unit: 'Btu/h',
    basis: rated === undefined ? 'assumed' : 'nameplate',
    source: rated === undefined ? defaults.heating47PerCooling95.source : 'Rating given',
    status: rated === undefined ? defaults.heating47PerCooling95.status : 'read',
  });
  const solved = solveHeating({
    procedure: seasonal.procedure,
    seasonalBtuPerWh: seasonal.value,
    heating47Btuh,
    ...(build.ratings.heating17Btuh === undefined ? {} : { heating17Btuh: build.ratings.heating17Btuh }),
    cooling95Btuh: build.cooling95Btuh,
    airflowCfm: ratedAirflowCfm(build),
    cyclicFrac,
    cutOutF: build.cutOutF,
    variableSpeed: build.tier === 'variableSpeed',
  });
  if (solved.ratingsDisagree) build.notes.push({ code: 'ratingsDisagree', values: { mode: 'heating' } });
  if (solved.outOfReach) build.notes.push({ code: 'ratingOutOfReach', values: { mode: 'heating' } });
  const capacitySd =
    rated === undefined ? defaults.sdLn.heatingCapacityFromCooling : defaults.sdLn.capacityRated;
  return {
    curve: 'heatPumpHeating',
    grossCapacityBtuh: solved.grossCapacityBtuh,
    outdoorUnitW: solved.outdoorUnitW,
    cyclicFrac,
    ...(solved.capacityTilt === undefined ? {} : { capacityTilt: solved.capacityTilt }),
    procedure: seasonal.procedure,
    seasonalBtuPerWh: seasonal.value,
    basis: seasonal.basis,
    equivalentSingleSpeed: build.tier !== 'singleSpeed',
    sdLnCapacity: Math.hypot(capacitySd, defaults.sdLn.curve),
    sdLnPower: powerSd(build, seasonal, capacitySd),
  };
}

/** Airflow of the rating test: in proportion to rated capacity, whatever the nominal size says. */
function ratedAirflowCfm(build: Build): number {
  return (defaults.airflowCfmPerTon.value * build.cooling95Btuh) / 12_000;
}

/** EER of the seasonal rating's own procedure; units of several speeds get the published regression. */
function at95Of(build: Build, seasonal: Seasonal): number | undefined {
  const given = seasonal.procedure === 'newer' ? build.ratings.eer2BtuPerWh : build.ratings.eerBtuPerWh;
  if (given !== undefined || build.tier === 'singleSpeed') return given;
  const { slope, intercept } = defaults.eer2FromSeer2[build.tier];
  const newer = seasonal.procedure === 'newer';
  const seer2 = newer ? seasonal.value : seasonal.value * defaults.eer2FromSeer2.seer2PerSeer;
  const eer2 = Math.min(seer2, slope * seer2 + intercept);
  const value = newer ? eer2 : eer2 / defaults.eer2FromSeer2.eer2PerEer;
  build.facts.push({
    name: 'coolingRatingAt95',
    value,
    unit: 'Btu/Wh',
    basis: 'assumed',
    source: defaults.eer2FromSeer2.source,
    status: defaults.eer2FromSeer2.status,
  });
  return value;
}

function cyclicOf(tier: Tier, mode: 'cooling' | 'heating', seasonal: Seasonal): number {
  if (tier === 'twoSpeed') return defaults.cyclicFrac.twoSpeed;
  if (tier === 'variableSpeed') return defaults.cyclicFrac.variableSpeedEquivalent;
  const row = defaults.cyclicFrac[mode];
  const limit = seasonal.procedure === 'older' ? row.limitOlderBtuPerWh : row.limitNewerBtuPerWh;
  return seasonal.value < limit ? row.below : row.atOrAbove;
}

function powerSd(build: Build, seasonal: Seasonal, capacitySd: number): number {
  const { powerRated, powerMinimumOfYear, powerYearAssumed, curve, cyclic } = defaults.sdLn;
  const guessed = build.yearBasis === 'assumed' ? powerYearAssumed : powerMinimumOfYear;
  return Math.hypot(seasonal.basis === 'nameplate' ? powerRated : guessed, capacitySd, curve, cyclic);
}

function noteSeasonal(build: Build, name: string, seasonal: Seasonal): void {
  const newer = seasonal.procedure === 'newer';
  const label = name === 'coolingSeasonalRating' ? (newer ? 'SEER2' : 'SEER') : newer ? 'HSPF2' : 'HSPF';
  build.facts.push({
    name,
    value: seasonal.value,
    unit: `Btu/Wh (${label})`,
    basis: seasonal.basis,
    source: seasonal.source,
    status: seasonal.status,
  });
}

function noteCyclic(build: Build, name: string, value: number): void {
  const { source, status } = defaults.cyclicFrac;
  build.facts.push({ name, value, unit: 'frac', basis: 'assumed', source, status });
}
