import { type Assumption, resolveAssumption } from '../../visit/assumption';
import type { Basis } from '../../visit/basis';
import type { Unit } from '../../visit/unit';
import defaults from './data/unit-defaults.json';
import { defaultRatings } from './default-ratings';
import type { HealthyUnit, Tier, UnitFact } from './healthy-unit-model';
import { type Build, coolingPerformance, heatingPerformance } from './mode-performance';

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
    cutOutF: input.tier === 'variableSpeed' ? defaults.cutOutF.variableSpeed : defaults.cutOutF.value,
    facts,
    notes: [],
  };
}

function yearOf(input: HealthyUnitInput): number {
  if (input.unit.manufactureYear !== undefined) return input.unit.manufactureYear;
  const age = resolveAssumption(input.assumptions ?? [], 'ageYears').likely;
  return Number.parseInt(input.visitDate.slice(0, 4), 10) - Math.round(age);
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
      value: build.cutOutF,
      unit: 'F',
      basis: 'assumed',
      source: cutOut.source,
      status: cutOut.status,
    });
  }
  return stripKw;
}
