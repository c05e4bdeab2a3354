import procedure from '../diagnostics/healthy-unit/data/test-procedure.json';
import type { Region } from '../diagnostics/healthy-unit/seasonal-rating';
import { invariant } from '../math/invariant';
import { type Climate, HOURS_OF_YEAR } from './climate-model';
import { spreadOverCalendar } from './spread-over-calendar';

/**
 * A test-procedure region as a whole year. Bin fractions become hours through the region's load hours: heating
 * load hours x (65 F - design) = sum of hours x (65 F - bin), cooling load hours likewise with 95 F. The older
 * bins are used, which sum to one; the newer ones do not. What is left of the year has neither load.
 *
 * @param region   I to VI
 * @param calendar city whose months and hours of the day each temperature bin follows
 * @returns climate of 8,760 hours
 * @throws invariant if the load hours ask for more than a year
 * Source: Appendix M bins (secondary) and load hours (memory); calendar is judgement
 * Check: tests/energy/climate.test.ts
 */
export function regionClimate(region: Region, calendar: Climate): Climate {
  const table = procedure.regions[region];
  const zero = procedure.zeroLoadOlderF;
  const heating = hoursFromLoadHours(
    procedure.heatingBinF,
    table.older.binFrac,
    (f) => (zero - f) / (zero - table.outdoorDesignF),
    table.older.loadHours,
  );
  const cooling = hoursFromLoadHours(
    procedure.coolingBinF,
    procedure.coolingBinFrac,
    (f) => (f - procedure.coolingZeroLoadF) / (procedure.coolingDesignF - procedure.coolingZeroLoadF),
    table.coolingLoadHours,
  );
  const rest = HOURS_OF_YEAR - sum(heating) - sum(cooling);
  invariant(rest >= 0, `region ${region} asks for ${HOURS_OF_YEAR - rest} hours`);
  const binF = [...[...procedure.heatingBinF].reverse(), zero, ...procedure.coolingBinF];
  const binHours = [...[...heating].reverse(), rest, ...cooling];
  return {
    id: `region-${region}`,
    name: `Test-procedure region ${region}`,
    kind: 'region',
    binF,
    hours: spreadOverCalendar(binF, binHours, calendar),
    heatingDesignF: table.outdoorDesignF,
    coolingDesignF: procedure.coolingDesignF,
    basis: 'measured',
    source: procedure.regionsSource,
    status: procedure.regionsStatus,
    notes: [],
  };
}

function hoursFromLoadHours(
  binF: readonly number[],
  binFrac: readonly number[],
  loadShare: (outdoorF: number) => number,
  loadHours: number,
): readonly number[] {
  let perHour = 0;
  binF.forEach((f, i) => {
    perHour += (binFrac[i] ?? 0) * loadShare(f);
  });
  return binF.map((_, i) => ((binFrac[i] ?? 0) * loadHours) / perHour);
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}
