import { interpolateLinear } from '../../math/interpolate';
import targets from '../data/targets.json';
import { derivedById } from '../derived/derive-run';
import { dischargeSide } from '../derived/pressures';
import { psiaAt } from '../derived/refrigerant-side';
import type { DerivedValue } from '../findings';
import { steadyState } from '../healthy-unit/steady-state';
import type { RefrigerantProperties } from '../refrigerant/refrigerant-properties';
import { orNaN, partOrNaN } from '../refrigerant-or-nan';
import { assumption, type RunContext, reading } from '../run-context';
import { constant } from '../sourced';
import { expectedEfficiency } from '../targets/expected-efficiency';
import { seerClass } from '../targets/healthy-pressures';
import table from './data/features.json';
import type { FeatureReading } from './feature';

const { wetness, coilFlowForPower, flowForSize } = table.expectations;

/** States of the compression as read; a suction line that reads no superheat is taken as saturated gas. */
type Compression = {
  readonly suctionPsia: number;
  readonly suctionF: number;
  readonly suctionBtuLb: number;
  readonly ratio: number;
  readonly losslessBtuLb: number;
  readonly latentBtuLb: number;
};

function compressionOf(context: RunContext): Compression | undefined {
  const { properties: p } = context;
  const high = dischargeSide(context);
  const suction = reading(context, 'suctionPsig');
  const line = reading(context, 'suctionLineF');
  if (p === undefined || high === undefined || suction === undefined || line === undefined) return undefined;
  const altitude = context.altitude.value;
  const suctionPsia = psiaAt(suction.value, altitude);
  const dischargePsia = psiaAt(high.gauge.value, altitude, high.drop.value);
  const dewF = orNaN(p.dewF(suctionPsia));
  const suctionF = Math.max(line.value, dewF);
  const suctionBtuLb = orNaN(p.vapourEnthalpyBtuLb(suctionPsia, suctionF));
  const lossless = partOrNaN(
    p.isentropicDischarge(suctionPsia, suctionF, dischargePsia),
    (d) => d.enthalpyBtuLb - suctionBtuLb,
  );
  const latentBtuLb = orNaN(p.dewEnthalpyBtuLb(suctionPsia)) - orNaN(p.bubbleEnthalpyBtuLb(suctionPsia));
  const ratio = dischargePsia / suctionPsia;
  return lossless > 0 && latentBtuLb > 0 && ratio > 1
    ? { suctionPsia, suctionF, suctionBtuLb, ratio, losslessBtuLb: lossless, latentBtuLb }
    : undefined;
}

/**
 * Efficiency of a compression whose suction line reads no superheat: judged as if the gas were dry, against what a
 * little liquid in it would make of a sound compressor.
 *
 * @returns absent without pressures, both line temperatures, or a discharge line above saturation
 * Source: energy balance; share of liquid from data/features.json, wetness
 * Check: tests/diagnostics/causes/flow-features.test.ts
 */
export function wetEfficiency(context: RunContext): FeatureReading | undefined {
  const { properties: p } = context;
  const state = compressionOf(context);
  const line = reading(context, 'dischargeLineF');
  const high = dischargeSide(context);
  if (p === undefined || state === undefined || line === undefined || high === undefined) return undefined;
  const dischargePsia = psiaAt(high.gauge.value, context.altitude.value, high.drop.value);
  const at = (f: number): number => {
    const rise = orNaN(p.vapourEnthalpyBtuLb(dischargePsia, f)) - state.suctionBtuLb;
    return rise > 0 ? state.losslessBtuLb / rise : Number.NaN;
  };
  const value = at(line.value);
  const hotter = at(line.value + line.sd);
  if (!Number.isFinite(value) || !Number.isFinite(hotter)) return undefined;
  const expected = soundEfficiency(context, p, state);
  const withLiquid = (share: number): number =>
    expected.value / Math.max(0.2, 1 - (share * state.latentBtuLb * expected.value) / state.losslessBtuLb);
  const likely = withLiquid(wetness.value);
  const spread = withLiquid(wetness.value + wetness.sd) - likely;
  return {
    id: 'efficiency',
    readingId: 'isentropicEfficiencyFrac',
    residual: value - likely,
    sd: Math.hypot(expected.sd, value - hotter, spread),
  };
}

function soundEfficiency(context: RunContext, p: RefrigerantProperties, state: Compression) {
  return expectedEfficiency(p.name, state.ratio, assumption(context, 'shellLossFrac').value);
}

