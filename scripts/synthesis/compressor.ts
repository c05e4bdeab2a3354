import { interpolateLinear } from '../../lib/math/interpolate';
import { compressorConstants as k } from './constants';
import map from './data/compressor-map.json';
import { type Fluid, fluidOf } from './fluid';

/** The unit's compressor. */
export type Compressor = {
  readonly kind: 'scroll' | 'reciprocating';
  readonly displacementFt3Hr: number;
  /** Scale on the published efficiency curve. */
  readonly efficiencyFactor: number;
};

export type Compression = {
  /** Gas delivered to the high side, before any leak across the reversing valve [lb/h]. */
  readonly flowLbHr: number;
  readonly powerW: number;
  readonly dischargeBtuLb: number;
};

export type CompressorFaults = { readonly valveLeakFrac: number; readonly capDeficitFrac: number };

const NO_COMPRESSOR_FAULTS: CompressorFaults = { valveLeakFrac: 0, capDeficitFrac: 0 };

export const BTUH_PER_W = 3.412141633;

type EfficiencyCurve = { readonly ratios: readonly number[]; readonly values: readonly number[] };
let curve: EfficiencyCurve | undefined;

/**
 * Overall isentropic efficiency of a scroll compressor against pressure ratio.
 *
 * @param pressureRatio discharge over suction, absolute
 * @returns mean of the published map's points near that ratio; held beyond the map (1.5 to 7.6)
 * Source: data/compressor-map.json
 * Check: tests/synthesis/compressor.test.ts
 */
export function mapEfficiency(pressureRatio: number): number {
  curve ??= collapseMap();
  return interpolateLinear(curve.ratios, curve.values, pressureRatio).value;
}

/** Neighbouring points of the map averaged into one point of the curve. */
const GROUP = 4;

/** The map is a function of two temperatures; against pressure ratio its points fall within 0.04 of one curve. */
function collapseMap(): EfficiencyCurve {
  const fluid = fluidOf('R-410A');
  const points = map.evaporatingF.flatMap((evaporatingF, i) =>
    map.condensingF.map((condensingF, j) => ({
      ratio: fluid.dewPsia(condensingF) / fluid.dewPsia(evaporatingF),
      value: map.isentropicEfficiency[i]?.[j] ?? Number.NaN,
    })),
  );
  points.sort((a, b) => a.ratio - b.ratio);
  const edges = [points.slice(0, 1), points.slice(-1)];
  const inner = points.slice(1, -1);
  const groups = Array.from({ length: Math.ceil(inner.length / GROUP) }, (_, i) =>
    inner.slice(i * GROUP, (i + 1) * GROUP),
  );
  const ordered = [edges[0] ?? [], ...groups, edges[1] ?? []];
  const mean = (of: readonly number[]): number => of.reduce((sum, v) => sum + v, 0) / of.length;
  const ratios = ordered.map((near) => mean(near.map((p) => p.ratio)));
  const values = ordered.map((near) => mean(near.map((p) => p.value)));
  return { ratios, values };
}

export function volumetricEfficiency(kind: Compressor['kind'], pressureRatio: number): number {
  if (kind === 'scroll') {
    return k.scrollVolumetricAtUnity.value - k.scrollVolumetricSlope.value * (pressureRatio - 1);
  }
  const reexpansion = pressureRatio ** (1 / k.reciprocatingReexpansionExponent.value) - 1;
  return k.reciprocatingVolumetricAtUnity.value - k.reciprocatingClearanceFrac.value * reexpansion;
}

function isentropicEfficiency(compressor: Compressor, pressureRatio: number): number {
  return compressor.efficiencyFactor * mapEfficiency(pressureRatio);
}

/**
 * Gas compressed from a suction state to a discharge pressure.
 *
 * @param compressor displacement, kind and efficiency
 * @param fluid refrigerant
 * @param suctionPsia suction pressure [psia]
 * @param suctionBtuLb suction enthalpy; below saturated vapour the gas carries liquid
 * @param dischargePsia discharge pressure [psia]
 * @param faults leaking valves (share of the gas that leaks back), weak run capacitor (missing share)
 * Check: tests/synthesis/compressor.test.ts
 */
export function compress(
  compressor: Compressor,
  fluid: Fluid,
  suctionPsia: number,
  suctionBtuLb: number,
  dischargePsia: number,
  faults: CompressorFaults = NO_COMPRESSOR_FAULTS,
): Compression {
  const { valveLeakFrac, capDeficitFrac } = faults;
  const suction = suctionState(fluid, suctionPsia, suctionBtuLb);
  const ratio = Math.max(1.05, dischargePsia / suctionPsia);
  const isentropic = fluid.vapourAtEntropy(
    Math.max(dischargePsia, 1.05 * suctionPsia),
    suction.entropyBtuLbR,
  );
  const idealBtuLb = (isentropic.enthalpyBtuLb - suction.vapourBtuLb) * suction.quality;
  const pumped =
    compressor.displacementFt3Hr * volumetricEfficiency(compressor.kind, ratio) * suction.densityLbFt3;
  const saved = 1 - k.valveLeakPowerShareFrac.value * valveLeakFrac;
  const motor = 1 + k.powerRisePerCapDeficit.value * capDeficitFrac;
  const powerBtuh = ((pumped * idealBtuLb) / isentropicEfficiency(compressor, ratio)) * saved * motor;
  const flowLbHr = pumped * (1 - valveLeakFrac);
  return {
    flowLbHr,
    powerW: powerBtuh / BTUH_PER_W,
    dischargeBtuLb: suctionBtuLb + (powerBtuh * (1 - k.shellLossFrac.value)) / flowLbHr,
  };
}

/** Gas with liquid in it is compressed as its vapour share: the liquid takes almost no work. */
function suctionState(fluid: Fluid, psia: number, enthalpyBtuLb: number) {
  const edge = fluid.saturatedAt(psia);
  if (enthalpyBtuLb >= edge.vapourBtuLb) {
    const gas = fluid.vapourAtEnthalpy(psia, enthalpyBtuLb);
    return { ...gas, vapourBtuLb: gas.enthalpyBtuLb, quality: 1 };
  }
  const quality = Math.max(0.3, (enthalpyBtuLb - edge.liquidBtuLb) / (edge.vapourBtuLb - edge.liquidBtuLb));
  const gas = fluid.vapour(psia, edge.dewF);
  return {
    entropyBtuLbR: gas.entropyBtuLbR,
    vapourBtuLb: gas.enthalpyBtuLb,
    densityLbFt3: 1 / (quality / gas.densityLbFt3 + (1 - quality) / edge.liquidLbFt3),
    quality,
  };
}
