import { z } from 'zod';
import { dollars, quantity } from './quantity';

/** One electricity bill. */
export const Bill = z.strictObject({
  fromDate: z.iso.date().meta({ label: 'First day of the bill' }),
  /** The day the meter was read again; where bills end on the day before the next begins, that is understood. */
  toDate: z.iso.date().meta({ label: 'Last day of the bill' }),
  kwh: quantity('Electricity on the bill', 'kWh', 0, 20_000),
  costUsd: dollars('Cost on the bill', 0, 20_000).optional(),
  /** The meter was not read. */
  estimated: z.boolean().meta({ label: 'Meter was not read (estimated)' }).optional(),
  /** Printed on many bills; without it a typical year's temperatures stand in. */
  meanOutdoorF: quantity('Mean outdoor temperature of the bill', 'F', -40, 120).optional(),
});
export type Bill = z.infer<typeof Bill>;

/** Electricity bills in any order, three years and more. */
export const Bills = z.array(Bill).max(60).meta({ label: 'Electricity bills' });
