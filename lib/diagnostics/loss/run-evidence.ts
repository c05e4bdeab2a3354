import type { ReadingName } from '../../visit/run';
import type { Saying } from '../../visit/wording';
import lossData from '../data/loss.json';
import { derivedById } from '../derived/derive-run';
import type { DerivedValue, Flag } from '../findings';
import { airSideGross } from '../plausibility/air-conflicts';
import type { RunContext } from '../run-context';
import { type HealthyState, healthyAt } from '../targets/healthy-state';

/** One measured log ratio to the healthy unit; `sd` is the measurement's own, without the healthy unit's. */
export type Measured = {
  readonly id: 'heatBalance' | 'airSide' | 'measuredPower';
  readonly mean: number;
  readonly sd: number;
};

/** What one run says about the loss, before anything is combined. */
export type RunEvidence = {
  readonly runId: string;
  readonly capacity: readonly Measured[];
  readonly power?: Measured;
  readonly healthy?: HealthyState;
  readonly balanceVoid?: Void;
  readonly notes: readonly Saying[];
};

/** Conflicts after which a heat balance means nothing. */
const VOIDS_BALANCE: ReadonlySet<string> = new Set([
  'dischargeNotAboveSuction',
  'liquidAboveDischargePressure',
  'suctionColderThanSaturation',
  'liquidReturning',
  'noSuperheat',
  'dischargeCooledByLiquid',
  'liquidColderThanOutdoor',
  'dischargeCoolerThanLossless',
]);

/** Why a route means nothing: code of the flag, and the readings that cannot be. */
export type Void = { readonly because: string; readonly readings: readonly string[] };

type VoidLimit = { readonly code: string; readonly low?: number; readonly high?: number };

/** Conflicts after which the air side means nothing. */
const VOIDS_AIR: ReadonlySet<string> = new Set([
  'wetBulbAboveDryBulb',
  'wetBulbAgainstHumidity',
  'supplyWarmerInCooling',
  'supplyColderInHeating',
  'electricHeatOn',
]);

const WIDENS: Readonly<Record<string, number | string>> = lossData.widening;

/**
 * Measured capacity and power of a run against the healthy unit at the run's conditions.
 *
 * @param context  run with its unit and site
 * @param values   derived values of the run
 * @param flags    flags of the run: a conflict makes a route void (and says so), a doubt widens it
 * @param balanceVoid  why the heat balance means nothing, where the values are only some of the run's
 * @returns log ratios with the measurement's own standard uncertainty; none without outdoor air
 * Source: design of the three routes; data/loss.json
 * Check: tests/diagnostics/loss.test.ts
 */
export function runEvidence(
  context: RunContext,
  values: readonly DerivedValue[],
  flags: readonly Flag[],
  balanceVoid = whyBalanceVoid(context, values, flags),
): RunEvidence {
  const { run } = context;
  const healthy = healthyAt(context);
  if (healthy === undefined) {
    const hasBalance = derivedById(values, 'refrigerantCapacityBtuh') !== undefined;
    const notes = hasBalance ? [{ code: 'noOutdoorAir' }] : [];
    return { runId: run.id, capacity: [], notes };
  }
  const notes: Saying[] = [];
  if (healthy.beyondRange) notes.push({ code: 'beyondPublishedCurve' });
  const widening = flags.reduce((factor, flag) => Math.max(factor, wideningOf(flag)), 1);
  const balance = balanceRoute(values, balanceVoid, healthy, widening, notes);
  const air = airRoute(context, values, flags, healthy, notes);
  const power = powerRoute(values, flags, healthy);
  return {
    runId: run.id,
    capacity: [balance, air].filter((route) => route !== undefined),
    ...(power === undefined ? {} : { power }),
    healthy,
    ...(balanceVoid === undefined ? {} : { balanceVoid }),
    notes,
  };
}

