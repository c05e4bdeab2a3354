import { findRoot } from '../../lib/math/brent';
import { invariant } from '../../lib/math/invariant';
import type { Circuit, Operation, SimulatedUnit } from './circuit';
import { compress } from './compressor';
import { type CondenserInput, condense } from './condenser';
import { chargeConstants, coilConstants, meteringConstants } from './constants';
import { cycleState } from './cycle-state';
import { type EvaporatorInput, evaporate } from './evaporator';
import type { Fluid } from './fluid';
import type { Metering } from './metering';
import type { UnitSpec } from './unit-spec';

/** A mode's rating point: what the healthy unit is to read there. */
export type Anchors = {
  readonly evaporatingF: number;
  readonly condensingMeanF: number;
  readonly suctionSuperheatFd: number;
  readonly subcoolingFd: number;
};

/** Dew temperature of the condensing side for a mean of dew and bubble. */
export function condensingDewF(fluid: Fluid, meanF: number): number {
  const root = findRoot(
    (dew) => (dew + fluid.bubbleF(fluid.dewPsia(dew))) / 2 - meanF,
    meanF - 1,
    meanF + 12,
    1e-6,
  );
  invariant(root.kind === 'root', `no condensing temperature with mean ${meanF} F`);
  return root.x;
}

/** What a unit has before its circuits are sized. */
export type Common = Omit<SimulatedUnit, 'cooling' | 'heating'>;

/** Coils, metering device and charge of one mode, so that the healthy unit meets the anchors at the rating point. */
export function sizeCircuit(
  common: Common,
  mode: Circuit['mode'],
  anchors: Anchors,
  operation: Operation,
): Circuit {
  const { fluid, spec, compressor } = common;
  const cooling = mode === 'cooling';
  const suctionPsia = fluid.dewPsia(anchors.evaporatingF);
  const condensingF = condensingDewF(fluid, anchors.condensingMeanF);
  const dischargePsia = fluid.dewPsia(condensingF);
  const suctionF = anchors.evaporatingF + anchors.suctionSuperheatFd;
  const suctionBtuLb = fluid.vapour(suctionPsia, suctionF).enthalpyBtuLb;
  const run = compress(compressor, fluid, suctionPsia, suctionBtuLb, dischargePsia);
  const flowLbHr = run.flowLbHr;
  const liquidF = fluid.bubbleF(dischargePsia) - anchors.subcoolingFd;
  const liquidBtuLb = fluid.liquidBtuLb(liquidF);
  const outletBtuLb = cooling
    ? outletBeforeLine(fluid, suctionPsia, suctionBtuLb, flowLbHr, operation.outdoorAir.airF)
    : suctionBtuLb;
  const evaporator = sizeEvaporator(
    {
      coil: {
        boilingUaBtuhF: 1,
        bypassFrac: (cooling ? coilConstants.bypassFrac : coilConstants.outdoorBypassFrac).value,
        ratedCfm: cooling ? common.indoorCfm : common.outdoorCfm,
      },
      fluid,
      evaporatingPsia: suctionPsia,
      flowLbHr,
      inletBtuLb: liquidBtuLb,
      air: cooling ? operation.returnAir : operation.outdoorAir,
      cfm: cooling ? operation.indoorCfm : operation.outdoorCfm,
      cleanFrac: 1,
    },
    outletBtuLb,
  );
  const gasF = fluid.vapourAtEnthalpy(dischargePsia, run.dischargeBtuLb).vapourF;
  const gasLineLoss = cooling
    ? 0
    : coilConstants.hotGasLineUaBtuhF.value * (gasF - operation.outdoorAir.airF);
  const condenser = sizeCondenser(
    {
      coil: { condensingUaBtuhF: 1, ratedCfm: cooling ? common.outdoorCfm : common.indoorCfm },
      fluid,
      condensingPsia: dischargePsia,
      airInRefrigerantFrac: 0,
      flowLbHr,
      inletBtuLb: run.dischargeBtuLb - gasLineLoss / flowLbHr,
      air: cooling ? operation.outdoorAir : operation.returnAir,
      cfm: cooling ? operation.outdoorCfm : operation.indoorCfm,
      cleanFrac: 1,
    },
    liquidBtuLb,
  );
  const outdoorFt3 = chargeConstants.outdoorCoilFt3PerTon.value * spec.nominalTons;
  const indoorFt3 = chargeConstants.indoorCoilFt3PerTon.value * spec.nominalTons;
  const trial: Circuit = {
    mode,
    evaporator,
    condenser,
    metering: meteringOfSize(
      spec,
      1,
      fluid.vapourAtEnthalpy(suctionPsia, outletBtuLb).vapourF - anchors.evaporatingF,
    ),
    volumes: {
      condenserFt3: cooling ? outdoorFt3 : indoorFt3,
      evaporatorFt3: cooling ? indoorFt3 : outdoorFt3,
      liquidLineFt3: chargeConstants.liquidLineFt3.value,
    },
    chargeLb: 1,
    ratedFlowLbHr: flowLbHr,
    ratedPressureDifferencePsi: dischargePsia - suctionPsia,
    ratedPowerW: run.powerW,
    ratedCapacityBtuh: cooling
      ? flowLbHr * (outletBtuLb - liquidBtuLb)
      : flowLbHr * (run.dischargeBtuLb - liquidBtuLb) - gasLineLoss,
    ratedUnknowns: {
      evaporatingF: anchors.evaporatingF,
      condensingF,
      suctionOverVapourBtuLb: suctionBtuLb - fluid.saturatedAt(suctionPsia).vapourBtuLb,
    },
    ratedOperation: operation,
  };
  const state = cycleState({ ...common, cooling: trial }, trial, operation, trial.ratedUnknowns);
  const size = Math.exp(-state.misses[1]);
  return { ...trial, metering: scaled(trial.metering, size), chargeLb: state.chargeLb };
}

