import type { ReadingName } from '../../lib/visit/run';
import { airSide, levelOf } from './airflow';
import type { SimulatedUnit } from './circuit';
import { BTUH_PER_W } from './compressor';
import { compressorConstants, fanConstants, ratingPoint } from './constants';
import type { CycleState } from './cycle-state';
import { type Air, airFromHumidity, airFromWetBulb, airOf, barometerPsia, wetBulbF } from './moist-air';
import { circuitOf } from './operation';
import type { Conditions, ImposedFault } from './unit-spec';

/** True values of everything an instrument could read in this state. */
export type TrueReadings = Partial<Record<ReadingName, number>>;

const DEFAULT_V = 240;
const DEFAULT_CAP_UF = { compressor: 40, fan: 5 } as const;
const RANKINE = 459.67;
const WINTER_INDOOR_HUMIDITY_FRAC = 0.4;

/**
 * Readings of a run from a steady state, exact.
 *
 * @param unit healthy unit
 * @param conditions where the readings are taken
 * @param faults imposed faults
 * @param state steady state under them
 * @returns values in the units of lib/visit/run.ts; pressures are gauge at the altitude
 * Check: tests/synthesis/readings.test.ts
 */
export function trueReadings(
  unit: SimulatedUnit,
  conditions: Conditions,
  faults: readonly ImposedFault[],
  state: CycleState,
): TrueReadings {
  const lineV = conditions.lineV ?? unit.spec.ratedV ?? DEFAULT_V;
  return {
    ...refrigerantReadings(unit, conditions, state),
    ...standingReadings(unit, conditions, state),
    ...airReadings(unit, conditions, faults, state, lineV),
    ...electricReadings(unit, faults, state, lineV),
    ...electricHeatReadings(unit, conditions, faults, lineV),
  };
}

function refrigerantReadings(unit: SimulatedUnit, conditions: Conditions, state: CycleState): TrueReadings {
  const { fluid } = unit;
  const barometer = barometerPsia(conditions.altitudeFt ?? 0);
  const low = fluid.saturatedAt(state.suctionPsia);
  const high = fluid.saturatedAt(state.dischargePsia);
  const gas = (psia: number, btuLb: number, edge: typeof low): number =>
    btuLb <= edge.vapourBtuLb ? edge.dewF : fluid.vapourAtEnthalpy(psia, btuLb).vapourF;
  const condensing = fluid.saturatedAt(fluid.dewPsia(state.unknowns.condensingF));
  const liquidF =
    state.condenser.outletBtuLb < condensing.liquidBtuLb
      ? fluid.liquidF(state.condenser.outletBtuLb)
      : condensing.bubbleF;
  return {
    suctionPsig: state.suctionPsia - barometer,
    dischargePsig: state.dischargePsia - barometer,
    liquidPsig: state.dischargePsia - barometer,
    suctionLineF: gas(state.suctionPsia, state.suctionBtuLb, low),
    dischargeLineF: gas(state.dischargePsia, state.compression.dischargeBtuLb, high),
    liquidLineF: liquidF,
    liquidBeforeMeteringF: state.entering.liquidF,
    ...(unit.spec.kind === 'heatPump'
      ? { suctionBeforeValveF: gas(state.suctionPsia, state.returnedBtuLb, low) }
      : {}),
  };
}

/** Air spreads over the gas spaces of the stopped circuit, which stands at the outdoor temperature. */
function standingReadings(unit: SimulatedUnit, conditions: Conditions, state: CycleState): TrueReadings {
  const { fluid } = unit;
  const circuit = circuitOf(unit, conditions.mode);
  const { condenserFt3, evaporatorFt3, liquidLineFt3 } = circuit.volumes;
  const barometer = barometerPsia(conditions.altitudeFt ?? 0);
  const refrigerantPsia = (fluid.bubblePsia(conditions.outdoorF) + fluid.dewPsia(conditions.outdoorF)) / 2;
  const runningPsi = state.dischargePsia - fluid.dewPsia(state.unknowns.condensingF);
  const heldFt3 = state.chargeLb / fluid.liquidLbFt3(conditions.outdoorF);
  const gasFt3 = Math.max(0.2 * condenserFt3, condenserFt3 + evaporatorFt3 + liquidLineFt3 - heldFt3);
  const spread = ((1 - state.condenser.liquidFrac) * condenserFt3) / gasFt3;
  const cooled = (conditions.outdoorF + RANKINE) / (state.unknowns.condensingF + RANKINE);
  return {
    standingPsig: refrigerantPsia + Math.max(0, runningPsi) * spread * cooled - barometer,
    standingCoilAirF: conditions.outdoorF,
  };
}

