import { findRoot } from '../../math/brent';
import type { Saying } from '../../visit/wording';
import rules from '../data/bill-rules.json';
import type { HouseLoad } from '../house-load';
import type { LossRatios } from '../loss-ratios';
import type { UnitBins } from '../unit-bins';
import { unitTotals } from '../unit-year';
import type { HouseModel, YearContext } from '../year-context';
import type { BillUse } from './bill-use';
import type { Interval } from './change-point-model';

export type BilledLoad = { readonly load: HouseLoad; readonly notes: readonly Saying[] };

/**
 * Load lines scaled so that the unit as found uses just what the bills say in a typical year. No saving can then
 * exceed what is spent.
 *
 * @param use     split of the bills; `unusable` leaves the load as it is
 * @param load    load lines from floor area or unit size, whose balance temperatures give way to fitted ones
 * @param bins    performance of the existing unit
 * @param ratios  its loss as found
 * @param context hours, duty, prices; its own load is not used
 * @returns the scaled load with basis `bill`, and what could not be matched
 * Bills that ask for more than `scale.most` of data/bill-rules.json: held there, so less than the bills is used; for
 * less than `scale.least`: taken, with a note.
 * Check: tests/energy/bills/load-from-bills.test.ts
 */
export function loadFromBills(
  use: BillUse,
  load: HouseLoad,
  bins: UnitBins,
  ratios: LossRatios,
  context: Omit<YearContext, 'load'>,
): BilledLoad {
  if (use.fit === undefined || use.verdict === 'unusable') return { load, notes: [{ code: 'billsNotUsed' }] };
  const notes: Saying[] = [];
  const balanced = withBalances(load, use);
  const kwhOf = (trial: HouseLoad): number => unitTotals(bins, ratios, { ...context, load: trial }).totalKwh;
  const standby = kwhOf({ ...balanced, heatingBtuhPerF: 0, coolingBtuhPerF: 0 });
  const heating = scaled(
    use.heatingKwhPerYear,
    balanced.heatingBtuhPerF,
    'heating',
    notes,
    (slope) => kwhOf({ ...balanced, heatingBtuhPerF: slope, coolingBtuhPerF: 0 }) - standby,
  );
  const cooling = scaled(
    use.coolingKwhPerYear,
    balanced.coolingBtuhPerF,
    'cooling',
    notes,
    (slope) => kwhOf({ ...balanced, heatingBtuhPerF: 0, coolingBtuhPerF: slope }) - standby,
  );
  const fits = `CV(RMSE) ${Math.round(use.fit.cvRmseFrac * 1000) / 10} %, ${use.fit.n} periods, ${use.fit.kind}`;
  return {
    load: {
      ...balanced,
      heatingBtuhPerF: context.heats ? heating : balanced.heatingBtuhPerF,
      coolingBtuhPerF: cooling,
      basis: 'bill',
      source: `Electricity bills by change-point regression (${fits})`,
    },
    notes,
  };
}

/**
 * The billed load at the ends of what the fit leaves open: each slope by its own interval, 10 and 90 % points.
 *
 * @param use    split of the bills, usable
 * @param model  house with the load scaled to the bills
 * @returns less and more; more never asks for heating and cooling beyond all that was billed
 * Check: tests/energy/bills/load-from-bills.test.ts
 */
export function billedEnds(use: BillUse, model: HouseModel): { low: HouseModel; high: HouseModel } {
  const { fit, heatingKwhPerYear, coolingKwhPerYear, baseKwhPerYear } = use;
  const weather = heatingKwhPerYear + coolingKwhPerYear;
  const most = weather > 0 ? Math.min(1, Math.max(0, baseKwhPerYear) / weather) : 0;
  const half = (slope: number | undefined, interval: Interval | undefined): number => {
    if (slope === undefined || slope <= 0 || interval === undefined) return 0;
    const reach = (interval.high - interval.low) / 2 / slope;
    return Math.min(most, reach * rules.intervalTo80Frac.value);
  };
  const heating = half(fit?.heatingKwhPerDayF, fit?.intervals.heatingKwhPerDayF);
  const cooling = half(fit?.coolingKwhPerDayF, fit?.intervals.coolingKwhPerDayF);
  const parts = [heating * heatingKwhPerYear, cooling * coolingKwhPerYear];
  const sum = parts.reduce((a, b) => a + b, 0);
  const share = sum > 0 ? Math.hypot(...parts) / sum : 1;
  const at = (sign: 1 | -1): HouseModel => ({
    ...model,
    load: {
      ...model.load,
      heatingBtuhPerF: model.load.heatingBtuhPerF * (1 + sign * share * heating),
      coolingBtuhPerF: model.load.coolingBtuhPerF * (1 + sign * share * cooling),
    },
  });
  return { low: at(-1), high: at(1) };
}

function withBalances(load: HouseLoad, use: BillUse): HouseLoad {
  const { heatingLowF, heatingHighF, coolingLowF, coolingHighF } = rules.changeAsBalance;
  const heating = use.fit?.heatingChangeF;
  const cooling = use.fit?.coolingChangeF;
  return {
    ...load,
    ...(heating !== undefined && heating >= heatingLowF && heating <= heatingHighF
      ? { heatingBalanceF: heating }
      : {}),
    ...(cooling !== undefined && cooling >= coolingLowF && cooling <= coolingHighF
      ? { coolingBalanceF: cooling }
      : {}),
  };
}

/** Slope at which the modelled use equals the billed use; a load far from the model's is taken, with a note. */
function scaled(
  billedKwh: number,
  slope: number,
  mode: 'heating' | 'cooling',
  notes: Saying[],
  kwhAt: (slope: number) => number,
): number {
  const { least, most } = rules.scale;
  const miss = (factor: number): number => kwhAt(slope * factor) - billedKwh;
  const root = findRoot(miss, 0, most, 1e-9);
  // no root: the bills hold more than the unit can use
  const factor = root.kind === 'root' ? root.x : most;
  if (factor < least) notes.push({ code: 'billsLoadSmall', values: { mode } });
  if (root.kind !== 'root') notes.push({ code: 'billsLoadLarge', values: { mode } });
  return slope * factor;
}
