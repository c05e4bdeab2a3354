import efficiencyData from '../data/compressor-efficiency.json';
import splitData from '../data/target-split.json';
import data from '../data/targets.json';
import { sensibleFactor } from '../derived/air-side';
import { derivedById } from '../derived/derive-run';
import { compressorPowerFactor, unitVolts } from '../derived/power';
import type { DerivedValue } from '../findings';
import { assumption, type RunContext, reading, returnWetBulb } from '../run-context';
import { constant } from '../sourced';
import type { NoTarget, TargetPart } from './build-target';
import { expectedEfficiency } from './expected-efficiency';
import { type HealthyState, healthyAt } from './healthy-state';
import { targetSplitFd } from './target-superheat';

type Answer = TargetPart | NoTarget;
type Values = readonly DerivedValue[];

const BAND = data.dischargeBandSigmas.value;

/**
 * Efficiency to expect at the compression ratio read.
 *
 * @returns absent when the ratio or the refrigerant is not known
 * Source: targets/expected-efficiency.ts
 * Check: tests/diagnostics/targets/other-targets.test.ts
 */
export function efficiencyTarget(context: RunContext, values: Values): Answer | undefined {
  const ratio = derivedById(values, 'compressionRatio');
  const { properties } = context;
  if (ratio === undefined || properties === undefined || ratio.value <= 1) return undefined;
  const shellLoss = assumption(context, 'shellLossFrac').value;
  const { value, sd } = expectedEfficiency(properties.name, ratio.value, shellLoss);
  return {
    id: 'isentropicEfficiencyFrac',
    value,
    low: value - BAND * sd,
    high: value + BAND * sd,
    unit: 'frac',
    source: efficiencyData.source,
    status: efficiencyData.status,
    sd,
  };
}

/** Target airflow per ton, both modes. Check: tests/diagnostics/targets/other-targets.test.ts */
export function airflowTarget(): TargetPart {
  const { value, low, high, unit, source, status } = data.airflowCfmPerTon;
  return { id: 'airflowCfmPerTon', value, low, high, unit, source, status, sd: (high - low) / (2 * BAND) };
}

/**
 * Target total external static: up to what the nameplate allows, else what most blowers are rated at.
 *
 * Check: tests/diagnostics/targets/other-targets.test.ts
 */
export function staticTarget(context: RunContext): TargetPart {
  const { value, low, high, unit, source, status } = data.totalExternalStatic;
  const rated = context.visit.unit.ratedStaticInWc;
  if (rated !== undefined) {
    return {
      id: 'totalExternalStaticInWc',
      value: Math.min(value, rated),
      low,
      high: rated,
      unit,
      source: 'Nameplate of the unit',
      status: 'nameplate',
    };
  }
  return { id: 'totalExternalStaticInWc', value, low, high, unit, source, status };
}

/**
 * What filter and indoor coil may take of the static pressure.
 *
 * Source: data/targets.json, filterDrop and coilDrop, status read (no standard behind them)
 * Check: tests/diagnostics/targets/other-targets.test.ts
 */
export function staticBudgetTargets(): readonly TargetPart[] {
  return [
    { id: 'filterDropInWc', ...data.filterDrop },
    { id: 'coilDropInWc', ...data.coilDrop },
  ];
}

/** Target drop over filter-drier and liquid line. Check: tests/diagnostics/targets/other-targets.test.ts */
export function drierTarget(): TargetPart {
  return { id: 'drierDropFd', ...data.drierDrop };
}

/**
 * Target air split in cooling: the regulatory table.
 *
 * @returns outside 70-84 F return, 50-76 F wet bulb, or in a dash: why there is no target
 * Source: data/target-split.json
 * Check: tests/diagnostics/targets/other-targets.test.ts
 */
export function splitTarget(context: RunContext): Answer {
  const id = 'airSplitFd';
  const dry = reading(context, 'returnAirF');
  const wet = returnWetBulb(context);
  if (dry === undefined || wet === undefined) return { id, note: { code: 'needsReturnAndWetBulb' } };
  const found = targetSplitFd(dry.value, wet.value);
  if (found.kind === 'none') return { id, note: { code: 'outsideSplitTable' } };
  const tolerance = splitData.tolerance.value;
  return {
    id,
    value: found.value,
    low: found.value - tolerance,
    high: found.value + tolerance,
    unit: 'Fd',
    source: splitData.source,
    status: splitData.status,
    sd: tolerance / BAND,
  };
}

