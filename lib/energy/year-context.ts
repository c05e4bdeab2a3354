import type { HouseLoad } from './house-load';
import type { Pricing } from './tariff/pricing';

/** What is assumed about house and running: its load, and cycling and frost losses against the model's (1 = as modelled). */
export type HouseModel = {
  readonly load: HouseLoad;
  readonly cyclicRatio?: number;
  readonly frostRatio?: number;
};

/** The house, its weather and its prices: the same for every scenario. */
export type YearContext = HouseModel & {
  /** The same house and running at the ends at which less and more energy is asked for; left out = no range. */
  readonly ends?: { readonly low: HouseModel; readonly high: HouseModel };
  /** The unit has to heat the house as well. */
  readonly heats: boolean;
  /** Hours, length 12 x bins, month-major. */
  readonly monthBinHours: Float64Array;
  readonly pricing: Pricing;
  readonly co2LbPerKwh: number;
};
