import { describe, expect, it } from 'vitest';
import { fanMotorEirRatio } from '@/lib/diagnostics/fault-effects/fan-motor';
import type { FaultEffectInput, KnownEffect } from '@/lib/diagnostics/fault-effects/fault-effect';
import { faultPairEffect } from '@/lib/diagnostics/fault-effects/fault-pair-effect';
import { Z_10_90 } from '@/lib/math/estimate';
import { CauseId } from '@/lib/visit/cause';
import { MeteringDevice } from '@/lib/visit/unit';
import checks from '../../reference/fault-effects-checks.json';
import misses from '../../reference/fault-effects-misses.json';
import { knownEffect, mustBeKnown } from './known-effect';
import { modeOf } from './mode-of';

// Outside values: 30 published figures (tests/reference/fault-effects-checks.json, source and status beside each).
// Tolerances are the reference's; where it has none and no printed range, 5 points: the spread between units.

type PartInput = Readonly<Record<string, string | number>>;
type Part = {
  readonly quantity: string;
  readonly published?: number;
  readonly tolerance?: number;
  readonly low?: number;
  readonly high?: number;
  readonly input?: PartInput;
  readonly level?: number;
  readonly levels?: readonly number[];
};

function conditionsOf(input: PartInput) {
  return {
    mode: modeOf(String(input.mode)),
    outdoorF: Number(input.outdoorF),
    ...(input.metering === undefined ? {} : { metering: MeteringDevice.parse(input.metering) }),
    ...(input.indoorF === undefined ? {} : { indoorF: Number(input.indoorF) }),
    ...(input.indoorWetBulbF === undefined ? {} : { indoorWetBulbF: Number(input.indoorWetBulbF) }),
    ...(input.ratedCop === undefined ? {} : { ratedCop: Number(input.ratedCop) }),
  };
}

function faultOf(input: PartInput): FaultEffectInput {
  return { ...conditionsOf(input), cause: CauseId.parse(input.cause), level: Number(input.level) };
}

const LN: Record<string, (effect: KnownEffect) => number> = {
  capacity: (e) => e.lnCapacity.mean,
  power: (e) => e.lnPower.mean,
  efficiency: (e) => e.lnCapacity.mean - e.lnPower.mean,
  energy: (e) => e.lnPower.mean - e.lnCapacity.mean,
};

function changeOf(part: Part): number {
  if (part.quantity === 'fanMotorEnergy') return fanMotorEirRatio(Number(part.level)) - 1;
  const ln = LN[part.quantity];
  if (ln === undefined || part.input === undefined) throw new Error(`quantity ${part.quantity}`);
  return Math.exp(ln(knownEffect(faultOf(part.input)))) - 1;
}

function orificeLosesMore(part: Part): boolean {
  const fault = faultOf(part.input ?? {});
  const valve = knownEffect({ ...fault, metering: 'txv' });
  const orifice = knownEffect({ ...fault, metering: 'fixedOrifice' });
  return (
    orifice.lnCapacity.mean < valve.lnCapacity.mean &&
    orifice.lnCapacity.mean - orifice.lnPower.mean < valve.lnCapacity.mean - valve.lnPower.mean
  );
}

function weakerThanAdded(part: Part): boolean {
  const conditions = conditionsOf(part.input ?? {});
  const [charge = 0, air = 0] = part.levels ?? [];
  const faults = [
    { cause: 'lowCharge', level: charge },
    { cause: 'lowIndoorAirflow', level: air },
  ] as const;
  const pair = mustBeKnown(faultPairEffect(conditions, [...faults]));
  const [one, two] = faults.map((fault) => knownEffect({ ...conditions, ...fault }));
  const eir = (e: KnownEffect | undefined): number => (e ? e.lnPower.mean - e.lnCapacity.mean : Number.NaN);
  const capacity = (one?.lnCapacity.mean ?? Number.NaN) + (two?.lnCapacity.mean ?? Number.NaN);
  return pair.lnCapacity.mean > capacity && eir(pair) <= eir(one) + eir(two) + 1e-12;
}

function isMet(part: Part): boolean {
  if (part.quantity === 'orificeLosesMore') return orificeLosesMore(part);
  if (part.quantity === 'weakerThanAdded') return weakerThanAdded(part);
  const value = changeOf(part);
  if (part.low !== undefined && part.high !== undefined) return value >= part.low && value <= part.high;
  return Math.abs(value - Number(part.published)) <= Number(part.tolerance);
}

const parts = checks.checks.flatMap(({ id, parts: of }) =>
  (of as readonly Part[]).map((part, index) => ({ id, index, part })),
);

describe('outside: published figures for faults of known size', () => {
  it('all 30 are there, 24 of them comparable, in 37 parts', () => {
    expect(checks.checks.map(({ id }) => id)).toEqual(
      Array.from({ length: 30 }, (_, i) => `CK${String(i + 1).padStart(2, '0')}`),
    );
    expect(checks.checks.filter((check) => check.parts.length > 0)).toHaveLength(24);
    expect(parts).toHaveLength(37);
  });

  it('those outside their tolerance are exactly those listed with the reason why', () => {
    const missed = parts.filter(({ part }) => !isMet(part)).map(({ id, index }) => `${id} ${index}`);
    expect(missed).toEqual(misses.outsideTolerance.map(({ id, part }) => `${id} ${part}`));
  });

  it('those that cannot be compared are exactly those listed with the reason why', () => {
    const without = checks.checks.filter((check) => check.parts.length === 0).map(({ id }) => id);
    expect(without).toEqual(misses.notComparable.map(({ id }) => id));
    const reasons = [...misses.notComparable, ...misses.outsideTolerance].map(({ why }) => why.length);
    expect(Math.min(...reasons)).toBeGreaterThan(40);
  });

  it('two in three of the single figures lie inside our 10 to 90 % range', () => {
    const single = parts.filter(({ part }) => part.published !== undefined && part.input !== undefined);
    const inside = single.filter(({ part }) => {
      const effect = knownEffect(faultOf(part.input ?? {}));
      const sd = {
        capacity: effect.lnCapacity.sd,
        power: effect.lnPower.sd,
        efficiency: Math.hypot(effect.lnCapacity.sd, effect.lnPower.sd),
        energy: Math.hypot(effect.lnCapacity.sd, effect.lnPower.sd),
      }[part.quantity as 'capacity'];
      const apart = Math.log((1 + Number(part.published)) / (1 + changeOf(part)));
      return Math.abs(apart) <= Z_10_90 * sd;
    });
    expect(single).toHaveLength(24);
    expect(inside.length / single.length).toBeGreaterThan(2 / 3);
  });
});
