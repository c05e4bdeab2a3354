import type { Circuit, Operation, SimulatedUnit } from './circuit';
import { BTUH_PER_W, type Compressor, compress, volumetricEfficiency } from './compressor';
import { anchorOfClass, coilConstants, compressorConstants, fanConstants, ratingPoint } from './constants';
import { type Fluid, fluidOf } from './fluid';
import { airFromHumidity, airFromWetBulb, barometerPsia } from './moist-air';
import { type Anchors, condensingDewF, sizeCircuit } from './size-circuit';
import type { UnitSpec } from './unit-spec';

const BTUH_PER_TON = 12_000;
const RATING_OUTDOOR_HUMIDITY_FRAC = 0.73;
const RATING_INDOOR_HUMIDITY_FRAC = 0.4;

/**
 * Sizes a healthy unit so that it meets its anchors at the rating points.
 *
 * @param spec unit as its plate describes it
 * @returns unit ready for `steadyState`
 * @throws invariant if the anchors cannot be met together (air leaving colder than the coil)
 * Source: data/class-anchors.json, data/cycle-constants.json
 * Check: tests/synthesis/calibrate.test.ts
 */
export function calibrateUnit(spec: UnitSpec): SimulatedUnit {
  const fluid = fluidOf(spec.refrigerant);
  const indoorCfm = (spec.airflowCfmPerTon ?? ratingPoint.airflowCfmPerTon.value) * spec.nominalTons;
  const outdoorCfm = anchorOfClass('outdoorCfmPerTon', spec.seer) * spec.nominalTons;
  const netBtuh = spec.cooling95Btuh ?? BTUH_PER_TON * spec.nominalTons;
  const blowerW = fanConstants.ratedBlowerWPerCfm.value * indoorCfm;
  const systemW = netBtuh / (spec.eerBtuPerWh ?? anchorOfClass('eerBtuPerWh', spec.seer));
  const outdoorFanW = fanConstants.outdoorFanShareFrac.value * (systemW - blowerW);
  const anchors = coolingAnchors(spec, fluid);
  const operation = ratingOperation('cooling', indoorCfm, outdoorCfm);
  const grossBtuh = netBtuh + blowerW * BTUH_PER_W;
  const compressor = sizeCompressor(spec, fluid, anchors, grossBtuh, systemW - blowerW - outdoorFanW);
  const common = { spec, fluid, compressor, indoorCfm, outdoorCfm, outdoorFanW };
  const cooling = sizeCircuit(common, 'cooling', anchors, operation);
  if (spec.kind === 'airConditioner') return { ...common, cooling };
  const heating = sizeCircuit(
    common,
    'heating',
    heatingAnchors(spec),
    ratingOperation('heating', indoorCfm, outdoorCfm),
  );
  return { ...common, cooling, heating };
}

function coolingAnchors(spec: UnitSpec, fluid: Fluid): Anchors {
  const evaporatingF = anchorOfClass('evaporatingF', spec.seer);
  const gain = lineRiseGuessFd(spec, fluid, evaporatingF);
  return {
    evaporatingF,
    condensingMeanF: ratingPoint.coolingOutdoorF.value + anchorOfClass('condensingOverAmbientFd', spec.seer),
    suctionSuperheatFd:
      spec.metering === 'txv' ? ratingPoint.txvSuperheatFd.value + gain : ratingPoint.fixedSuperheatFd.value,
    subcoolingFd:
      spec.nameplateSubcoolingFd ??
      (spec.metering === 'txv' ? ratingPoint.txvSubcoolingFd : ratingPoint.fixedSubcoolingFd).value,
  };
}

