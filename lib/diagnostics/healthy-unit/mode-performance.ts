import type { Basis } from '../../visit/basis';
import type { Mode } from '../../visit/run';
import type { Ratings, Unit } from '../../visit/unit';
import type { Saying } from '../../visit/wording';
import speedRatios from './data/speed-ratios.json';
import defaults from './data/unit-defaults.json';
import type { DefaultRatings } from './default-ratings';
import type { ModePerformance, Tier, UnitFact } from './healthy-unit-model';
import type { CurveName } from './performance-curve';
import { ratedBlowerW } from './rated-blower';
import type { Procedure } from './seasonal-rating';
import { solveCooling } from './solve-cooling';
import { solveHeating } from './solve-heating';
import { nominalGross } from './speed-steps';
import { type SolvedSpeeds, twoSpeedCooling, twoSpeedHeating } from './two-speed';
import { variableSpeedCooling, variableSpeedHeating } from './variable-speed';

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

type SpeedTier = Exclude<Tier, 'singleSpeed'>;

type Seasonal = {
  readonly value: number;
  readonly procedure: Procedure;
  readonly basis: Basis;
  readonly source: string;
  readonly status: string;
};

/** The seasonal rating of one mode: newer if given, older if given, else the minimum of the year. */
function seasonalOf(build: Build, mode: Mode): Seasonal {
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

/** What solving the ratings of one mode gives, by curve or by speeds. */
type Solved = Pick<
  ModePerformance,
  'grossCapacityBtuh' | 'outdoorUnitW' | 'cyclicFrac' | 'capacityTilt' | 'powerTilt' | 'speeds'
>;

/**
 * Cooling of the healthy unit, solved from its seasonal rating.
 *
 * @param build  gathered so far; facts and notes are added to it
 * Check: tests/diagnostics/healthy-unit/healthy-unit.test.ts
 */
export function coolingPerformance(build: Build): ModePerformance {
  const seasonal = seasonalOf(build, 'cooling');
  noteSeasonal(build, 'coolingSeasonalRating', seasonal);
  const curve = build.unit.kind === 'heatPump' ? 'heatPumpCooling' : 'airConditioner';
  const solved =
    build.tier === 'singleSpeed'
      ? coolingOnCurve(build, seasonal, curve)
      : coolingBySpeeds(build, build.tier, seasonal);
  noteCyclic(build, 'coolingCyclicFrac', solved.cyclicFrac);
  const capacitySd =
    build.ratings.cooling95Btuh === undefined ? defaults.sdLn.capacityNominal : defaults.sdLn.capacityRated;
  return { curve, ...solved, ...knowledge(build, seasonal, capacitySd) };
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
  const solved =
    build.tier === 'singleSpeed'
      ? heatingOnCurve(build, seasonal, heating47Btuh)
      : heatingBySpeeds(build, build.tier, seasonal, heating47Btuh);
  noteCyclic(build, 'heatingCyclicFrac', solved.cyclicFrac);
  const capacitySd =
    rated === undefined ? defaults.sdLn.heatingCapacityFromCooling : defaults.sdLn.capacityRated;
  return { curve: 'heatPumpHeating', ...solved, ...knowledge(build, seasonal, capacitySd) };
}

function coolingOnCurve(build: Build, seasonal: Seasonal, curve: CurveName): Solved {
  const cyclicFrac = cyclicOf('cooling', seasonal);
  const { eerBtuPerWh, eer2BtuPerWh } = build.ratings;
  const at95BtuPerWh = seasonal.procedure === 'newer' ? eer2BtuPerWh : eerBtuPerWh;
  const solved = solveCooling({
    curve,
    procedure: seasonal.procedure,
    seasonalBtuPerWh: seasonal.value,
    ...(at95BtuPerWh === undefined ? {} : { at95BtuPerWh }),
    cooling95Btuh: build.cooling95Btuh,
    airflowCfm: ratedAirflowCfm(build),
    cyclicFrac,
  });
  if (solved.ratingsDisagree) build.notes.push({ code: 'ratingsDisagree', values: { mode: 'cooling' } });
  if (solved.outOfReach) build.notes.push({ code: 'ratingOutOfReach', values: { mode: 'cooling' } });
  return {
    grossCapacityBtuh: solved.grossCapacityBtuh,
    outdoorUnitW: solved.outdoorUnitW,
    cyclicFrac,
    ...(solved.powerTilt === undefined ? {} : { powerTilt: solved.powerTilt }),
  };
}

function heatingOnCurve(build: Build, seasonal: Seasonal, heating47Btuh: number): Solved {
  const cyclicFrac = cyclicOf('heating', seasonal);
  const { heating17Btuh } = build.ratings;
  const solved = solveHeating({
    procedure: seasonal.procedure,
    seasonalBtuPerWh: seasonal.value,
    heating47Btuh,
    ...(heating17Btuh === undefined ? {} : { heating17Btuh }),
    cooling95Btuh: build.cooling95Btuh,
    airflowCfm: ratedAirflowCfm(build),
    cyclicFrac,
    cutOutF: build.cutOutF,
  });
  if (solved.ratingsDisagree) build.notes.push({ code: 'ratingsDisagree', values: { mode: 'heating' } });
  if (solved.outOfReach) build.notes.push({ code: 'ratingOutOfReach', values: { mode: 'heating' } });
  return {
    grossCapacityBtuh: solved.grossCapacityBtuh,
    outdoorUnitW: solved.outdoorUnitW,
    cyclicFrac,
    ...(solved.capacityTilt === undefined ? {} : { capacityTilt: solved.capacityTilt }),
  };
}

function coolingBySpeeds(build: Build, tier: SpeedTier, seasonal: Seasonal): Solved {
  const seer2BtuPerWh = newerValue(build, seasonal, defaults.eer2FromSeer2.seer2PerSeer, 'cooling');
  const rating = {
    kind: build.unit.kind,
    cooling95Btuh: build.cooling95Btuh,
    seer2BtuPerWh,
    eer2BtuPerWh: eer2Of(build, tier, seasonal, seer2BtuPerWh),
    ratedBlowerW: ratedBlowerW('cooling', {
      procedure: 'newer',
      seasonalBtuPerWh: seer2BtuPerWh,
      airflowCfm: ratedAirflowCfm(build),
    }),
  };
  build.notes.push({ code: 'speedsInterpolated' });
  return bySpeeds(
    build,
    tier,
    'cooling',
    tier === 'twoSpeed' ? twoSpeedCooling(rating) : variableSpeedCooling(rating),
  );
}

function heatingBySpeeds(build: Build, tier: SpeedTier, seasonal: Seasonal, heating47Btuh: number): Solved {
  const hspf2BtuPerWh = newerValue(build, seasonal, defaults.eer2FromSeer2.hspf2PerHspf, 'heating');
  const { heating17Btuh } = build.ratings;
  const rating = {
    heating47Btuh,
    ...(heating17Btuh === undefined ? {} : { heating17Btuh }),
    hspf2BtuPerWh,
    cooling95Btuh: build.cooling95Btuh,
    ratedBlowerW: ratedBlowerW('heating', {
      procedure: 'newer',
      seasonalBtuPerWh: hspf2BtuPerWh,
      airflowCfm: ratedAirflowCfm(build),
    }),
    cutOutF: build.cutOutF,
  };
  return bySpeeds(
    build,
    tier,
    'heating',
    tier === 'twoSpeed' ? twoSpeedHeating(rating) : variableSpeedHeating(rating),
  );
}

function bySpeeds(build: Build, tier: SpeedTier, mode: Mode, solved: SolvedSpeeds): Solved {
  if (solved.outOfReach) build.notes.push({ code: 'ratingOutOfReach', values: { mode } });
  const nominal = nominalGross(solved.table, mode);
  return {
    grossCapacityBtuh: nominal.capacityBtuh,
    outdoorUnitW: nominal.powerW,
    cyclicFrac: speedRatios.cyclicFrac[tier],
    speeds: solved.table,
  };
}

/** Published points of several speeds exist for the newer procedure only; an older rating is converted, and said so. */
function newerValue(build: Build, seasonal: Seasonal, factor: number, mode: Mode): number {
  if (seasonal.procedure === 'newer') return seasonal.value;
  build.notes.push({ code: 'olderRatingConverted', values: { mode } });
  return seasonal.value * factor;
}

/** EER2 given, or converted, or by the published regression. */
function eer2Of(build: Build, tier: SpeedTier, seasonal: Seasonal, seer2BtuPerWh: number): number {
  const { eer2BtuPerWh, eerBtuPerWh } = build.ratings;
  if (seasonal.procedure === 'newer' && eer2BtuPerWh !== undefined) return eer2BtuPerWh;
  const { eer2PerEer, source, status } = defaults.eer2FromSeer2;
  if (seasonal.procedure === 'older' && eerBtuPerWh !== undefined) return eerBtuPerWh * eer2PerEer;
  const { slope, intercept } = defaults.eer2FromSeer2[tier];
  const value = Math.min(seer2BtuPerWh, slope * seer2BtuPerWh + intercept);
  build.facts.push({ name: 'coolingRatingAt95', value, unit: 'Btu/Wh', basis: 'assumed', source, status });
  return value;
}

function knowledge(
  build: Build,
  seasonal: Seasonal,
  capacitySd: number,
): Pick<ModePerformance, 'procedure' | 'seasonalBtuPerWh' | 'basis' | 'sdLnCapacity' | 'sdLnPower'> {
  return {
    procedure: seasonal.procedure,
    seasonalBtuPerWh: seasonal.value,
    basis: seasonal.basis,
    sdLnCapacity: Math.hypot(capacitySd, defaults.sdLn.curve),
    sdLnPower: powerSd(build, seasonal, capacitySd),
  };
}

/** Airflow of the rating test: in proportion to rated capacity, whatever the nominal size says. */
function ratedAirflowCfm(build: Build): number {
  return (defaults.airflowCfmPerTon.value * build.cooling95Btuh) / 12_000;
}

function cyclicOf(mode: Mode, seasonal: Seasonal): number {
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
