import { invariant } from '../../math/invariant';
import type { CauseId } from '../../visit/cause';
import type { Mode } from '../../visit/run';
import type { MeteringDevice } from '../../visit/unit';
import table from './data/patterns.json';
import {
  type Direction,
  directionShares,
  type FeatureId,
  featureIds,
  featureSize,
  type SeverityWord,
  severityShare,
} from './feature';

/** What a cause does to one feature at one severity: a shift and how much it differs from unit to unit. */
export type Shift = { readonly mean: number; readonly spread: number };

/** One printed pattern: directions of the features; `variant` where a cause has more than one. */
export type Pattern = {
  readonly cause: string;
  readonly mode: string;
  readonly metering: string;
  readonly variant?: string;
  readonly directions: Readonly<Partial<Record<string, string>>>;
  readonly sizes?: Readonly<Partial<Record<string, number>>>;
};

const NO_SHIFT: Shift = { mean: 0, spread: 0 };

const rows: readonly Pattern[] = table.rows;

const byPlace: ReadonlyMap<string, readonly Pattern[]> = new Map(
  rows.map(({ cause, mode, metering }) => [
    `${cause} ${mode} ${metering}`,
    rows.filter((row) => row.cause === cause && row.mode === mode && row.metering === metering),
  ]),
);

/**
 * Patterns of a cause: one, or as many as it has variants.
 *
 * @param cause     cause; `none` has none
 * @param mode      mode of the run
 * @param metering  metering device
 * Source: data/patterns.json, status beside each row
 * Check: tests/diagnostics/causes/pattern.test.ts
 */
export function patternsOf(cause: CauseId, mode: Mode, metering: MeteringDevice): readonly Pattern[] {
  return byPlace.get(`${cause} ${mode} ${metering}`) ?? [];
}

/**
 * Shift of a feature by a pattern.
 *
 * @param pattern   pattern of a cause
 * @param severity  how bad
 * @param feature   feature
 * @returns mean and spread [feature's unit]; a feature the pattern does not list stays put
 * Source: data/patterns.json (directions), data/features.json (sizes), status beside each
 * Check: tests/diagnostics/causes/pattern.test.ts
 */
export function shiftBy(pattern: Pattern, severity: SeverityWord, feature: FeatureId): Shift {
  const direction = pattern.directions[feature] as Direction | undefined;
  if (direction === undefined) return NO_SHIFT;
  const { mean, spread } = directionShares(direction);
  invariant(Number.isFinite(mean), `direction ${direction} of ${pattern.cause}`);
  const own = pattern.sizes?.[feature] ?? 1;
  const scale = own * featureSize(feature, mean < 0 ? -1 : 1);
  const { factor } = severityShare(severity);
  // what differs between units grows with the fault, but never vanishes with a mild one
  return { mean: mean * scale * factor, spread: spread * scale * (0.3 + 0.7 * factor) };
}

/** Every pattern with a known cause, for checks of the table. Check: tests/diagnostics/causes/pattern.test.ts */
export const allPatterns: readonly Pattern[] = rows;

/** Features a pattern says something about. */
export function featuresOf(pattern: Pattern): readonly FeatureId[] {
  return featureIds.filter((id) => pattern.directions[id] !== undefined);
}
