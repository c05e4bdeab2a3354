import { z } from 'zod';
import { Assumption } from './assumption';
import { Bills } from './bills';
import { CauseId } from './cause';
import { Choice } from './choice';
import { Company } from './company';
import { Observation } from './observation';
import { text } from './quantity';
import { Run } from './run';
import { Site } from './site';
import { FuelPrices, Tariff } from './tariff';
import { Unit } from './unit';

/** Version of the stored shape; each bump has one pure migration and a test with a real old file. */
export const SCHEMA_VERSION = 1;

/** Money conventions of the comparison; what is left out comes from the assumptions. */
export const MoneyConvention = z.strictObject({
  timing: z.enum(['endOfYear', 'midYear']).meta({ label: 'When yearly costs fall' }).optional(),
  residual: z.enum(['linear', 'none']).meta({ label: 'Value left at the end' }).optional(),
});

/** What the customer decided, once they have. */
export const Chosen = z.strictObject({
  choiceId: z
    .string()
    .regex(/^[a-z0-9-]{1,40}$/)
    .meta({ label: 'What the customer chose' }),
  date: z.iso.date().meta({ label: 'Date of the decision' }),
  by: text('Who decided', 80).optional(),
});
export type Chosen = z.infer<typeof Chosen>;

/** One service call at one unit. */
export const Visit = z.strictObject({
  schemaVersion: z.literal(SCHEMA_VERSION),
  id: z
    .string()
    .regex(/^[a-z0-9-]{1,60}$/)
    .meta({ label: 'Visit' }),
  invented: z.boolean().meta({ label: 'Invented example' }).optional(),
  visitDate: z.iso.date().meta({ label: 'Date of the visit' }),
  technician: text('Technician', 80).optional(),
  company: Company.optional(),
  site: Site,
  unit: Unit,
  runs: z.array(Run).max(20),
  observations: z.array(Observation).max(40),
  suspectedCause: z
    .strictObject({ cause: CauseId, note: text('Why the technician suspects it', 1_000).optional() })
    .optional(),
  tariff: Tariff.optional(),
  fuelPrices: FuelPrices.optional(),
  bills: Bills.optional(),
  convention: MoneyConvention.optional(),
  assumptions: z.array(Assumption).max(100),
  choices: z.array(Choice).max(12),
  chosen: Chosen.optional(),
  note: text('Note on the visit', 4_000).optional(),
});
export type Visit = z.infer<typeof Visit>;
