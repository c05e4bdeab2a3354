import { z } from 'zod';
import { climateCities, findClimateCity } from './climate-city';
import { quantity, text } from './quantity';

const CITY_LENGTH = 60;

const someCities = climateCities
  .filter((_, i) => i % 7 === 0)
  .map((c) => c.slug)
  .join(', ');

/** A city without a typical year is refused: another must not stand in for it unasked. */
const city = z
  .string()
  .max(CITY_LENGTH)
  .refine((name) => name.length > CITY_LENGTH || findClimateCity(name) !== undefined, {
    params: {
      code: 'notAllowed',
      limit: `one of the ${climateCities.length} listed cities`,
      fix: `Choose a listed city with a like climate, for example ${someCities}, or a region I to VI. The visit form lists every city, and so does lib/visit/data/climate-cities.json.`,
    },
  })
  .meta({ label: 'Climate city' });

/** Climate the yearly energy is computed in. */
export const ClimateChoice = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('city'), city }),
  z.strictObject({
    kind: z.literal('region'),
    region: z.enum(['I', 'II', 'III', 'IV', 'V', 'VI']).meta({ label: 'Climate region' }),
  }),
]);
export type ClimateChoice = z.infer<typeof ClimateChoice>;

/** The house: where it stands, how long its owner expects to stay. */
export const Site = z.strictObject({
  customer: text('Customer', 120).optional(),
  street: text('Street', 120).optional(),
  town: text('Town', 80).optional(),
  stateCode: z
    .string()
    .regex(/^[A-Z]{2}$/)
    .meta({ label: 'State' })
    .optional(),
  altitudeFt: quantity('Altitude', 'ft', -300, 14_000).optional(),
  climate: ClimateChoice.optional(),
  stayYears: quantity('Years the customer expects to stay', 'years', 1, 25).optional(),
  floorAreaFt2: quantity('Floor area served', 'ft2', 100, 20_000).optional(),
  heatingSetpointF: quantity('Winter room temperature', 'F', 55, 80).optional(),
  coolingSetpointF: quantity('Summer room temperature', 'F', 65, 85).optional(),
  otherHeat: z.boolean().meta({ label: 'Another system heats the house' }).optional(),
});
export type Site = z.infer<typeof Site>;