function heatingAnchors(spec: UnitSpec): Anchors {
  return {
    evaporatingF:
      ratingPoint.heatingOutdoorF.value - anchorOfClass('heatingEvaporatingBelowOutdoorFd', spec.seer),
    condensingMeanF:
      ratingPoint.heatingReturnF.value + anchorOfClass('heatingCondensingAboveReturnFd', spec.seer),
    suctionSuperheatFd: ratingPoint.heatingSuperheatFd.value,
    subcoolingFd: ratingPoint.heatingSubcoolingFd.value,
  };
}

/** Warming of the gas between the evaporator and a compressor some 25 ft away [F]; about 3 F for any size near 3 tons. */
function lineRiseGuessFd(spec: UnitSpec, fluid: Fluid, evaporatingF: number): number {
  const psia = fluid.dewPsia(evaporatingF);
  const from = fluid.saturatedAt(psia).vapourBtuLb;
  const perF = (fluid.vapour(psia, evaporatingF + 20).enthalpyBtuLb - from) / 20;
  const flow = (BTUH_PER_TON * spec.nominalTons) / (from - fluid.liquidBtuLb(100));
  const difference = ratingPoint.coolingOutdoorF.value - evaporatingF - ratingPoint.txvSuperheatFd.value;
  return (coilConstants.suctionLineUaBtuhF.value * difference) / (flow * perF);
}

function sizeCompressor(
  spec: UnitSpec,
  fluid: Fluid,
  anchors: Anchors,
  grossBtuh: number,
  powerW: number,
): Compressor {
  const suctionPsia = fluid.dewPsia(anchors.evaporatingF);
  const dischargePsia = fluid.dewPsia(condensingDewF(fluid, anchors.condensingMeanF));
  const suction = fluid.vapour(suctionPsia, anchors.evaporatingF + anchors.suctionSuperheatFd);
  const liquid = fluid.liquidBtuLb(fluid.bubbleF(dischargePsia) - anchors.subcoolingFd);
  // gas warmed in the suction line gives no useful cooling: flow * (suction - liquid) = gross + line gain
  const line =
    coilConstants.suctionLineUaBtuhF.value *
    (ratingPoint.coolingOutdoorF.value - anchors.evaporatingF - ratingPoint.txvSuperheatFd.value);
  const flow = (grossBtuh + line) / (suction.enthalpyBtuLb - liquid);
  const ratio = dischargePsia / suctionPsia;
  const displacementFt3Hr = flow / (suction.densityLbFt3 * volumetricEfficiency(spec.compressor, ratio));
  const onMap: Compressor = { kind: spec.compressor, displacementFt3Hr, efficiencyFactor: 1 };
  const mapW = compress(onMap, fluid, suctionPsia, suction.enthalpyBtuLb, dischargePsia).powerW;
  const k = compressorConstants;
  const efficiencyFactor = Math.min(
    k.efficiencyFactorHigh.value,
    Math.max(k.efficiencyFactorLow.value, mapW / powerW),
  );
  return { ...onMap, efficiencyFactor };
}

export function ratingOperation(mode: Circuit['mode'], indoorCfm: number, outdoorCfm: number): Operation {
  const psia = barometerPsia(0);
  const r = ratingPoint;
  const outdoorF = mode === 'cooling' ? r.coolingOutdoorF.value : r.heatingOutdoorF.value;
  return {
    outdoorAir: airFromHumidity(outdoorF, RATING_OUTDOOR_HUMIDITY_FRAC, psia),
    returnAir:
      mode === 'cooling'
        ? airFromWetBulb(r.coolingReturnF.value, r.coolingReturnWetBulbF.value, psia)
        : airFromHumidity(r.heatingReturnF.value, RATING_INDOOR_HUMIDITY_FRAC, psia),
    indoorCfm,
    outdoorCfm,
    indoorCleanFrac: 1,
    outdoorCleanFrac: 1,
    chargeFrac: 1,
    blockedFrac: 0,
    liquidDropPsi: 0,
    airInRefrigerantPsi: 0,
    valveLeakFrac: 0,
    reversingLeakFrac: 0,
    capDeficitFrac: 0,
  };
}