/** Enthalpy of the gas before the suction line warmed it: the gain depends on the gas itself, so two rounds. */
function outletBeforeLine(
  fluid: Fluid,
  psia: number,
  suctionBtuLb: number,
  flowLbHr: number,
  outdoorF: number,
): number {
  const ua = coilConstants.suctionLineUaBtuhF.value;
  const root = findRoot(
    (h) => h + (ua * (outdoorF - fluid.vapourAtEnthalpy(psia, h).vapourF)) / flowLbHr - suctionBtuLb,
    fluid.saturatedAt(psia).vapourBtuLb,
    suctionBtuLb,
    1e-8,
  );
  invariant(root.kind === 'root', 'no evaporator outlet state before the suction line');
  return root.x;
}

function sizeEvaporator(input: EvaporatorInput, outletBtuLb: number): EvaporatorInput['coil'] {
  const withUa = (ua: number): EvaporatorInput['coil'] => ({ ...input.coil, boilingUaBtuhF: ua });
  const root = findRoot(
    (lnUa) => evaporate({ ...input, coil: withUa(Math.exp(lnUa)) }).outletBtuLb - outletBtuLb,
    Math.log(300),
    Math.log(400_000),
    1e-10,
  );
  invariant(root.kind === 'root', 'the evaporator cannot meet its anchors: too little air for the heat');
  return withUa(Math.exp(root.x));
}

function sizeCondenser(input: CondenserInput, outletBtuLb: number): CondenserInput['coil'] {
  const withUa = (ua: number): CondenserInput['coil'] => ({ ...input.coil, condensingUaBtuhF: ua });
  const root = findRoot(
    (lnUa) => condense({ ...input, coil: withUa(Math.exp(lnUa)) }).outletBtuLb - outletBtuLb,
    Math.log(300),
    Math.log(400_000),
    1e-10,
  );
  invariant(root.kind === 'root', 'the condenser cannot meet its anchors: too little air for the heat');
  return withUa(Math.exp(root.x));
}

function meteringOfSize(spec: UnitSpec, size: number, superheatFd: number): Metering {
  if (spec.metering === 'fixedOrifice') return { kind: 'fixedOrifice', size };
  const closedFd = meteringConstants.txvClosedSuperheatFd.value;
  const reserve = meteringConstants.txvOversizeRatio.value;
  return {
    kind: 'txv',
    closedFd,
    openFd: closedFd + (superheatFd - closedFd) * reserve,
    fullSize: size * reserve,
  };
}

function scaled(metering: Metering, by: number): Metering {
  return metering.kind === 'fixedOrifice'
    ? { ...metering, size: metering.size * by }
    : { ...metering, fullSize: metering.fullSize * by };
}
