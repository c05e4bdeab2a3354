import type { ClimateChoice } from '../visit/site';
import type { Saying } from '../visit/wording';
import { type Climate, HOURS_OF_YEAR } from './climate-model';
import { spreadOverCalendar } from './spread-over-calendar';

export type OwnBins = Extract<ClimateChoice, { kind: 'own' }>['bins'];

export type OwnClimate =
  | { readonly kind: 'climate'; readonly climate: Climate }
  | { readonly kind: 'none'; readonly notes: readonly Saying[] };

/** Fewer bins than this are no year. */
const FEWEST = 3;

/**
 * Climate from the user's own bins: hours of the year at each temperature.
 *
 * @param bins      in any order; bins at one temperature are added up, with a note
 * @param calendar  city whose months and hours of day are used with it
 * @returns the climate scaled to 8,760 hours, with a note for every doubt; `none` if fewer than three bins have hours
 * Design temperatures are those exceeded in 99 % and 1 % of the bins' hours.
 * Check: tests/energy/own-climate.test.ts
 */
export function ownClimate(bins: OwnBins, calendar: Climate): OwnClimate {
  const notes: Saying[] = [];
  const rows = addedUp(bins, notes);
  const total = rows.reduce((sum, row) => sum + row.yearHours, 0);
  if (rows.length < FEWEST) return { kind: 'none', notes: [...notes, { code: 'ownBinsTooFew' }] };
  if (Math.abs(total - HOURS_OF_YEAR) > 0.5) {
    notes.push({ code: 'ownBinsSum', values: { hours: Math.round(total * 10) / 10 } });
  }
  const binF = rows.map((row) => row.outdoorF);
  const binHours = rows.map((row) => (row.yearHours * HOURS_OF_YEAR) / total);
  return {
    kind: 'climate',
    climate: {
      id: 'own',
      name: 'Own bin table',
      kind: 'own',
      binF,
      hours: spreadOverCalendar(binF, binHours, calendar),
      heatingDesignF: exceededF(binF, binHours, 0.99),
      coolingDesignF: exceededF(binF, binHours, 0.01),
      ...(calendar.elevationFt === undefined ? {} : { elevationFt: calendar.elevationFt }),
      hdd65Fday: degreeDays(binF, binHours, (f) => 65 - f),
      cdd65Fday: degreeDays(binF, binHours, (f) => f - 65),
      basis: 'measured',
      source: `Bin table given at the visit; months and hours of the day of ${calendar.name}`,
      status: 'given',
      notes,
    },
  };
}

/** Rising, without empty bins, one row a temperature. */
function addedUp(bins: OwnBins, notes: Saying[]): OwnBins {
  const rising = [...bins].filter((row) => row.yearHours > 0).sort((a, b) => a.outdoorF - b.outdoorF);
  const rows: OwnBins = [];
  for (const row of rising) {
    const last = rows[rows.length - 1];
    if (last === undefined || last.outdoorF !== row.outdoorF) rows.push(row);
    else {
      notes.push({ code: 'ownBinsTwice', values: { f: row.outdoorF } });
      rows[rows.length - 1] = { ...last, yearHours: last.yearHours + row.yearHours };
    }
  }
  return rows;
}

/** Temperature exceeded in a share of the hours; each bin's hours lie evenly between the halfway marks to its neighbours [F]. */
function exceededF(binF: readonly number[], hours: readonly number[], share: number): number {
  const below = (1 - share) * HOURS_OF_YEAR;
  let sum = 0;
  for (const [i, f] of binF.entries()) {
    const here = hours[i] ?? 0;
    if (sum + here >= below) {
      const low = f - ((binF[i] ?? f) - (binF[i - 1] ?? 2 * f - (binF[i + 1] ?? f))) / 2;
      const high = f + ((binF[i + 1] ?? 2 * f - (binF[i - 1] ?? f)) - f) / 2;
      return low + ((below - sum) / here) * (high - low);
    }
    sum += here;
  }
  return binF[binF.length - 1] ?? Number.NaN;
}

function degreeDays(
  binF: readonly number[],
  hours: readonly number[],
  distance: (f: number) => number,
): number {
  return binF.reduce((sum, f, i) => sum + (Math.max(0, distance(f)) * (hours[i] ?? 0)) / 24, 0);
}
