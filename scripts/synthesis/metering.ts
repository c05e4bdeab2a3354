import { twoPhaseDensity } from './charge';
import { meteringConstants as k } from './constants';
import type { Fluid } from './fluid';

/** Fixed orifice, or a thermostatic valve that opens with the evaporator's superheat. */
export type Metering =
  | { readonly kind: 'fixedOrifice'; readonly size: number }
  | {
      readonly kind: 'txv';
      readonly fullSize: number;
      readonly closedFd: number;
      readonly openFd: number;
    };

/** Liquid on its way to the metering device. */
export type Liquid = {
  /** Pressure in front of the device, after any restriction [psia]. */
  readonly psia: number;
  readonly enthalpyBtuLb: number;
  /** Share of air in the pressure; left out = none. */
  readonly airInRefrigerantFrac?: number;
};

/** What a restriction upstream leaves in front of the device. */
export type Entering = {
  /** Temperature in front of the device: the liquid's, or saturation once it has flashed. */
  readonly liquidF: number;
  readonly qualityFrac: number;
  readonly densityLbFt3: number;
  /** Saturation pressure of the entering liquid: the throat cannot fall much below it. */
  readonly flashPsia: number;
};

/**
 * Liquid, or the mixture a flash or an overfilled condenser leaves, in front of the device.
 *
 * Where gas leaves the condenser with the liquid, refrigerant boils at its own share of the pressure (Dalton), not at
 * the whole of it: air pushes the liquid on without condensing the gas in it.
 */
export function enteringState(fluid: Fluid, liquid: Liquid): Entering {
  const ownPsia = liquid.psia * (1 - (liquid.airInRefrigerantFrac ?? 0));
  const edge = fluid.saturatedAt(ownPsia);
  if (liquid.enthalpyBtuLb <= edge.liquidBtuLb) {
    const liquidF = fluid.liquidF(liquid.enthalpyBtuLb);
    return {
      liquidF,
      qualityFrac: 0,
      densityLbFt3: fluid.liquidLbFt3(liquidF),
      flashPsia: fluid.bubblePsia(liquidF),
    };
  }
  const qualityFrac = (liquid.enthalpyBtuLb - edge.liquidBtuLb) / (edge.vapourBtuLb - edge.liquidBtuLb);
  return {
    liquidF: edge.bubbleF,
    qualityFrac,
    densityLbFt3: twoPhaseDensity(edge, qualityFrac),
    flashPsia: ownPsia,
  };
}

/**
 * Refrigerant flow through the metering device.
 *
 * @param metering device; sizes in lb/h per root of (lb/ft3 times psi)
 * @param entering state in front of the device
 * @param upstreamPsia pressure in front [psia]
 * @param evaporatorPsia pressure behind [psia]
 * @param superheatFd superheat at the evaporator's outlet, which moves the valve
 * @param blockedFrac share of the opening that is blocked
 * @returns flow [lb/h]
 * The fixed orifice is choked: its throat stays at a fixed share of the saturation pressure of the entering liquid.
 * Source: orifice equation; choking as in short-tube tests, status memory
 * Check: tests/synthesis/metering.test.ts
 */
export function meteredFlow(
  metering: Metering,
  entering: Entering,
  upstreamPsia: number,
  evaporatorPsia: number,
  superheatFd: number,
  blockedFrac = 0,
): number {
  const throatPsia = Math.max(
    evaporatorPsia,
    metering.kind === 'fixedOrifice' ? k.chokeFrac.value * entering.flashPsia : 0,
  );
  const drive = Math.sqrt(entering.densityLbFt3 * Math.max(0, upstreamPsia - throatPsia));
  return openSize(metering, superheatFd) * (1 - blockedFrac) * drive;
}

/** How far the device is open [lb/h per root of (lb/ft3 times psi)]. */
export function openSize(metering: Metering, superheatFd: number): number {
  if (metering.kind === 'fixedOrifice') return metering.size;
  const { closedFd, openFd, fullSize } = metering;
  const opened = (superheatFd - closedFd) / (openFd - closedFd);
  return fullSize * Math.min(1, Math.max(0.02, opened));
}
