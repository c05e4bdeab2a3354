import type { Uncertain } from '../../math/propagate';
import { derivedById } from '../derived/derive-run';
import type { DerivedValue, Flag, Target } from '../findings';
import { airSideGross } from '../plausibility/air-conflicts';
import { type RunContext, reading } from '../run-context';
import type { NoTarget } from '../targets/build-target';
import { healthyAt } from '../targets/healthy-state';
import { heatingOrificeSuperheat } from '../targets/refrigerant-targets';
import { countedConflicts, isInConflict } from './conflicting-readings';
import table from './data/features.json';
import type { FeatureId, FeatureReading } from './feature';
import { flowAgainstPower, flowAgainstSize, wetEfficiency } from './flow-features';
import type { EvidenceRun } from './likelihood';

const { expectations } = table;

/** What `featuresOfRun` looks at. */
export type FeatureInput = {
  readonly context: RunContext;
  readonly derived: readonly DerivedValue[];
  readonly targets: readonly Target[];
  readonly noTargets: readonly NoTarget[];
  readonly flags: readonly Flag[];
};

/**
 * Evidence of one run: every reading for which a healthy value can be stated, less that value.
 *
 * @param input  run with its derived values, targets and flags
 * @returns residuals with the uncertainty of reading and target together; what rests on readings in conflict is left out
 * Where no target is published an expectation of data/features.json stands in, wide and for the causes only.
 * Check: tests/diagnostics/causes/features-of-run.test.ts
 */
export function featuresOfRun(input: FeatureInput): readonly FeatureReading[] {
  return everyFeature(input).filter(({ id }) => !isInConflict(id, input.context, input.flags));
}

function everyFeature(input: FeatureInput): readonly FeatureReading[] {
  const wet = isSuctionWet(input);
  const found = [
    saturation(input, 'evaporating'),
    saturation(input, 'condensing'),
    superheat(input),
    subcooling(input),
    liquidApproach(input),
    wet ? undefined : fromTarget(input, 'discharge', 'dischargeLineF'),
    power(input),
    airDifference(input),
    fromTarget(input, 'airflow', 'airflowCfmPerTon'),
    wet ? wetEfficiency(input.context) : fromTarget(input, 'efficiency', 'isentropicEfficiencyFrac'),
    wet ? undefined : capacityGap(input),
    wet ? flowAgainstPower(input.context, input.derived) : undefined,
    flowAgainstSize(input.context, input.derived, wet),
    fromExpectation(input, 'drierDrop', 'drierDropFd', expectations.drierDrop),
    fromExpectation(input, 'static', 'totalExternalStaticInWc', expectations.static),
    fromExpectation(input, 'compressorCapacitor', 'compressorCapacitorDeviationFrac', expectations.capacitor),
    fromExpectation(input, 'fanCapacitor', 'fanCapacitorDeviationFrac', expectations.capacitor),
    fromExpectation(input, 'stripAmps', 'stripAmpsRatio', expectations.stripAmps),
    fromExpectation(input, 'standing', 'standingOverAirFd', expectations.standing),
    wet ? undefined : fromExpectation(input, 'valveRise', 'reversingValveRiseFd', expectations.valveRise),
    powerFactorFeature(input),
  ].filter((feature) => feature !== undefined);
  const notSteady = input.flags.some((flag) => flag.code === 'notSteady');
  const widening = notSteady ? table.notSteadyWidening.factor : 1;
  return found.map((feature) => ({ ...feature, sd: feature.sd * widening }));
}

/** Liquid may be in the suction line: what hangs on the gas leaving the compressor says nothing then. */
function isSuctionWet(input: FeatureInput): boolean {
  const superheat = derivedById(input.derived, 'suctionSuperheatFd');
  return superheat !== undefined && superheat.value <= expectations.wetSuctionFd.value;
}

