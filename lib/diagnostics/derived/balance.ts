import limits from '../data/limits.json';
import { asSourced, derive } from '../derive';
import type { DerivedValue } from '../findings';
import { isentropicEfficiency, massFlowLbH, refrigerantCapacityBtuh } from '../heat-balance';
import { assumption, oncePerContext, type RunContext, reading } from '../run-context';
import type { Sourced } from '../sourced';
import { constant } from '../sourced';
import { compressorPath, type PowerPath } from './power';
import { dischargeSide, type HighSide, liquidSide } from './pressures';
import { psiaAt } from './refrigerant-side';

const SOURCE =
  'Internal method, m = P (1 - q) / (h_dis - h_suc) (P. Fahlen 2004, 2005, abstracts read: typically within 5 % of external measurement)';

/**
 * Isentropic efficiency of the compression as the refrigerant sees it.
 *
 * @returns [frac]; above 1 is a conflict and flagged as one; absent when a reading is missing or has no state
 * Check: tests/diagnostics/derived-balance.test.ts
 */
export function efficiency(context: RunContext): DerivedValue | undefined {
  const { properties } = context;
  const high = dischargeSide(context);
  if (properties === undefined || high === undefined) return undefined;
  return derive({
    id: 'isentropicEfficiencyFrac',
    unit: 'frac',
    formula: 'efficiency = (h_dis,isentropic - h_suc) / (h_dis - h_suc)',
    source: 'Definition; shell loss makes it higher than the ratio to electric power',
    inputs: { ...compressionInputs(context, high) },
    compute: (v) =>
      numberOrNaN(
        isentropicEfficiency(properties, {
          suctionPsia: psiaAt(v.suctionPsig, v.altitude),
          suctionLineF: v.suctionLine,
          dischargePsia: psiaAt(v.dischargePsig, v.altitude, v.dischargeDrop),
          dischargeLineF: v.dischargeLine,
        }),
      ),
  });
}

/**
 * Refrigerant mass flow by the compressor's own energy balance.
 *
 * @returns [lb/h]; absent when the discharge line is cooler than lossless compression allows
 * Check: tests/diagnostics/derived-balance.test.ts
 */
export function massFlow(context: RunContext): DerivedValue | undefined {
  const { properties } = context;
  const high = dischargeSide(context);
  const power = compressorPath(context);
  if (properties === undefined || high === undefined || power === undefined) return undefined;
  return derive({
    id: 'refrigerantFlowLbH',
    unit: 'lb/h',
    formula: `m = P (1 - q) x 3.412 / (h_dis - h_suc); P: ${power.formula}`,
    source: SOURCE,
    inputs: {
      ...compressionInputs(context, high),
      shellLoss: assumption(context, 'shellLossFrac'),
      ...powerInputs(power),
    },
    compute: (v) =>
      numberOrNaN(
        massFlowLbH(properties, {
          suctionPsia: psiaAt(v.suctionPsig, v.altitude),
          suctionLineF: v.suctionLine,
          dischargePsia: psiaAt(v.dischargePsig, v.altitude, v.dischargeDrop),
          dischargeLineF: v.dischargeLine,
          compressorW: power.watts(v),
          shellLossFrac: v.shellLoss,
        }),
      ),
  });
}

/**
 * Heat moved by the indoor coil, from the refrigerant side. With no liquid line reading the subcooling is assumed.
 *
 * @returns [Btu/h], gross (blower heat not in it); absent when readings are missing or in conflict
 * Check: tests/diagnostics/derived-balance.test.ts
 */
