import { chargeHeld } from './charge';
import type { Circuit, Operation, SimulatedUnit, Unknowns } from './circuit';
import { type Compression, compress } from './compressor';
import { type CondenserState, condense } from './condenser';
import { chargeConstants, coilConstants } from './constants';
import { type EvaporatorState, evaporate } from './evaporator';
import type { Saturated } from './fluid';
import { type Entering, enteringState, meteredFlow } from './metering';

/** Everything that follows from a guess of the unknowns, and how far the guess is from a steady state. */
export type CycleState = {
  readonly unknowns: Unknowns;
  readonly suctionPsia: number;
  readonly dischargePsia: number;
  readonly suctionBtuLb: number;
  /** Of the gas on its way back, before the reversing valve adds what leaks through it. */
  readonly returnedBtuLb: number;
  readonly evaporatorFlowLbHr: number;
  readonly compression: Compression;
  readonly condenser: CondenserState;
  readonly evaporator: EvaporatorState;
  /** Heat taken up by the suction line (cooling) and lost by the hot-gas line (heating). */
  readonly lineGainBtuh: number;
  readonly gasLineLossBtuh: number;
  readonly entering: Entering;
  readonly chargeLb: number;
  /** Suction enthalpy [per 10 Btu/lb], metered over pumped flow [log], charge held over charge put in [log]. */
  readonly misses: readonly [number, number, number];
};

const ENTHALPY_SCALE_BTU_LB = 10;

/**
 * One pass round the circuit from a guess.
 *
 * @param unit healthy unit
 * @param circuit its circuit in the mode
 * @param operation conditions and faults
 * @param unknowns guess
 * @returns state and misses; all misses zero = steady state
 * @throws invariant when the guess leaves the property range
 * Check: tests/synthesis/cycle.test.ts
 */
export function cycleState(
  unit: SimulatedUnit,
  circuit: Circuit,
  operation: Operation,
  unknowns: Unknowns,
): CycleState {
  const { fluid } = unit;
  const cooling = circuit.mode === 'cooling';
  const low = fluid.saturatedAt(fluid.dewPsia(unknowns.evaporatingF));
  const high = fluid.saturatedAt(fluid.dewPsia(unknowns.condensingF));
  const dischargePsia = high.psia + operation.airInRefrigerantPsi;
  const suctionBtuLb = low.vapourBtuLb + unknowns.suctionOverVapourBtuLb;
  const compression = compress(unit.compressor, fluid, low.psia, suctionBtuLb, dischargePsia, operation);
  const flow = compression.flowLbHr * (1 - operation.reversingLeakFrac);
  const gasLineLossBtuh = cooling ? 0 : hotGasLoss(unit, dischargePsia, compression, operation);
  const condenser = condense({
    coil: circuit.condenser,
    fluid,
    condensingPsia: high.psia,
    airInRefrigerantFrac: operation.airInRefrigerantPsi / dischargePsia,
    flowLbHr: flow,
    inletBtuLb: compression.dischargeBtuLb - gasLineLossBtuh / flow,
    air: cooling ? operation.outdoorAir : operation.returnAir,
    cfm: cooling ? operation.outdoorCfm : operation.indoorCfm,
    cleanFrac: cooling ? operation.outdoorCleanFrac : operation.indoorCleanFrac,
  });
  const dropPsi = operation.liquidDropPsi * (flow / circuit.ratedFlowLbHr) ** 2;
  const upstreamPsia = Math.max(low.psia + 1, dischargePsia - dropPsi);
  const entering = enteringState(fluid, {
    psia: upstreamPsia,
    enthalpyBtuLb: condenser.outletBtuLb,
    airInRefrigerantFrac: operation.airInRefrigerantPsi / dischargePsia,
  });
  const evaporator = evaporate({
    coil: circuit.evaporator,
    fluid,
    evaporatingPsia: low.psia,
    flowLbHr: flow,
    inletBtuLb: condenser.outletBtuLb,
    air: cooling ? operation.returnAir : operation.outdoorAir,
    cfm: cooling ? operation.indoorCfm : operation.outdoorCfm,
    cleanFrac: cooling ? operation.indoorCleanFrac : operation.outdoorCleanFrac,
  });
  const superheatFd = superheatOf(unit, low.psia, evaporator.outletBtuLb, unknowns.evaporatingF);
  const metered = meteredFlow(
    circuit.metering,
    entering,
    upstreamPsia,
    low.psia,
    superheatFd,
    operation.blockedFrac,
  );
  const lineGainBtuh = cooling
    ? coilConstants.suctionLineUaBtuhF.value *
      (operation.outdoorAir.airF - unknowns.evaporatingF - Math.max(0, superheatFd))
    : 0;
  const returned = evaporator.outletBtuLb + lineGainBtuh / flow;
  const mixed =
    (1 - operation.reversingLeakFrac) * returned + operation.reversingLeakFrac * compression.dischargeBtuLb;
  const liquidOutF = fluid.liquidF(Math.min(condenser.outletBtuLb, high.liquidBtuLb));
  const chargeLb =
    chargeHeld(
      circuit.volumes,
      condenser,
      high,
      evaporator,
      low,
      Math.min(entering.densityLbFt3, fluid.liquidLbFt3(liquidOutF)),
    ) + inAccumulatorLb(unit, low, mixed);
  return {
    unknowns,
    suctionPsia: low.psia,
    dischargePsia,
    suctionBtuLb,
    returnedBtuLb: returned,
    evaporatorFlowLbHr: flow,
    compression,
    condenser,
    evaporator,
    lineGainBtuh,
    gasLineLossBtuh,
    entering,
    chargeLb,
    misses: [
      (mixed - suctionBtuLb) / ENTHALPY_SCALE_BTU_LB,
      Math.log(Math.max(1e-6, metered) / flow),
      Math.log(chargeLb / (circuit.chargeLb * operation.chargeFrac)),
    ],
  };
}

/** Superheat at the evaporator's outlet; negative, scaled by specific heat, when liquid leaves it. */
function superheatOf(unit: SimulatedUnit, psia: number, outletBtuLb: number, dewF: number): number {
  const over = outletBtuLb - unit.fluid.saturatedAt(psia).vapourBtuLb;
  return over <= 0 ? over / WET_CP_BTU_LBF : unit.fluid.vapourAtEnthalpy(psia, outletBtuLb).vapourF - dewF;
}

function hotGasLoss(
  unit: SimulatedUnit,
  dischargePsia: number,
  compression: Compression,
  operation: Operation,
): number {
  const dry = compression.dischargeBtuLb > unit.fluid.saturatedAt(dischargePsia).vapourBtuLb;
  const gasF = dry
    ? unit.fluid.vapourAtEnthalpy(dischargePsia, compression.dischargeBtuLb).vapourF
    : unit.fluid.dewF(dischargePsia);
  return coilConstants.hotGasLineUaBtuhF.value * (gasF - operation.outdoorAir.airF);
}

/** Liquid kept back in front of the compressor; air conditioners have no accumulator. */
function inAccumulatorLb(unit: SimulatedUnit, low: Saturated, enteringBtuLb: number): number {
  if (unit.spec.kind === 'airConditioner') return 0;
  const wetness = (low.vapourBtuLb - enteringBtuLb) / (low.vapourBtuLb - low.liquidBtuLb);
  return Math.max(0, wetness) * chargeConstants.accumulatorLbPerWetness.value;
}

/** Stands in for a specific heat where there is no superheat, so that the valve still closes further. */
const WET_CP_BTU_LBF = 0.2;