/** Capacity on the refrigerant side over that on the air side, as a logarithm. */
function capacityGap(input: FeatureInput): FeatureReading | undefined {
  const refrigerant = derivedById(input.derived, 'refrigerantCapacityBtuh');
  const air = airSideGross(input.context, input.derived);
  if (refrigerant === undefined || air === undefined || air.value <= 0 || refrigerant.value <= 0)
    return undefined;
  if (input.context.run.electricHeatOn === true) return undefined;
  return {
    id: 'capacityGap',
    readingId: 'refrigerantCapacityBtuh',
    residual: Math.log(refrigerant.value / air.value),
    sd: Math.hypot(refrigerant.sd / refrigerant.value, air.sd / air.value, expectations.capacityGap.sd),
  };
}

type Expectation = { readonly value: number; readonly sd: number };

function targetOf(input: FeatureInput, id: string): Target | undefined {
  return input.targets.find((target) => target.id === id && target.reading !== undefined);
}

function fromTarget(input: FeatureInput, id: FeatureId, readingId: string): FeatureReading | undefined {
  const target = targetOf(input, readingId);
  if (target?.reading === undefined || target.sd === undefined) return undefined;
  return {
    id,
    readingId,
    residual: target.reading - target.value,
    sd: Math.hypot(target.sd, ownSd(input, readingId)),
  };
}

function fromExpectation(
  input: FeatureInput,
  id: FeatureId,
  readingId: string,
  expected: Expectation,
): FeatureReading | undefined {
  const value = derivedById(input.derived, readingId);
  if (value === undefined) return undefined;
  return { id, readingId, residual: value.value - expected.value, sd: Math.hypot(expected.sd, value.sd) };
}

/** Uncertainty of a derived value or of a reading judged as read. */
function ownSd(input: FeatureInput, readingId: string): number {
  const derived = derivedById(input.derived, readingId);
  if (derived !== undefined) return derived.sd;
  return readingId === 'dischargeLineF' ? (reading(input.context, 'dischargeLineF')?.sd ?? 0) : 0;
}

/** Saturation temperatures, counted so that "high" means a high pressure in both modes. */
function saturation(input: FeatureInput, id: 'evaporating' | 'condensing'): FeatureReading | undefined {
  const cooling = input.context.run.mode === 'cooling';
  const readingId =
    id === 'condensing'
      ? cooling
        ? 'condensingOverOutdoorFd'
        : 'condensingOverReturnFd'
      : cooling
        ? 'evaporatingBelowReturnFd'
        : 'evaporatingBelowOutdoorFd';
  const feature = fromTarget(input, id, readingId);
  if (feature === undefined || id === 'condensing') return feature;
  return { ...feature, residual: -feature.residual, sd: Math.hypot(feature.sd, orificeWander(input)) };
}

/** In heating the evaporating temperature of fixed metering wanders away from the rule. */
function orificeWander(input: FeatureInput): number {
  const { run, visit } = input.context;
  if (run.mode === 'cooling' || visit.unit.metering !== 'fixedOrifice') return 0;
  const { perOutdoorF, atOutdoorF } = expectations.evaporatingHeatingFixed;
  return perOutdoorF * Math.abs((run.outdoorAirF ?? atOutdoorF) - atOutdoorF);
}

function superheat(input: FeatureInput): FeatureReading | undefined {
  const value = derivedById(input.derived, 'suctionSuperheatFd');
  const expected = expectedSuperheat(input);
  if (value === undefined || expected === undefined) return undefined;
  return {
    id: 'superheat',
    readingId: 'suctionSuperheatFd',
    residual: value.value - expected.value,
    sd: Math.hypot(expected.sd, value.sd),
    floor: -expected.value,
  };
}

function expectedSuperheat(input: FeatureInput): Uncertain | undefined {
  const { metering } = input.context.visit.unit;
  const target = targetOf(input, 'suctionSuperheatFd');
  if (metering === 'txv') return expectations.superheatTxvSd;
  if (metering === undefined) return undefined;
  if (target !== undefined) return { value: target.value, sd: expectations.superheatFixedSd.sd };
  if (input.context.run.mode === 'heating') return heatingOrificeSuperheat(input.context);
  const why = input.noTargets.find((none) => none.id === 'suctionSuperheatFd')?.note.code;
  return why === 'noTargetDash' ? expectations.superheatDash : undefined;
}

