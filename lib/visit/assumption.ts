import { z } from 'zod';
import type { Estimate } from '../math/estimate';
import { type AssumptionKey, AssumptionKeySchema } from './assumption-keys';
import type { Basis } from './basis';
import table from './data/assumptions.json';
import { text } from './quantity';

/** A value that somebody set instead of the default: low, likely, high, and who says so. */
export const Assumption = z
  .strictObject({
    key: AssumptionKeySchema,
    low: z.number().meta({ label: 'Low', unit: 'own', min: -1e9, max: 1e9 }),
    likely: z.number().meta({ label: 'Likely', unit: 'own', min: -1e9, max: 1e9 }),
    high: z.number().meta({ label: 'High', unit: 'own', min: -1e9, max: 1e9 }),
    source: text('Source', 400),
    setBy: text('Set by', 80).optional(),
  })
  .refine((a) => a.low <= a.likely && a.likely <= a.high, {
    params: { limit: 'low, likely and high in rising order' },
  });
export type Assumption = z.infer<typeof Assumption>;

export type ResolvedAssumption = Estimate & {
  readonly key: AssumptionKey;
  readonly unit: string;
  readonly label: string;
  readonly source: string;
  readonly status: string;
  readonly basis: Basis;
  readonly setBy: 'keepworth' | 'visit';
};

/**
 * The value to use for something nobody measured: the visit's own if given, else the default of the table.
 *
 * @param overrides assumptions stored in the visit
 * @param key  name of the assumption
 * @returns low / likely / high in the unit of the table, with source and who set it
 * Source: lib/visit/data/assumptions.json, each value with its own source and status
 * Check: tests/visit/assumption.test.ts
 */
export function resolveAssumption(overrides: readonly Assumption[], key: AssumptionKey): ResolvedAssumption {
  const row = table.values[key];
  const own = overrides.find((a) => a.key === key);
  return {
    key,
    unit: row.unit,
    label: row.label,
    low: own?.low ?? row.low,
    likely: own?.likely ?? row.likely,
    high: own?.high ?? row.high,
    source: own?.source ?? row.source,
    status: own === undefined ? row.status : 'set in this visit',
    basis: 'assumed',
    setBy: own === undefined ? 'keepworth' : 'visit',
  };
}
