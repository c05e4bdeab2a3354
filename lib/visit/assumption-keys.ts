import { z } from 'zod';
import table from './data/assumptions.json';

/** Names of everything the appraisal may have to assume; the table beside this file holds values and sources. */
export type AssumptionKey = keyof typeof table.values;
export const assumptionKeys = Object.keys(table.values) as AssumptionKey[];
export const AssumptionKeySchema = z
  .enum(assumptionKeys as [AssumptionKey, ...AssumptionKey[]])
  .meta({ label: 'Assumption' });
