import { z } from 'zod';
import { quantity } from './quantity';

/** Electricity price. Fixed charges are kept apart: no choice saves them. */
export const Tariff = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('flat'),
    energyUsdPerKwh: quantity('Electricity price', 'USD/kWh', 0.01, 1.5),
    fixedUsdPerMonth: quantity('Fixed monthly charge', 'USD/month', 0, 200).optional(),
  }),
]);
export type Tariff = z.infer<typeof Tariff>;
