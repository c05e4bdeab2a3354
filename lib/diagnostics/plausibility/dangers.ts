import limits from '../data/limits.json';
import { derivedById } from '../derived/derive-run';
import { dischargeSide } from '../derived/pressures';
import type { DerivedValue, Flag } from '../findings';
import type { RunContext } from '../run-context';
import { danger, doubt, round } from './conflict';
import { electricDangers } from './electric-dangers';

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
    ...suctionDangers(context),
    ...electricDangers(context, values),
    ...staticDangers(context, values),
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
    : [doubt(run.id, 'compressionRatioHigh', readings, shown)];
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

function suctionDangers({ run }: RunContext): readonly Flag[] {
  const { limit } = limits.suctionNearVacuumPsig;
  const { suctionPsig } = run;
  return suctionPsig === undefined || suctionPsig > limit
    ? []
    : [danger(run.id, 'suctionNearVacuum', ['suctionPsig'], { reading: suctionPsig, limit })];
}

/** Ducts that hold back so much air that electric heat may run without it. */
function staticDangers({ run, visit }: RunContext, values: Values): readonly Flag[] {
  const total = derivedById(values, 'totalExternalStaticInWc');
  const { limit } = limits.totalExternalStaticInWc;
  if (total === undefined || total.value < limit) return [];
  const readings = ['returnStaticInWc', 'supplyStaticInWc'];
  const shown = { reading: total.value.toFixed(2), limit: limit.toFixed(1) };
  return (visit.unit.electricHeatKw ?? 0) > 0
    ? [danger(run.id, 'staticFarTooHighWithHeat', readings, shown)]
    : [doubt(run.id, 'staticFarTooHigh', readings, shown)];
}

function frozenCoil({ run }: RunContext, values: Values): readonly Flag[] {
  const evaporating = derivedById(values, 'evaporatingF');
  const { limit } = limits.coilFreezeF;
  if (run.mode !== 'cooling' || evaporating === undefined || evaporating.value >= limit) return [];
  const shown = { reading: round(evaporating.value), limit };
  return [doubt(run.id, 'coilBelowFreezing', ['suctionPsig'], shown)];
}
