import { sdOfEstimate } from '../math/estimate';
import { invariant } from '../math/invariant';
import type { Assumption } from '../visit/assumption';
import { resolveAssumption } from '../visit/assumption';
import type { AssumptionKey } from '../visit/assumption-keys';
import type { Basis } from '../visit/basis';
import type { ReadingName, Run } from '../visit/run';
import table from './data/instruments.json';

/** A number that knows where it came from and how far it can be trusted. */
export type Sourced = {
  readonly name: string;
  readonly value: number;
  /** Standard uncertainty, same unit. */
  readonly sd: number;
  readonly unit: string;
  readonly basis: Basis;
  readonly source?: string;
};

export type InstrumentKind = keyof typeof table.kinds;
export type AllowanceName = keyof typeof table.allowances;
export type ConstantName = keyof typeof table.constants;

const readings: Partial<Record<string, { readonly kind: string; readonly unit: string }>> = table.readings;

/**
 * A reading of a run with the standard uncertainty of the instrument that takes it.
 *
 * @param run   run of the visit
 * @param name  reading
 * @param overrides  assumptions of the visit; a shop's own instruments count where they are set
 * @returns the reading, or undefined when it was not taken
 * @throws invariant if the reading has no row in the instrument table
 * Source: data/instruments.json, status beside each kind
 * Check: tests/diagnostics/sourced.test.ts
 */
export function readingOf(
  run: Run,
  name: ReadingName,
  overrides: readonly Assumption[] = [],
): Sourced | undefined {
  const value = run[name];
  if (value === undefined) return undefined;
  const row = readings[name];
  invariant(row !== undefined, `no instrument for ${name}`);
  return {
    name,
    value,
    sd: instrumentSd(row.kind as InstrumentKind, value, overrides),
    unit: row.unit,
    basis: 'measured',
  };
}

/**
 * Standard uncertainty of an instrument at a value: the larger of its absolute and its relative part.
 *
 * @param kind   kind of instrument
 * @param value  what it reads [its own unit]
 * @param overrides  assumptions of the visit
 * @returns sd [same unit]
 * Source: data/instruments.json
 * Check: tests/diagnostics/sourced.test.ts
 */
export function instrumentSd(
  kind: InstrumentKind,
  value: number,
  overrides: readonly Assumption[] = [],
): number {
  const row: InstrumentRow = table.kinds[kind];
  const absolute = ownError(overrides, row.absoluteKey) ?? row.absolute;
  const relativeFrac = ownError(overrides, row.relativeKey) ?? row.relativeFrac;
  return Math.max(absolute, relativeFrac * Math.abs(value));
}

type InstrumentRow = {
  readonly absolute: number;
  readonly relativeFrac: number;
  readonly absoluteKey?: string;
  readonly relativeKey?: string;
};

function ownError(overrides: readonly Assumption[], key: string | undefined): number | undefined {
  return key === undefined ? undefined : overrides.find((one) => one.key === key)?.likely;
}

/** A figure of the nameplate or the visit's own entries; `sd` 0 unless it stands in for a reading. */
export function plateValue(
  name: string,
  value: number | undefined,
  unit: string,
  sd = 0,
): Sourced | undefined {
  return value === undefined ? undefined : { name, value, sd, unit, basis: 'nameplate' };
}

/**
 * An assumption of the visit as a number with a standard uncertainty (skewness is not kept).
 *
 * Check: tests/diagnostics/sourced.test.ts
 */
export function assumed(overrides: readonly Assumption[], key: AssumptionKey): Sourced {
  const a = resolveAssumption(overrides, key);
  return {
    name: key,
    value: a.likely,
    sd: sdOfEstimate(a),
    unit: a.unit,
    basis: 'assumed',
    source: a.source,
  };
}

/** An allowance of the instrument table: something nobody reads, with its own uncertainty. */
export function allowance(name: AllowanceName): Sourced {
  const row = table.allowances[name];
  return { name, value: row.value, sd: row.sd, unit: row.unit, basis: 'assumed', source: row.source };
}

/** A constant of the trade's formulas. */
export function constant(name: ConstantName): number {
  return table.constants[name].value;
}
