import { z } from 'zod';
import { climateCities, findClimateCity } from './climate-city';
import { quantity, text, wholeQuantity } from './quantity';

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
  z.strictObject({
    kind: z.literal('own'),
    /** Hours of a year in each temperature bin; they need not be in order. */
    bins: z
      .array(
        z.strictObject({
          outdoorF: quantity('Middle of the temperature bin', 'F', -60, 130),
          yearHours: quantity('Hours of the year in the bin', 'h/year', 0, 8784),
        }),
      )
      .min(1)
      .max(80)
      .meta({ label: 'Own temperature bins' }),
    /** City that lends months and hours of the day; left out = one of the state. */
    calendarCity: city.meta({ label: 'City with a like course of the year' }).optional(),
  }),
]);
export type ClimateChoice = z.infer<typeof ClimateChoice>;

export const Comfort = z.enum(['keepsUp', 'fallsShort']);
export type Comfort = z.infer<typeof Comfort>;

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
  /** Set-back lowers the winter room for some hours a day, set-up raises the summer room. */
  heatingSetbackFd: quantity('Winter set-back', 'Fd', 0, 20).optional(),
  heatingSetbackHoursPerDay: quantity('Hours of winter set-back a day', 'h/day', 0, 24).optional(),
  coolingSetupFd: quantity('Summer set-up', 'Fd', 0, 20).optional(),
  coolingSetupHoursPerDay: quantity('Hours of summer set-up a day', 'h/day', 0, 24).optional(),
  builtYear: wholeQuantity('Year the house was built', 'year', 1700, 2100).optional(),
  insulation: z
    .enum(['poor', 'average', 'good'])
    .meta({ label: 'Insulation for a house of its age' })
    .optional(),
  /** What the customer says: a check on the hours the model leaves unmet. */
  heatingComfort: Comfort.meta({ label: 'Winter comfort, as the customer tells it' }).optional(),
  coolingComfort: Comfort.meta({ label: 'Summer comfort, as the customer tells it' }).optional(),
  /** Degree-days to 65 F of the customer's own place or years; they win over the typical year's. */
  hdd65Fday: quantity('Own heating degree-days (65 °F)', 'F-day', 0, 20_000).optional(),
  cdd65Fday: quantity('Own cooling degree-days (65 °F)', 'F-day', 0, 10_000).optional(),
  /** Which grid factor counts for carbon dioxide; left out = marginal. */
  co2Factor: z.enum(['marginal', 'average']).meta({ label: 'Grid factor for carbon dioxide' }).optional(),
  otherHeat: z.boolean().meta({ label: 'Another system heats the house' }).optional(),
});
export type Site = z.infer<typeof Site>;