export const refrigerantCapacity = oncePerContext((context): DerivedValue | undefined => {
  const { properties, run } = context;
  const high = dischargeSide(context);
  const liquid = liquidSide(context);
  const power = compressorPath(context);
  if (properties === undefined || high === undefined || liquid === undefined || power === undefined) {
    return undefined;
  }
  const line = reading(context, 'liquidLineF');
  const assumedSubcooling = line === undefined;
  // one gauge read for both ports must not count as two independent readings
  const sameGauge = liquid.gauge.name === high.gauge.name;
  return derive({
    id: 'refrigerantCapacityBtuh',
    unit: 'Btu/h',
    formula: `${run.mode === 'cooling' ? 'Q = m (h_suc - h_liq)' : 'Q = m (h_dis - h_liq)'}, m = P (1 - q) x 3.412 / (h_dis - h_suc); P: ${power.formula}`,
    source: SOURCE,
    inputs: {
      ...compressionInputs(context, high),
      ...liquidGauge(sameGauge ? undefined : liquid.gauge),
      liquidDrop: liquid.drop,
      liquid: line ?? assumption(context, 'liquidSubcoolingFd'),
      shellLoss: assumption(context, 'shellLossFrac'),
      ...powerInputs(power),
    },
    compute: (v) => {
      const liquidPsia = psiaAt(sameGauge ? v.dischargePsig : v.liquidPsig, v.altitude, v.liquidDrop);
      const bubble = properties.bubbleF(liquidPsia);
      if (typeof bubble !== 'number') return Number.NaN;
      const saturated = v.liquid > bubble && v.liquid <= bubble + limits.saturatedLiquidSlackFd.value;
      const measuredF = saturated ? bubble : v.liquid;
      return numberOrNaN(
        refrigerantCapacityBtuh(properties, run.mode, {
          suctionPsia: psiaAt(v.suctionPsig, v.altitude),
          suctionLineF: v.suctionLine,
          dischargePsia: psiaAt(v.dischargePsig, v.altitude, v.dischargeDrop),
          dischargeLineF: v.dischargeLine,
          liquidPsia,
          liquidLineF: assumedSubcooling ? bubble - Math.max(0, v.liquid) : measuredF,
          compressorW: power.watts(v),
          shellLossFrac: v.shellLoss,
        }),
      );
    },
  });
});

/**
 * Heat moved over electric power of compressor and outdoor fan, from the refrigerant side.
 *
 * @param capacity  `refrigerantCapacity` of the same run
 * @param watts     electric power of the outdoor unit of the same run
 * @returns [ratio]; both rest on the same watts, so the uncertainty is that of the enthalpies, kept wide
 * Check: tests/diagnostics/derived-balance.test.ts
 */
export function refrigerantCop(
  capacity: DerivedValue | undefined,
  watts: DerivedValue | undefined,
): DerivedValue | undefined {
  return derive({
    id: 'refrigerantCop',
    unit: 'ratio',
    formula: 'COP = Q / (3.412 x outdoor unit W)',
    source: SOURCE,
    inputs: { capacity: asSourced(capacity), watts: asSourced(watts) },
    compute: (v) => v.capacity / (constant('btuhPerW') * v.watts),
  });
}

type CompressionKey =
  | 'suctionPsig'
  | 'suctionLine'
  | 'dischargePsig'
  | 'dischargeDrop'
  | 'dischargeLine'
  | 'altitude';

function compressionInputs(
  context: RunContext,
  high: HighSide,
): Readonly<Record<CompressionKey, Sourced | undefined>> {
  return {
    suctionPsig: reading(context, 'suctionPsig'),
    suctionLine: reading(context, 'suctionLineF'),
    dischargePsig: high.gauge,
    dischargeDrop: high.drop,
    dischargeLine: reading(context, 'dischargeLineF'),
    altitude: context.altitude,
  };
}

/** Keys absent from the path are absent at run time too; the path reads only its own. */
function powerInputs(path: PowerPath): Readonly<Record<keyof PowerPath['inputs'], Sourced | undefined>> {
  return path.inputs as Readonly<Record<keyof PowerPath['inputs'], Sourced | undefined>>;
}

/** Left out when the discharge gauge stands in for it: the computation then reads that one. */
function liquidGauge(gauge: Sourced | undefined): Readonly<Record<'liquidPsig', Sourced | undefined>> {
  return (gauge === undefined ? {} : { liquidPsig: gauge }) as Record<'liquidPsig', Sourced | undefined>;
}

function numberOrNaN(value: number | object): number {
  return typeof value === 'number' ? value : Number.NaN;
}