/**
 * Flow through the coil over the flow the compressor's power should pump: gas that leaks back, in the compressor or
 * across the reversing valve, is paid for and does nothing. Needs no suction superheat.
 *
 * @returns ln ratio
 * Source: m = P (1 - q) x efficiency / lossless rise, data/features.json, coilFlowForPower
 * Check: tests/diagnostics/causes/flow-features.test.ts
 */
export function flowAgainstPower(
  context: RunContext,
  derived: readonly DerivedValue[],
): FeatureReading | undefined {
  const flow = derivedById(derived, 'coilFlowLbH');
  const watts = derivedById(derived, 'compressorW');
  const state = compressionOf(context);
  const { properties: p } = context;
  if (flow === undefined || watts === undefined || state === undefined || p === undefined) return undefined;
  const shellLoss = assumption(context, 'shellLossFrac');
  const expected = soundEfficiency(context, p, state);
  const pumped =
    (watts.value * constant('btuhPerW') * (1 - shellLoss.value) * expected.value) / state.losslessBtuLb;
  return {
    id: 'coilFlowForPower',
    readingId: 'coilFlowLbH',
    residual: Math.log(flow.value / pumped),
    sd: Math.hypot(
      flow.sd / flow.value,
      watts.sd / watts.value,
      expected.sd / expected.value,
      coilFlowForPower.sd,
    ),
  };
}

/**
 * Flow over the flow a compressor of this size should pump at the suction density read.
 *
 * @param wet  liquid in the suction line: the flow through the coil stands in for the compressor's own balance
 * @returns ln ratio; absent without the healthy unit's state
 * Source: displacement of the healthy unit = its flow over its suction density, data/features.json, flowForSize
 * Check: tests/diagnostics/causes/flow-features.test.ts
 */
export function flowAgainstSize(
  context: RunContext,
  derived: readonly DerivedValue[],
  wet: boolean,
): FeatureReading | undefined {
  const flow = derivedById(derived, wet ? 'coilFlowLbH' : 'refrigerantFlowLbH');
  const state = compressionOf(context);
  const { properties: p } = context;
  if (flow === undefined || state === undefined || p === undefined) return undefined;
  const sound = soundFlowPerDensity(context, p);
  const density = partOrNaN(p.vapour(state.suctionPsia, state.suctionF), (v) => v.densityLbFt3);
  const residual = sound === undefined ? Number.NaN : Math.log(flow.value / (sound.ft3Hr * density));
  if (sound === undefined || !Number.isFinite(residual)) return undefined;
  return {
    id: wet ? 'coilFlowForSize' : 'pumpedForSize',
    readingId: flow.id,
    residual,
    sd: Math.hypot(flow.sd / flow.value, sound.sdLn, flowForSize.sd),
  };
}

/**
 * Volume the compressor draws in [ft3/h], from the cooling rating: one compressor serves both modes, and its healthy
 * pressures are better known at the rating point than anywhere else.
 */
function soundFlowPerDensity(
  context: RunContext,
  p: RefrigerantProperties,
): { readonly ft3Hr: number; readonly sdLn: number } | undefined {
  const { outdoorF, returnF, wetBulbF, superheatFd, subcoolingFd, bandSigmas } = flowForSize;
  const rated = steadyState(context.healthy, {
    mode: 'cooling',
    outdoorF,
    indoorWetBulbF: wetBulbF,
    frost: 'none',
  });
  const seer = seerClass(context);
  const evaporatingRule = targets.evaporatingBelowReturn;
  const condensingRule = targets.condensingOverOutdoor;
  const evaporatingF =
    returnF - interpolateLinear(evaporatingRule.seerBtuPerWh, evaporatingRule.valueFd, seer).value;
  const condensingF =
    outdoorF + interpolateLinear(condensingRule.seerBtuPerWh, condensingRule.valueFd, seer).value;
  const liquid = orNaN(p.liquidEnthalpyBtuLb(orNaN(p.bubblePsia(condensingF)), condensingF - subcoolingFd));
  const at = (dewF: number): number => {
    const suction = p.vapour(orNaN(p.dewPsia(dewF)), dewF + superheatFd);
    if (!('enthalpyBtuLb' in suction)) return Number.NaN;
    return rated.capacityBtuh / (suction.enthalpyBtuLb - liquid) / suction.densityLbFt3;
  };
  const ft3Hr = at(evaporatingF);
  const sdLnEvaporating = Math.log(at(evaporatingF + evaporatingRule.toleranceFd / bandSigmas) / ft3Hr);
  const sdLn = Math.hypot(sdLnEvaporating, context.healthy.cooling.sdLnCapacity);
  return ft3Hr > 0 && Number.isFinite(sdLn) ? { ft3Hr, sdLn } : undefined;
}
