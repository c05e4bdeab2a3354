import { z } from 'zod';
import { quantity, text, wholeQuantity } from './quantity';

const months = z
  .array(wholeQuantity('Month of the year', 'calendar month', 1, 12))
  .min(1)
  .max(12)
  .meta({ label: 'Months of the price' });

const energyUsdPerKwh = quantity('Electricity price', 'USD/kWh', 0, 3);

/** Fixed charges are kept apart: no choice saves them. */
const fixed = { fixedUsdPerMonth: quantity('Fixed monthly charge', 'USD/month', 0, 200).optional() };

/** One price the year round. */
export const FlatTariff = z.strictObject({
  kind: z.literal('flat'),
  energyUsdPerKwh: quantity('Electricity price', 'USD/kWh', 0.01, 1.5),
  ...fixed,
});
export type FlatTariff = z.infer<typeof FlatTariff>;

/** A price by season: every month belongs to one season. */
export const SeasonalTariff = z.strictObject({
  kind: z.literal('seasonal'),
  seasons: z
    .array(z.strictObject({ label: text('Name of the season', 40).optional(), months, energyUsdPerKwh }))
    .min(1)
    .max(12)
    .meta({ label: 'Seasons of the tariff' }),
  ...fixed,
});
export type SeasonalTariff = z.infer<typeof SeasonalTariff>;

/** Blocks of kWh per month; the last block has no upper end. */
export const TieredTariff = z.strictObject({
  kind: z.literal('tiered'),
  seasons: z
    .array(
      z.strictObject({
        label: text('Name of the season', 40).optional(),
        months,
        tiers: z
          .array(
            z.strictObject({
              /** kWh of the month at which this price ends; left out = no end. */
              upToKwh: quantity('Tier ends at', 'kWh', 1, 20_000).optional(),
              energyUsdPerKwh,
            }),
          )
          .min(1)
          .max(8)
          .meta({ label: 'Tiers' }),
      }),
    )
    .min(1)
    .max(12)
    .meta({ label: 'Seasons of the tariff' }),
  ...fixed,
});
export type TieredTariff = z.infer<typeof TieredTariff>;

/** A price by month, kind of day and hour of the clock; what no period covers has the price of the rest. */
export const TimeOfUseTariff = z.strictObject({
  kind: z.literal('timeOfUse'),
  periods: z
    .array(
      z.strictObject({
        label: text('Name of the period', 40).optional(),
        months,
        days: z.enum(['weekdays', 'weekends', 'all']).meta({ label: 'Days of the price' }),
        /** First hour of the clock; the period runs to `toHour`, over midnight if that is not later. */
        fromHour: wholeQuantity('Price begins at', 'clock hour', 0, 23),
        toHour: wholeQuantity('Price ends at', 'clock hour', 1, 24),
        energyUsdPerKwh,
      }),
    )
    .min(1)
    .max(24)
    .meta({ label: 'Periods of the tariff' }),
  /** Price of every hour without a period; left out = the periods should cover the week. */
  otherUsdPerKwh: quantity('Price of all other hours', 'USD/kWh', 0, 3).optional(),
  ...fixed,
});
export type TimeOfUseTariff = z.infer<typeof TimeOfUseTariff>;

/** Electricity price, without demand charges. */
export const Tariff = z
  .discriminatedUnion('kind', [FlatTariff, SeasonalTariff, TieredTariff, TimeOfUseTariff])
  .meta({ label: 'Electricity tariff' });
export type Tariff = z.infer<typeof Tariff>;

export const Fuel = z.enum(['naturalGas', 'propane', 'oil']).meta({ label: 'Fuel' });
export type Fuel = z.infer<typeof Fuel>;

/** Prices of fuels in the units they are sold in; a key left out = the state's average, marked assumed. */
export const FuelPrices = z.strictObject({
  gasUsdPerTherm: quantity('Price of natural gas', 'USD/therm', 0.1, 10).optional(),
  propaneUsdPerGallon: quantity('Price of propane', 'USD/gallon', 0.3, 15).optional(),
  oilUsdPerGallon: quantity('Price of heating oil', 'USD/gallon', 0.5, 15).optional(),
});
export type FuelPrices = z.infer<typeof FuelPrices>;
