import { coilConstants as k } from './constants';
import { counterflowEffectiveness } from './evaporator';
import type { Fluid, Saturated } from './fluid';
import type { Air } from './moist-air';

/** A coil that condenses refrigerant, as a whole, at its rated airflow. */
export type CondenserCoil = {
  readonly condensingUaBtuhF: number;
  readonly ratedCfm: number;
};

export type CondenserInput = {
  readonly coil: CondenserCoil;
  readonly fluid: Fluid;
  /** Pressure of the refrigerant itself, without air in it [psia]. */
  readonly condensingPsia: number;
  /** Share of air in the total pressure. */
  readonly airInRefrigerantFrac: number;
  readonly flowLbHr: number;
  readonly inletBtuLb: number;
  readonly air: Air;
  readonly cfm: number;
  readonly cleanFrac: number;
};

export type CondenserState = {
  readonly outletBtuLb: number;
  readonly heatBtuh: number;
  /** Shares of the coil: gas, condensing, liquid; they add to 1. */
  readonly gasFrac: number;
  readonly condensingFrac: number;
  readonly liquidFrac: number;
  readonly leavingF: number;
};

/**
 * Steady state of a condenser with a gas, a condensing and a liquid zone, each in its share of the air.
 * What the first two zones leave of the coil holds liquid and subcools it; if they need more than the coil, gas
 * leaves with the liquid.
 * Source: moving-boundary method with effectiveness-NTU, textbook, status memory
 * Check: tests/synthesis/coils.test.ts
 */
export function condense(input: CondenserInput): CondenserState {
  const { fluid, air, flowLbHr } = input;
  const edge = fluid.saturatedAt(input.condensingPsia);
  const ua = workingUa(input);
  const airBtuhF = input.cfm * 60 * air.lbPerFt3 * air.btuPerLbF;
  const gasHeat = Math.max(0, flowLbHr * (input.inletBtuLb - edge.vapourBtuLb));
  const gasFrac = Math.min(
    0.9,
    gasHeat / wholeCoilHeat(ua * k.desuperheatUaRatio.value, airBtuhF, gasMeanF(input, edge) - air.airF),
  );
  const meanF = (edge.dewF + edge.bubbleF) / 2;
  const latentHeat = flowLbHr * (Math.min(input.inletBtuLb, edge.vapourBtuLb) - edge.liquidBtuLb);
  const whole = wholeCoilHeat(ua, airBtuhF, meanF - air.airF);
  const wanted = latentHeat / whole;
  const condensingFrac = Math.min(1 - gasFrac, wanted);
  const liquidFrac = 1 - gasFrac - condensingFrac;
  const outletBtuLb =
    liquidFrac > 0
      ? edge.liquidBtuLb - liquidCooling(input, edge, ua, airBtuhF, liquidFrac)
      : edge.liquidBtuLb + ((wanted - condensingFrac) * whole) / flowLbHr;
  const heatBtuh = flowLbHr * (input.inletBtuLb - outletBtuLb);
  return {
    outletBtuLb,
    heatBtuh,
    gasFrac,
    condensingFrac,
    liquidFrac,
    leavingF: air.airF + heatBtuh / airBtuhF,
  };
}

function workingUa(input: CondenserInput): number {
  const speed = (input.cfm / input.coil.ratedCfm) ** k.airExponent.value;
  const airShare = k.condenserAirResistanceFrac.value;
  const byAirflow = 1 / (airShare / speed + 1 - airShare);
  const byAir = Math.max(0.2, 1 - k.nonCondensableUaLoss.value * input.airInRefrigerantFrac);
  return input.coil.condensingUaBtuhF * byAirflow * byAir * input.cleanFrac;
}

function wholeCoilHeat(uaBtuhF: number, airBtuhF: number, differenceFd: number): number {
  return airBtuhF * (1 - Math.exp(-uaBtuhF / airBtuhF)) * Math.max(0.1, differenceFd);
}

function gasMeanF(input: CondenserInput, edge: Saturated): number {
  if (input.inletBtuLb <= edge.vapourBtuLb) return edge.dewF;
  return (edge.dewF + input.fluid.vapourAtEnthalpy(input.condensingPsia, input.inletBtuLb).vapourF) / 2;
}

/** Enthalpy the liquid loses in its zone [Btu/lb]. */
function liquidCooling(
  input: CondenserInput,
  edge: Saturated,
  ua: number,
  airBtuhF: number,
  liquidFrac: number,
): number {
  const { fluid, air, flowLbHr } = input;
  if (edge.bubbleF <= air.airF) return 0;
  const coldest = edge.liquidBtuLb - fluid.liquidBtuLb(air.airF);
  const liquidBtuhF = (flowLbHr * coldest) / (edge.bubbleF - air.airF);
  const share = counterflowEffectiveness(
    ua * k.subcoolUaRatio.value * liquidFrac,
    liquidBtuhF,
    airBtuhF * liquidFrac,
  );
  return share * coldest;
}