function airReadings(
  unit: SimulatedUnit,
  conditions: Conditions,
  faults: readonly ImposedFault[],
  state: CycleState,
  lineV: number,
): TrueReadings {
  const side = airSide(unit.spec, unit.indoorCfm, faults);
  const barometer = barometerPsia(conditions.altitudeFt ?? 0);
  const back = returnAir(conditions, barometer);
  const cooling = conditions.mode === 'cooling';
  const strips = conditions.electricHeatOn === true ? stripW(unit, faults, lineV) : 0;
  const addedF = ((side.blowerW + strips) * BTUH_PER_W) / (side.cfm * 60 * back.lbPerFt3 * back.btuPerLbF);
  const coilF = cooling ? state.evaporator.leavingF : state.condenser.leavingF;
  const humidity = cooling ? state.evaporator.leavingHumidityRatio : back.humidityRatio;
  const supply = airOf(coilF + addedF, humidity, barometer);
  const grilleIn2 = 10 * Math.round((fanConstants.grilleIn2PerCfm.value * unit.indoorCfm) / 10);
  return {
    outdoorAirF: conditions.outdoorF,
    returnAirF: conditions.returnF,
    returnWetBulbF: wetBulbF(back),
    supplyAirF: supply.airF,
    supplyWetBulbF: wetBulbF(supply),
    airflowCfm: side.cfm,
    grilleAreaIn2: grilleIn2,
    grilleFreeAreaFrac: fanConstants.grilleFreeAreaFrac.value,
    grilleFaceFpm: (side.cfm * 144) / (grilleIn2 * fanConstants.grilleFreeAreaFrac.value),
    returnStaticInWc: side.returnInWc,
    supplyStaticInWc: side.supplyInWc,
    filterDropInWc: side.filterDropInWc,
    coilDropInWc: side.coilDropInWc,
    blowerW: side.blowerW,
    blowerA: side.blowerW / (lineV * blowerPowerFactor(unit)),
  };
}

function blowerPowerFactor(unit: SimulatedUnit): number {
  const k = fanConstants;
  return (unit.spec.blower === 'psc' ? k.pscBlowerPowerFactorFrac : k.ecmBlowerPowerFactorFrac).value;
}

function returnAir(conditions: Conditions, barometer: number): Air {
  return conditions.returnWetBulbF === undefined
    ? airFromHumidity(conditions.returnF, WINTER_INDOOR_HUMIDITY_FRAC, barometer)
    : airFromWetBulb(conditions.returnF, conditions.returnWetBulbF, barometer);
}

function electricReadings(
  unit: SimulatedUnit,
  faults: readonly ImposedFault[],
  state: CycleState,
  lineV: number,
): TrueReadings {
  const k = compressorConstants;
  const deficit = levelOf(faults, 'runCapacitorWeak');
  const powerFactor = k.powerFactorFrac.value * (1 - k.powerFactorDropPerDeficit.value * deficit);
  const compressorA = state.compression.powerW / (lineV * powerFactor);
  const fanA = unit.outdoorFanW / (lineV * fanConstants.outdoorFanPowerFactorFrac.value);
  const ratedUf = unit.spec.compressorCapUf ?? DEFAULT_CAP_UF.compressor;
  return {
    lineV,
    compressorA,
    outdoorFanA: fanA,
    outdoorUnitA: compressorA + fanA,
    powerFactorFrac: powerFactor,
    outdoorUnitW: state.compression.powerW + unit.outdoorFanW,
    compressorCapRatedUf: ratedUf,
    compressorCapUf: ratedUf * (1 - deficit),
    fanCapRatedUf: DEFAULT_CAP_UF.fan,
    fanCapUf: DEFAULT_CAP_UF.fan,
  };
}

/** Electric heat: a share of it on while the compressor runs, and the airflow test with the strips alone. */
function electricHeatReadings(
  unit: SimulatedUnit,
  conditions: Conditions,
  faults: readonly ImposedFault[],
  lineV: number,
): TrueReadings {
  const stripKw = unit.spec.electricHeatKw;
  if (stripKw === undefined || stripKw === 0) return {};
  const side = airSide(unit.spec, unit.indoorCfm, faults);
  const back = returnAir(conditions, barometerPsia(conditions.altitudeFt ?? 0));
  const watts = stripW(unit, faults, lineV);
  const riseF = ((watts + side.blowerW) * BTUH_PER_W) / (side.cfm * 60 * back.lbPerFt3 * back.btuPerLbF);
  return {
    stripKw,
    stripV: lineV,
    stripA: watts / lineV,
    heatRiseReturnF: conditions.returnF,
    heatRiseSupplyF: conditions.returnF + riseF,
    heatRiseV: lineV,
    heatRiseA: watts / lineV,
  };
}

function stripW(unit: SimulatedUnit, faults: readonly ImposedFault[], lineV: number): number {
  const working = 1 - levelOf(faults, 'supplementaryHeatFault');
  return (unit.spec.electricHeatKw ?? 0) * 1000 * working * (lineV / ratingPoint.stripRatedV.value) ** 2;
}