function expectedSubcooling(input: FeatureInput): Uncertain | undefined {
  if (input.context.run.mode === 'heating') return heatingSubcooling(input);
  const target = input.targets.find(({ id }) => id === 'liquidSubcoolingFd');
  return target?.sd === undefined ? undefined : { value: target.value, sd: target.sd };
}

/** Liquid line over the air that cools it, against condensing over air less subcooling of the healthy unit. */
function liquidApproach(input: FeatureInput): FeatureReading | undefined {
  const cooling = input.context.run.mode === 'cooling';
  const liquid = reading(input.context, 'liquidLineF');
  const air = reading(input.context, cooling ? 'outdoorAirF' : 'returnAirF');
  const over = input.targets.find(
    ({ id }) => id === (cooling ? 'condensingOverOutdoorFd' : 'condensingOverReturnFd'),
  );
  const subcooled = expectedSubcooling(input);
  if (liquid === undefined || air === undefined || over?.sd === undefined || subcooled === undefined)
    return undefined;
  return {
    id: 'liquidApproach',
    readingId: 'liquidLineF',
    residual: liquid.value - air.value - (over.value - subcooled.value),
    sd: Math.hypot(liquid.sd, air.sd, over.sd, subcooled.sd),
  };
}

function subcooling(input: FeatureInput): FeatureReading | undefined {
  const value = derivedById(input.derived, 'liquidSubcoolingFd');
  const expected = expectedSubcooling(input);
  if (value === undefined || expected === undefined) return undefined;
  return {
    id: 'subcooling',
    readingId: 'liquidSubcoolingFd',
    residual: value.value - expected.value,
    sd: Math.hypot(expected.sd, value.sd),
    floor: -expected.value,
  };
}

function heatingSubcooling(input: FeatureInput): Uncertain {
  const { value, sd, fixedValue, fixedSd } = expectations.subcoolingHeating;
  return input.context.visit.unit.metering === 'fixedOrifice'
    ? { value: fixedValue, sd: fixedSd }
    : { value, sd };
}

function power(input: FeatureInput): FeatureReading | undefined {
  const value = derivedById(input.derived, 'outdoorUnitW');
  const healthy = healthyAt(input.context);
  if (value === undefined || healthy === undefined) return undefined;
  return {
    id: 'power',
    readingId: 'outdoorUnitW',
    residual: Math.log(value.value / healthy.outdoorUnitW),
    sd: Math.hypot(healthy.sdLnPower, value.sd / value.value),
  };
}

function airDifference(input: FeatureInput): FeatureReading | undefined {
  const cooling = input.context.run.mode === 'cooling';
  return fromTarget(input, 'airDifference', cooling ? 'airSplitFd' : 'airRiseFd');
}

function powerFactorFeature(input: FeatureInput): FeatureReading | undefined {
  const derived = fromExpectation(input, 'powerFactor', 'powerFactorFrac', expectations.powerFactor);
  if (derived !== undefined) return derived;
  const read = reading(input.context, 'powerFactorFrac');
  if (read === undefined) return undefined;
  const { value, sd } = expectations.powerFactor;
  return {
    id: 'powerFactor',
    readingId: 'powerFactorFrac',
    residual: read.value - value,
    sd: Math.hypot(sd, read.sd),
  };
}

/**
 * Evidence of one run as the causes weigh it, with the conflicts that took readings out of it.
 *
 * @param input  run with its derived values, targets and flags
 * Check: tests/diagnostics/causes/conflicting-readings.test.ts
 */
export function evidenceOfRun(input: FeatureInput): EvidenceRun {
  const { run, visit } = input.context;
  const every = everyFeature(input);
  const leftOut = every.map(({ id }) => id).filter((id) => isInConflict(id, input.context, input.flags));
  return {
    runId: run.id,
    mode: run.mode,
    features: every.filter(({ id }) => !leftOut.includes(id)),
    leftOut,
    conflicts: countedConflicts(input.flags),
    ...(visit.unit.metering === undefined ? {} : { metering: visit.unit.metering }),
  };
}
