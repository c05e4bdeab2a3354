import { findRoot } from '../../lib/math/brent';
import { invariant } from '../../lib/math/invariant';
import { coilConstants as k } from './constants';
import type { Fluid } from './fluid';
import { type Air, latentBtuPerLb, saturatedHumidityRatio } from './moist-air';

/** A coil that boils refrigerant, as a whole, at its rated airflow. */
export type EvaporatorCoil = {
  /** Refrigerant side and metal, boiling [Btu/(h F)]. */
  readonly boilingUaBtuhF: number;
  /** Air bypass at the rated airflow. */
  readonly bypassFrac: number;
  readonly ratedCfm: number;
};

export type EvaporatorInput = {
  readonly coil: EvaporatorCoil;
  readonly fluid: Fluid;
  readonly evaporatingPsia: number;
  readonly flowLbHr: number;
  readonly inletBtuLb: number;
  readonly air: Air;
  readonly cfm: number;
  /** Share of the coil's surface that still works. */
  readonly cleanFrac: number;
};

export type EvaporatorState = {
  readonly outletBtuLb: number;
  readonly heatBtuh: number;
  /** Share of the coil in which refrigerant boils; 1 when liquid leaves it. */
  readonly boilingFrac: number;
  readonly inletQualityFrac: number;
  readonly leavingF: number;
  readonly leavingHumidityRatio: number;
};

/**
 * Steady state of an evaporator whose circuits, unevenly fed, have a boiling and a superheating zone, each in its
 * share of the air.
 *
 * The boiling zone's surface takes one temperature between refrigerant and air; air is cooled (and dried) towards
 * it with a bypass. The superheating zone is a dry counterflow exchanger.
 * Source: apparatus-dew-point method and effectiveness-NTU, textbook, status memory
 * Check: tests/synthesis/coils.test.ts
 */
export function evaporate(input: EvaporatorInput): EvaporatorState {
  const { coil, fluid, air, flowLbHr } = input;
  const edge = fluid.saturatedAt(input.evaporatingPsia);
  const latent = edge.vapourBtuLb - edge.liquidBtuLb;
  const inletQualityFrac = Math.max(0, (input.inletBtuLb - edge.liquidBtuLb) / latent);
  const meanBoilingF = edge.dewF - ((edge.dewF - edge.bubbleF) * (1 - inletQualityFrac)) / 2;
  const airLbHr = input.cfm * 60 * air.lbPerFt3;
  const speed = (input.cfm / coil.ratedCfm) ** (k.airExponent.value - 1);
  const bypass = Math.exp(Math.log(coil.bypassFrac) * speed * input.cleanFrac);
  const whole = boilingZone(coil.boilingUaBtuhF * input.cleanFrac, meanBoilingF, air, airLbHr, bypass);
  const circuits = CIRCUIT_SPREAD.map((spread) => {
    const share = 1 + spread * k.maldistributionFrac.value;
    const needed = flowLbHr * share * (edge.vapourBtuLb - input.inletBtuLb);
    const boilingFrac = Math.min(1, Math.max(0.02, needed / Math.max(1, whole.heatBtuh)));
    const boilingHeat = boilingFrac < 1 ? needed : whole.heatBtuh;
    return { share, boilingFrac, boilingHeat };
  });
  const gas = warmingGas(input, edge.dewF, edge.vapourBtuLb);
  const dryHeats = circuits.map((c) => superheatZone(input, gas, c.share, 1 - c.boilingFrac, airLbHr));
  const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;
  const boilingFrac = mean(circuits.map((c) => c.boilingFrac));
  const superheating = mean(dryHeats);
  const heatBtuh = mean(circuits.map((c) => c.boilingHeat)) + superheating;
  const dry = 1 - boilingFrac;
  const dryAirF = dry > 0 ? air.airF - superheating / (dry * airLbHr * air.btuPerLbF) : air.airF;
  return {
    outletBtuLb: input.inletBtuLb + heatBtuh / flowLbHr,
    heatBtuh,
    boilingFrac,
    inletQualityFrac,
    leavingF: boilingFrac * whole.leavingF + dry * dryAirF,
    leavingHumidityRatio: boilingFrac * whole.leavingHumidityRatio + dry * air.humidityRatio,
  };
}

/** Three groups of circuits: fed less, evenly, more. */
const CIRCUIT_SPREAD = [-1, 0, 1] as const;

/** Heat the whole coil would take if refrigerant boiled everywhere in it. */
function boilingZone(uaBtuhF: number, boilingF: number, air: Air, airLbHr: number, bypass: number) {
  const touched = 1 - bypass;
  const latentAt = (surfaceF: number): number =>
    Math.max(0, air.humidityRatio - saturatedHumidityRatio(surfaceF, air.psia)) * latentBtuPerLb;
  const airHeat = (surfaceF: number): number =>
    airLbHr * touched * (air.btuPerLbF * (air.airF - surfaceF) + latentAt(surfaceF));
  if (boilingF >= air.airF - 0.01) {
    return { heatBtuh: 0, leavingF: air.airF, leavingHumidityRatio: air.humidityRatio };
  }
  const root = findRoot((s) => uaBtuhF * (s - boilingF) - airHeat(s), boilingF, air.airF, 1e-6);
  invariant(root.kind === 'root', `no coil surface temperature between ${boilingF} and ${air.airF} F`);
  const dried = touched * (latentAt(root.x) / latentBtuPerLb);
  return {
    heatBtuh: airHeat(root.x),
    leavingF: root.x + bypass * (air.airF - root.x),
    leavingHumidityRatio: air.humidityRatio - dried,
  };
}

/** Gas warmed to the temperature of the air: enthalpy it can take, and its heat capacity per pound. */
type WarmingGas = { readonly mostBtuLb: number; readonly btuPerLbF: number };

function warmingGas(input: EvaporatorInput, dewF: number, vapourBtuLb: number): WarmingGas | undefined {
  if (input.air.airF <= dewF + 0.01) return undefined;
  const mostBtuLb = input.fluid.vapour(input.evaporatingPsia, input.air.airF).enthalpyBtuLb - vapourBtuLb;
  return { mostBtuLb, btuPerLbF: mostBtuLb / (input.air.airF - dewF) };
}

/** Heat taken by the gas in the dry end of a circuit, as if the whole coil were such circuits [Btu/h]. */
function superheatZone(
  input: EvaporatorInput,
  gas: WarmingGas | undefined,
  flowShare: number,
  zoneFrac: number,
  airLbHr: number,
): number {
  if (gas === undefined || zoneFrac <= 0) return 0;
  const flow = input.flowLbHr * flowShare;
  const airBtuhF = zoneFrac * airLbHr * input.air.btuPerLbF;
  const ua = zoneFrac * input.coil.boilingUaBtuhF * input.cleanFrac * k.superheatUaRatio.value;
  return counterflowEffectiveness(ua, flow * gas.btuPerLbF, airBtuhF) * flow * gas.mostBtuLb;
}

/** Share of the first stream's greatest possible temperature change that is reached in counterflow. */
export function counterflowEffectiveness(uaBtuhF: number, streamBtuhF: number, otherBtuhF: number): number {
  if (uaBtuhF <= 0 || otherBtuhF <= 0) return 0;
  const ratio = streamBtuhF / otherBtuhF;
  const ntu = uaBtuhF / streamBtuhF;
  if (Math.abs(ratio - 1) < 1e-6) return ntu / (1 + ntu);
  const decay = Math.exp(-ntu * (1 - ratio));
  return (1 - decay) / (1 - ratio * decay);
}
