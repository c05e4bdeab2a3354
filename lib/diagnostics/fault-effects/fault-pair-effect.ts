import { invariant } from '../../math/invariant';
import type { UnitKind } from '../../visit/unit';
import type { Saying } from '../../visit/wording';
import airflow from './data/airflow-quadratic.json';
import laboratory from './data/charge-laboratory.json';
import { type LnRatio, withoutRepeats } from './effect-part';
import { airflowAfterCharge } from './equivalent-airflow';
import type { FaultConditions } from './fault-conditions';
import { type Fault, type FaultEffect, faultEffect, type KnownEffect } from './fault-effect';

/**
 * What two faults do together.
 *
 * Independent faults: log ratios add. Charge (missing or extra) with low indoor airflow: the published
 * equivalent-airflow method, kept between the worse of the two alone and both added, as the technical note behind the
 * charge set says of the pair (weaker than additive); a correction is marked `clamped`.
 *
 * @param conditions  as for faultEffect
 * @param faults      two different causes
 * @param alone       what each does alone, where the caller knows it already
 * @returns as faultEffect; `none` if either has none
 * @throws invariant if both are the same cause
 * Source: data/charge-laboratory.json, interaction, status read
 * Check: tests/diagnostics/fault-effects/fault-pair-effect.test.ts
 */
export function faultPairEffect(
  conditions: FaultConditions & { readonly unitKind?: UnitKind | undefined },
  faults: readonly [Fault, Fault],
  alone: (fault: Fault) => FaultEffect = (fault) => faultEffect({ ...conditions, ...fault }),
): FaultEffect {
  const [first, second] = faults;
  invariant(first.cause !== second.cause, `${first.cause} twice`);
  const one = alone(first);
  const two = alone(second);
  if (one.kind === 'none') return one;
  if (two.kind === 'none') return two;
  const sum = added(one, two);
  const charge = faults.find(({ cause }) => cause === 'lowCharge' || cause === 'overcharge');
  const air = faults.find(({ cause }) => cause === 'lowIndoorAirflow');
  if (charge === undefined || air === undefined || charge.level === 0 || air.level === 0) return sum;
  return equivalent(conditions, charge, air, { sum, chargeAlone: charge === first ? one : two, one, two });
}

function added(one: KnownEffect, two: KnownEffect): KnownEffect {
  const plus = (a: LnRatio, b: LnRatio): LnRatio => ({ mean: a.mean + b.mean, sd: Math.hypot(a.sd, b.sd) });
  return {
    kind: 'effect',
    lnCapacity: plus(one.lnCapacity, two.lnCapacity),
    lnPower: plus(one.lnPower, two.lnPower),
    clamped: one.clamped || two.clamped,
    beyondRange: one.beyondRange || two.beyondRange,
    notes: withoutRepeats([...one.notes, ...two.notes]),
    evidence: weaker(one.evidence, two.evidence),
    source: one.source === two.source ? one.source : `${one.source}; ${two.source}`,
    status: one.status === two.status ? one.status : `${one.status}; ${two.status}`,
  };
}

function weaker(a: KnownEffect['evidence'], b: KnownEffect['evidence']): KnownEffect['evidence'] {
  const order = ['laboratory', 'simulation', 'assumption'] as const;
  return order.indexOf(a) > order.indexOf(b) ? a : b;
}

function equivalent(
  conditions: FaultConditions,
  charge: Fault,
  air: Fault,
  known: {
    readonly sum: KnownEffect;
    readonly chargeAlone: KnownEffect;
    readonly one: KnownEffect;
    readonly two: KnownEffect;
  },
): KnownEffect {
  const { sum, chargeAlone, one, two } = known;
  const sign = charge.cause === 'lowCharge' ? -1 : 1;
  const fault = sign * Math.min(charge.level, laboratory.range.levelMax);
  const missing = Math.min(air.level, airflow.range.missingMax);
  const extra = airflowAfterCharge(conditions.mode, fault, 1 - missing);
  const eirOf = (effect: KnownEffect): number => effect.lnPower.mean - effect.lnCapacity.mean;
  const capacity = between(chargeAlone.lnCapacity.mean + Math.log(extra.capacityRatio), [
    sum.lnCapacity.mean,
    Math.min(one.lnCapacity.mean, two.lnCapacity.mean),
  ]);
  const eir = between(eirOf(chargeAlone) + Math.log(extra.eirRatio), [
    Math.max(eirOf(one), eirOf(two)),
    eirOf(sum),
  ]);
  const notes: Saying[] = [{ code: 'equivalentAirflow' }];
  const kept = capacity.kept || eir.kept;
  if (kept) notes.push({ code: 'interactionKept' });
  return {
    ...sum,
    lnCapacity: { ...sum.lnCapacity, mean: capacity.value },
    lnPower: { ...sum.lnPower, mean: capacity.value + eir.value },
    clamped: sum.clamped || kept,
    notes: [...sum.notes, ...notes],
  };
}

function between(
  value: number,
  [low, high]: readonly [number, number],
): { readonly value: number; readonly kept: boolean } {
  const held = Math.min(high, Math.max(low, value));
  return { value: held, kept: held !== value };
}
