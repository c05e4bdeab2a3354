import type { Bill } from '../../visit/bills';
import type { Saying } from '../../visit/wording';
import rules from '../data/bill-rules.json';
import { billDays, dayNumber, monthOfDay } from './bill-model';
import { bestChangePoint } from './change-point-fit';
import {
  type BillPoint,
  type ChangePointFit,
  coolingKwhPerDay,
  expectedKwhPerDay,
  heatingKwhPerDay,
} from './change-point-model';
import { checkBills } from './check-bills';

export type BillVerdict = 'accept' | 'doubtful' | 'unusable';

export type BillUse = {
  readonly fit?: ChangePointFit;
  readonly verdict: BillVerdict;
  readonly points: readonly (BillPoint & Bill)[];
  /** The fitted line at each point, for the plot [kWh/day]. */
  readonly expectedKwhPerDay: readonly number[];
  /** In a year of the climate's monthly mean temperatures [kWh]. */
  readonly baseKwhPerYear: number;
  readonly heatingKwhPerYear: number;
  readonly coolingKwhPerYear: number;
  /** Whose temperatures were used: those printed on every bill, or for some or all a typical year's. */
  readonly temperatures: 'bills' | 'typicalYear';
  readonly notes: readonly Saying[];
};

const DAYS_OF_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

export type BillUseInput = {
  readonly bills: readonly Bill[];
  /** Mean temperature of each month of a typical year, January first [F]. */
  readonly typicalMonthMeanF: readonly number[];
};

/**
 * Splits billed electricity into base, heating and cooling use by a change-point line, and says whether the fit can
 * be relied on.
 *
 * @param input  bills, which may carry their own mean temperature, and monthly mean temperatures of a typical year
 * @returns the fit, yearly use in typical weather, verdict by CV(RMSE), notes
 * Fewer than nine usable periods, or no answer to the weather: unusable. Fewer than twelve, temperatures of a
 * typical year, or several estimated reads: doubtful at best.
 * Source: limits in data/bill-rules.json (memory, assumption)
 * Check: tests/energy/bills/bill-use.test.ts
 */
export function billUse(input: BillUseInput): BillUse {
  const { usable, notes } = checkBills(input.bills);
  const points = usable.map((bill) => ({
    ...bill,
    meanF: bill.meanOutdoorF ?? periodMeanF(bill, input.typicalMonthMeanF),
    kwhPerDay: bill.kwh / billDays(bill),
  }));
  const temperatures = usable.some((b) => b.meanOutdoorF === undefined) ? 'typicalYear' : 'bills';
  const fit = bestChangePoint(points);
  const year = (kwhPerDay: (meanF: number) => number): number =>
    input.typicalMonthMeanF.reduce((sum, f, m) => sum + kwhPerDay(f) * (DAYS_OF_MONTH[m] ?? 0), 0);
  if (fit === undefined) {
    const none = {
      baseKwhPerYear: 0,
      heatingKwhPerYear: 0,
      coolingKwhPerYear: 0,
      expectedKwhPerDay: [],
      line: [],
    };
    return { ...none, verdict: 'unusable', points, temperatures, notes: [...notes, { code: 'billsNoFit' }] };
  }
  const { verdict, why } = verdictOf(fit, temperatures, input.bills);
  return {
    fit,
    verdict,
    points,
    expectedKwhPerDay: points.map((q) => expectedKwhPerDay(fit, q.meanF)),
    baseKwhPerYear: year(() => fit.baseKwhPerDay),
    heatingKwhPerYear: year((f) => heatingKwhPerDay(fit, f)),
    coolingKwhPerYear: year((f) => coolingKwhPerDay(fit, f)),
    temperatures,
    notes: [...notes, ...why],
  };
}

function verdictOf(
  fit: ChangePointFit,
  temperatures: BillUse['temperatures'],
  bills: readonly Bill[],
): { readonly verdict: BillVerdict; readonly why: Saying[] } {
  const { acceptCvRmseFrac, doubtfulCvRmseFrac, nmbeFrac } = rules.verdict;
  const { least, whole, doubtfulEstimatedReads } = rules.periods;
  const cvPercent = Math.round(fit.cvRmseFrac * 1000) / 10;
  const why: Saying[] = [];
  const bad: Saying[] = [];
  if (fit.n < least) bad.push({ code: 'billsTooFew', values: { periods: fit.n } });
  if (fit.cvRmseFrac > doubtfulCvRmseFrac) bad.push({ code: 'billsScatter', values: { cvPercent } });
  if (fit.kind === '1P') bad.push({ code: 'billsNoWeather' });
  if (bad.length > 0) return { verdict: 'unusable', why: bad };
  if (fit.cvRmseFrac > acceptCvRmseFrac) why.push({ code: 'billsSomeScatter', values: { cvPercent } });
  if (Math.abs(fit.nmbeFrac) > nmbeFrac) why.push({ code: 'billsBias' });
  if (fit.n < whole) why.push({ code: 'billsTooFew', values: { periods: fit.n } });
  if (temperatures === 'typicalYear') why.push({ code: 'billsTypicalYear' });
  const estimated = bills.filter((b) => b.estimated === true).length;
  if (estimated > doubtfulEstimatedReads) why.push({ code: 'billsManyEstimated', values: { estimated } });
  // typical-year temperatures alone widen, they do not spoil a fit that follows them well
  const doubts = why.filter((w) => w.code !== 'billsTypicalYear');
  return { verdict: doubts.length > 0 ? 'doubtful' : 'accept', why };
}

/** Mean of the monthly temperatures over the days of a period [F]. */
function periodMeanF(bill: Bill, monthMeanF: readonly number[]): number {
  const first = dayNumber(bill.fromDate) ?? 0;
  const days = billDays(bill);
  let sum = 0;
  for (let day = first; day < first + days; day += 1) sum += monthMeanF[monthOfDay(day)] ?? 0;
  return sum / days;
}
