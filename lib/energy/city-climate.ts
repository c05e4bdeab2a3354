import { invariant } from '../math/invariant';
import { type Climate, HOURS_OF_DAY, MONTHS } from './climate-model';
import data from './data/cities.json';

/** A city as stored: counts packed, one text per month, hours of the day parted by dots. */
export type CityFile = {
  readonly slug: string;
  readonly city: string;
  readonly state: string;
  readonly elevationFt: number;
  readonly heatingDesignF: number;
  readonly coolingDesignF: number;
  readonly hdd65Fday: number;
  readonly cdd65Fday: number;
  readonly monthMeanF: readonly number[];
  readonly firstBinLowF: number;
  readonly bins: number;
  readonly humidityRatioByBin: readonly number[];
  /** Each hour of day: first bin with hours, then its count and those of the following bins, all in base 36. */
  readonly hours: readonly string[];
};

const BIN_WIDTH_F = 5;

/**
 * Unpacks a city's typical year.
 *
 * @param file  one of data/climate/*.json
 * @returns climate with 5-F bins, each standing at its middle
 * @throws invariant if the file does not hold 12 months of 24 hours
 * Source: TMY3 typical years, reduced; see data/cities.json
 * Check: tests/energy/climate.test.ts
 */
export function cityClimate(file: CityFile): Climate {
  const hours = new Array<number>(MONTHS * HOURS_OF_DAY * file.bins).fill(0);
  invariant(file.hours.length === MONTHS, `${file.slug} has ${file.hours.length} months`);
  file.hours.forEach((month, m) => {
    const day = month.split('.');
    invariant(day.length === HOURS_OF_DAY, `${file.slug} month ${m} has ${day.length} hours`);
    day.forEach((packed, h) => {
      const from = (m * HOURS_OF_DAY + h) * file.bins + Number.parseInt(packed.charAt(0), 36);
      for (let i = 1; i < packed.length; i += 1) hours[from + i - 1] = Number.parseInt(packed.charAt(i), 36);
    });
  });
  return {
    id: file.slug,
    name: `${file.city} ${file.state}`,
    kind: 'city',
    binF: Array.from({ length: file.bins }, (_, i) => file.firstBinLowF + BIN_WIDTH_F * (i + 0.5)),
    hours,
    humidityRatioByBin: file.humidityRatioByBin,
    heatingDesignF: file.heatingDesignF,
    coolingDesignF: file.coolingDesignF,
    elevationFt: file.elevationFt,
    hdd65Fday: file.hdd65Fday,
    cdd65Fday: file.cdd65Fday,
    monthMeanF: file.monthMeanF,
    basis: 'measured',
    source: data.source,
    status: data.status,
    notes: [],
  };
}