/**
 * Why the heat balance of a run means nothing. It hangs on what was read, not on how sure it is: less sure
 * instruments must not turn a void balance into a usable one.
 *
 * Source: data/loss.json, balanceVoid
 * Check: tests/diagnostics/loss/less-sure.test.ts
 */
function whyBalanceVoid(
  { run }: RunContext,
  values: readonly DerivedValue[],
  flags: readonly Flag[],
): Void | undefined {
  const flag = flags.find(({ code }) => VOIDS_BALANCE.has(code));
  if (flag !== undefined) return { because: flag.code, readings: flag.readings };
  const limits: Readonly<Record<string, VoidLimit>> = lossData.balanceVoid.limits;
  for (const { id, value, inputs } of values) {
    const limit = limits[id];
    if (limit === undefined) continue;
    const { low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY } = limit;
    if (value >= low && value <= high) continue;
    const readings = inputs.map(({ name }) => name).filter((name) => run[name as ReadingName] !== undefined);
    return { because: limit.code, readings };
  }
  return undefined;
}

function wideningOf(flag: Flag): number {
  const factor = WIDENS[flag.code];
  return typeof factor === 'number' ? factor : 1;
}

function balanceRoute(
  values: readonly DerivedValue[],
  balanceVoid: Void | undefined,
  healthy: HealthyState,
  widening: number,
  notes: Saying[],
): Measured | undefined {
  const capacity = derivedById(values, 'refrigerantCapacityBtuh');
  if (balanceVoid !== undefined) {
    const { because, readings } = balanceVoid;
    notes.push({ code: 'heatBalanceVoid', values: { because, readings: readings.join(', ') } });
    return undefined;
  }
  if (capacity === undefined || capacity.value <= 0) return undefined;
  if (capacity.inputs.some((input) => input.name === 'liquidSubcoolingFd'))
    notes.push({ code: 'subcoolingAssumed' });
  return {
    id: 'heatBalance',
    mean: Math.log(capacity.value / healthy.capacityBtuh),
    sd: widening * Math.hypot(capacity.sd / capacity.value, lossData.heatBalanceMethod.sdFrac),
  };
}

function airRoute(
  context: RunContext,
  values: readonly DerivedValue[],
  flags: readonly Flag[],
  healthy: HealthyState,
  notes: Saying[],
): Measured | undefined {
  const air = airSideGross(context, values);
  if (air === undefined) return undefined;
  const because = flags.find((flag) => VOIDS_AIR.has(flag.code));
  if (because !== undefined) {
    notes.push({
      code: 'airSideVoid',
      values: { because: because.code, readings: because.readings.join(', ') },
    });
    return undefined;
  }
  if (air.value <= 0) return undefined;
  const notSteady = flags.some((flag) => flag.code === 'notSteady') ? lossData.widening.notSteady : 1;
  return {
    id: 'airSide',
    mean: Math.log(air.value / healthy.capacityBtuh),
    sd: notSteady * Math.hypot(air.sd / air.value, lossData.airSideMethod.sdFrac),
  };
}

function powerRoute(
  values: readonly DerivedValue[],
  flags: readonly Flag[],
  healthy: HealthyState,
): Measured | undefined {
  const watts = derivedById(values, 'outdoorUnitW');
  const { high } = lossData.balanceVoid.limits.powerFactorFrac;
  const factor = derivedById(values, 'powerFactorFrac')?.value ?? 0;
  if (watts === undefined || factor > high) return undefined;
  const notSteady = flags.some((flag) => flag.code === 'notSteady') ? lossData.widening.notSteady : 1;
  return {
    id: 'measuredPower',
    mean: Math.log(watts.value / healthy.outdoorUnitW),
    sd: (notSteady * watts.sd) / watts.value,
  };
}

/** True when the run says anything measured about the loss. */
export function isUsable(evidence: RunEvidence): boolean {
  return evidence.capacity.length > 0 || evidence.power !== undefined;
}
