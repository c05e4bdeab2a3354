import { type Assumption, resolveAssumption } from '../../visit/assumption';
import type { Basis } from '../../visit/basis';
import type { Ratings, Unit } from '../../visit/unit';
import type { Saying } from '../../visit/wording';
import defaults from './data/unit-defaults.json';
import { type DefaultRatings, defaultRatings } from './default-ratings';
import type { HealthyUnit, ModePerformance, Tier, UnitFact } from './healthy-unit-model';

import type { Procedure } from './seasonal-rating';
import { solveCooling } from './solve-cooling';
import { solveHeating } from './solve-heating';

export type { HealthyUnit } from './healthy-unit-model';

export type HealthyUnitInput = {
  readonly unit: Unit;
  /** ISO date of the visit: an unknown year of manufacture is counted back from it. */
  readonly visitDate: string;
  /** Compressor stages; left out = single speed. */
  readonly tier?: Tier;
  readonly stateCode?: string;
  readonly assumptions?: readonly Assumption[];
};

/** What is known so far while the model is put together. */
type Build = {
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

/**
 * The unit as it would perform with nothing wrong, from its ratings, or from the federal minimum of its year.
 *
 * @param input  unit as recorded, date of the visit, tier, state, the visit's own assumptions
 * @returns rated points, curves, cyclic coefficients, blower, strips and cut-out as plain data, each figure with
 *   its source in `facts`, doubts in `notes`
 * Every gap is filled and said; only kind and nominal size are indispensable. Older and newer ratings are never
 * mixed: each mode uses the procedure of its own seasonal rating; with both on the plate the newer one counts.
 * Source: data/unit-defaults.json, data/minimum-standards.json, data/test-procedure.json
 * Check: tests/diagnostics/healthy-unit/healthy-unit.test.ts
 */
export function healthyUnit(input: HealthyUnitInput): HealthyUnit {
  const build = startBuild(input);
  const cooling = coolingPerformance(build);
  const heating = build.unit.kind === 'heatPump' ? heatingPerformance(build) : undefined;
  const blower = blowerOf(build, input);
  const stripKw = stripKwOf(build);
  return {
    kind: build.unit.kind,
    tier: build.tier,
    nominalTons: build.unit.nominalTons,
    cooling95Btuh: build.cooling95Btuh,
    cooling,
    ...(heating === undefined ? {} : { heating }),
    airflowCfm: build.airflowCfm,
    blower,
    blowerW: defaults.blowerWPerCfm[blower] * build.airflowCfm,
    stripKw,
    cutOutF: build.cutOutF,
    crankcaseW: defaults.crankcase.w,
    crankcaseBelowF: defaults.crankcase.belowF,
    facts: build.facts,
    notes: build.notes,
  };
}

function startBuild(input: HealthyUnitInput): Build {
  const { unit } = input;
  const facts: UnitFact[] = [];
  const ratings = unit.ratings ?? {};
  const year = yearOf(input);
  const yearBasis: Basis = unit.manufactureYear === undefined ? 'assumed' : 'nameplate';
  facts.push({
    name: 'manufactureYear',
    value: year,
    unit: 'year',
    basis: yearBasis,
    source: unit.manufactureYear === undefined ? 'Visit date less the assumed age' : 'Unit plate',
    status: unit.manufactureYear === undefined ? 'assumption' : 'read',
  });
  const cooling95Btuh = ratings.cooling95Btuh ?? unit.nominalTons * 12_000;
  facts.push({
    name: 'cooling95Btuh',
    value: cooling95Btuh,
    unit: 'Btu/h',
    basis: ratings.cooling95Btuh === undefined ? 'assumed' : 'nameplate',
    source: ratings.cooling95Btuh === undefined ? 'Nominal size, 12,000 Btu/h per ton' : 'Rating given',
    status: ratings.cooling95Btuh === undefined ? 'assumption' : 'read',
  });
  const airflowCfm = defaults.airflowCfmPerTon.value * unit.nominalTons;
  facts.push({
    name: 'airflowCfm',
    value: airflowCfm,
    unit: 'cfm',
    basis: 'assumed',
    source: defaults.airflowCfmPerTon.source,
    status: defaults.airflowCfmPerTon.status,
  });
  return {
    unit,
    tier: input.tier ?? 'singleSpeed',
    ratings,
    yearBasis,
    standard: defaultRatings(unit.kind, year, cooling95Btuh, input.stateCode),
    cooling95Btuh,
    airflowCfm,
    cutOutF: defaults.cutOutF.value,
    facts,
    notes: [],
  };
}

function yearOf(input: HealthyUnitInput): number {
  if (input.unit.manufactureYear !== undefined) return input.unit.manufactureYear;
  const age = resolveAssumption(input.assumptions ?? [], 'ageYears').likely;
  return Number.parseInt(input.visitDate.slice(0, 4), 10) - Math.round(age);
}

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

function coolingPerformance(build: Build): ModePerformance {
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
    airflowCfm: build.airflowCfm,
    cyclicFrac,
  });
  if (solved.ratingsDisagree) build.notes.push({ code: 'ratingsDisagree', values: { mode: 'cooling' } });
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

function heatingPerformance(build: Build): ModePerformance {
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
    airflowCfm: build.airflowCfm,
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

function blowerOf(build: Build, input: HealthyUnitInput): 'psc' | 'ecm' {
  const { ecmFromYear, source, status } = defaults.blowerByYear;
  const given = build.unit.blower;
  const blower = given ?? (yearOf(input) >= ecmFromYear || build.tier === 'variableSpeed' ? 'ecm' : 'psc');
  const basis: Basis = given === undefined ? 'assumed' : 'nameplate';
  build.facts.push({
    name: 'blower',
    value: blower,
    unit: '',
    basis,
    source: given === undefined ? source : 'Recorded at the visit',
    status: given === undefined ? status : 'read',
  });
  build.facts.push({
    name: 'blowerWPerCfm',
    value: defaults.blowerWPerCfm[blower],
    unit: 'W/cfm',
    basis: 'assumed',
    source: defaults.blowerWPerCfm.source,
    status: defaults.blowerWPerCfm.status,
  });
  return blower;
}

function stripKwOf(build: Build): number {
  const given = build.unit.electricHeatKw;
  if (given === undefined && build.unit.kind === 'airConditioner') return 0;
  const { value, stepKw, source } = defaults.stripKwPerTon;
  const stripKw = given ?? Math.ceil((value * build.unit.nominalTons) / stepKw) * stepKw;
  if (given === undefined) build.notes.push({ code: 'stripKwAssumed', values: { stripKw } });
  build.facts.push({
    name: 'stripKw',
    value: stripKw,
    unit: 'kW',
    basis: given === undefined ? 'assumed' : 'nameplate',
    source: given === undefined ? source : 'Recorded at the visit',
    status: given === undefined ? defaults.stripKwPerTon.status : 'read',
  });
  if (build.unit.kind === 'heatPump') {
    const cutOut = defaults.cutOutF;
    build.facts.push({
      name: 'cutOutF',
      value: cutOut.value,
      unit: 'F',
      basis: 'assumed',
      source: cutOut.source,
      status: cutOut.status,
    });
  }
  return stripKw;
}
