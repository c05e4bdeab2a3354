import type { Visit } from '../../visit/visit';
import limits from '../data/limits.json';
import { derivedById } from '../derived/derive-run';
import { dischargeSide } from '../derived/pressures';
import type { DerivedValue, Flag } from '../findings';
import type { RunContext } from '../run-context';
import { round } from './conflict';

type Values = readonly DerivedValue[];

/**
 * Readings that call for care whatever the economics say.
 *
 * @param context  run with its unit and site
 * @param values   derived values of the same run
 * @returns flags of severity danger, and of severity doubt close to a limit of no immediate danger
 * Source: data/limits.json; what licensed practice asks is in wording/en.json under `flag.<code>`
 * Check: tests/diagnostics/dangers.test.ts
 */
export function dangersOfRun(context: RunContext, values: Values): readonly Flag[] {
  return [
    ...dischargeDangers(context),
    ...ratioDangers(context, values),
    ...pressureDangers(context),
    ...voltageDangers(context, values),
    ...ampsDangers(context, values),
    ...electricHeatDangers(context),
    ...frozenCoil(context, values),
  ];
}

function dischargeDangers({ run }: RunContext): readonly Flag[] {
  const { dischargeLineF } = run;
  const { limit, near } = limits.dischargeLineF;
  if (dischargeLineF === undefined || dischargeLineF < near) return [];
  const code = dischargeLineF >= limit ? 'dischargeLineTooHot' : 'dischargeLineNearLimit';
  return [danger(run.id, code, ['dischargeLineF'], { reading: dischargeLineF, limit })];
}

function ratioDangers({ run }: RunContext, values: Values): readonly Flag[] {
  const ratio = derivedById(values, 'compressionRatio');
  const { limit, near } = limits.compressionRatio;
  if (ratio === undefined || ratio.value < near) return [];
  const readings = ['dischargePsig', 'suctionPsig'];
  const shown = { ratio: round(ratio.value), limit };
  return ratio.value >= limit
    ? [danger(run.id, 'compressionRatioTooHigh', readings, shown)]
    : [{ code: 'compressionRatioHigh', severity: 'doubt', runId: run.id, readings, values: shown }];
}

function pressureDangers(context: RunContext): readonly Flag[] {
  const { run, visit } = context;
  const { refrigerant } = visit.unit;
  const high = dischargeSide(context);
  if (refrigerant === undefined || high === undefined) return [];
  const limit = limits.highSidePsig[refrigerant];
  if (high.gauge.value < limit) return [];
  return [danger(run.id, 'highSideNearCutOut', [high.gauge.name], { reading: high.gauge.value, limit })];
}

function voltageDangers({ run, visit }: RunContext, values: Values): readonly Flag[] {
  const { lineV } = run;
  if (lineV === undefined) return [];
  const deviation = derivedById(values, 'voltageDeviationFrac');
  const percent = Math.round(100 * limits.voltageFrac.limit);
  if (deviation !== undefined) {
    const beyond = Math.abs(deviation.value) > limits.voltageFrac.limit + 1e-9;
    const shown = { reading: lineV, nameplate: visit.unit.ratedV ?? 0, percent };
    return beyond ? [danger(run.id, 'voltageOutsideNameplate', ['lineV'], shown)] : [];
  }
  const { low, high } = limits.dualVoltageV;
  const outside = lineV < low || lineV > high;
  return outside
    ? [danger(run.id, 'voltageOutsideDualRating', ['lineV'], { reading: lineV, low, high })]
    : [];
}

function ampsDangers({ run, visit }: RunContext, values: Values): readonly Flag[] {
  const ratio = derivedById(values, 'compressorAmpsToRatedFrac');
  if (ratio === undefined || ratio.value <= limits.ratedAmpsFrac.limit) return [];
  const shown = { reading: run.compressorA ?? 0, rated: visit.unit.ratedLoadA ?? 0 };
  return [danger(run.id, 'ampsOverRating', ['compressorA'], shown)];
}

function electricHeatDangers({ run }: RunContext): readonly Flag[] {
  const flags: Flag[] = [];
  const { limit } = limits.electricHeatSupplyF;
  const hot = Math.max(run.heatRiseSupplyF ?? 0, run.supplyAirF ?? 0);
  if (hot >= limit) {
    const reading = hot === run.heatRiseSupplyF ? 'heatRiseSupplyF' : 'supplyAirF';
    flags.push(danger(run.id, 'electricHeatShortOfAir', [reading], { reading: hot, limit }));
  }
  if (run.mode === 'cooling' && (run.stripA ?? 0) > limits.stripHeatOnA.limit) {
    flags.push(danger(run.id, 'electricHeatInCooling', ['stripA'], { reading: run.stripA ?? 0 }));
  }
  if (run.mode === 'cooling' && run.electricHeatOn === true && run.stripA === undefined) {
    flags.push(danger(run.id, 'electricHeatOnInCooling', ['electricHeatOn'], {}));
  }
  return flags;
}

function frozenCoil({ run }: RunContext, values: Values): readonly Flag[] {
  const evaporating = derivedById(values, 'evaporatingF');
  const { limit } = limits.coilFreezeF;
  if (run.mode !== 'cooling' || evaporating === undefined || evaporating.value >= limit) return [];
  const shown = { reading: round(evaporating.value), limit };
  return [
    { code: 'coilBelowFreezing', severity: 'doubt', runId: run.id, readings: ['suctionPsig'], values: shown },
  ];
}

/** Dangers seen rather than measured. Check: tests/diagnostics/dangers.test.ts */
export function observedDangers(visit: Visit): readonly Flag[] {
  const seen = new Set(visit.observations.map((observation) => observation.id));
  const dangerous = ['shortToGround', 'stripsStayOn', 'burntSmell', 'breakerTrips'] as const;
  return dangerous
    .filter((id) => seen.has(id))
    .map((id): Flag => ({ code: `seen.${id}`, severity: 'danger', readings: [] }));
}

function danger(
  runId: string,
  code: string,
  readings: readonly string[],
  values: Readonly<Record<string, string | number>>,
): Flag {
  return { code, severity: 'danger', runId, readings, values };
}