/**
 * Target air rise in heating: net capacity of the healthy unit over the airflow measured, else the healthy airflow.
 *
 * @returns absent without outdoor air; with electric heat on, none
 * Source: rise = Q / (1.08 cfm p/p0); a maker's table of 18 points meets it within 1 %, status read
 * Check: tests/diagnostics/targets/other-targets.test.ts
 */
export function riseTarget(context: RunContext, values: Values): Answer {
  const id = 'airRiseFd';
  const state = healthyAt(context);
  if (state === undefined) return { id, note: { code: 'needsOutdoor' } };
  if (context.run.electricHeatOn === true) return { id, note: { code: 'electricHeatHidesRise' } };
  const measured = derivedById(values, 'airflowCfm');
  const cfm = measured?.value ?? context.healthy.airflowCfm;
  const airflowSdFrac = measured === undefined ? 0.1 : measured.sd / measured.value;
  const blowerBtuh = constant('btuhPerW') * state.blowerW;
  const value = (state.capacityBtuh + blowerBtuh) / (sensibleFactor(context.altitude.value) * cfm);
  const sd = value * Math.hypot(state.sdLnCapacity, airflowSdFrac);
  return {
    id,
    value,
    low: value - BAND * sd,
    high: value + BAND * sd,
    unit: 'Fd',
    source: 'Capacity of the healthy unit over 1.08 x airflow x p/p0',
    status: 'computed',
    sd,
    ...(measured === undefined ? { note: { code: 'atHealthyAirflow' } } : {}),
  };
}

/**
 * Power, amps and capacity of the healthy unit at the conditions of the run.
 *
 * @returns none without outdoor air
 * Source: targets/healthy-state.ts
 * Check: tests/diagnostics/targets/other-targets.test.ts
 */
export function performanceTargets(context: RunContext): readonly Answer[] {
  const state = healthyAt(context);
  if (state === undefined) return [{ id: 'outdoorUnitW', note: { code: 'needsOutdoor' } }];
  return [
    fromLog('outdoorUnitW', 'W', state.outdoorUnitW, state.sdLnPower, state),
    compressorAmpsTarget(context, state),
    fromLog('refrigerantCapacityBtuh', 'Btu/h', state.capacityBtuh, state.sdLnCapacity, state),
    ...(context.run.mode === 'cooling'
      ? [
          fromLog(
            'totalCapacityBtuh',
            'Btu/h',
            state.capacityBtuh - constant('btuhPerW') * state.blowerW,
            state.sdLnCapacity,
            state,
          ),
        ]
      : []),
  ];
}

function compressorAmpsTarget(context: RunContext, state: HealthyState): TargetPart {
  const volts = unitVolts(context);
  const factor = compressorPowerFactor(context);
  const share = assumption(context, 'outdoorFanShareFrac');
  const amps = (state.outdoorUnitW * (1 - share.value)) / (volts.value * factor.value);
  const sdLn = Math.hypot(state.sdLnPower, volts.sd / volts.value, factor.sd / factor.value);
  return fromLog('compressorA', 'A', amps, sdLn, state);
}

function fromLog(id: string, unit: string, value: number, sdLn: number, state: HealthyState): TargetPart {
  return {
    id,
    value,
    low: value * Math.exp(-BAND * sdLn),
    high: value * Math.exp(BAND * sdLn),
    unit,
    source: 'Healthy unit from its ratings and published performance curves at these conditions',
    status: 'computed',
    sd: value * sdLn,
    ...(state.beyondRange ? { note: { code: 'beyondPublishedCurve' } } : {}),
  };
}

/** Targets of the electric side that need no conditions. Check: tests/diagnostics/targets/other-targets.test.ts */
export function electricTargets(): readonly TargetPart[] {
  const { value, low, high, unit, source, status } = data.capacitor;
  const capacitor = { value, low, high, unit, source, status };
  return [
    { id: 'compressorCapacitorDeviationFrac', ...capacitor },
    { id: 'fanCapacitorDeviationFrac', ...capacitor },
    { id: 'voltageDeviationFrac', ...data.voltage },
    { id: 'compressorAmpsToRatedFrac', ...data.ratedAmps, low: 0 },
    { id: 'stripAmpsRatio', ...data.stripAmps },
  ];
}
