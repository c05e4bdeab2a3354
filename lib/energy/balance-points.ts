import procedure from '../diagnostics/healthy-unit/data/test-procedure.json';
import { steadyState } from '../diagnostics/healthy-unit/steady-state';
import { findRoot } from '../math/brent';
import type { BalancePoint } from './energy-result';
import { heatingLoadBtuh } from './house-load';
import type { UnitBins } from './unit-bins';
import { heatingInBin, type LossRatios, type YearContext } from './unit-year';

/**
 * Points of the balance chart: what the house asks for and what the unit gives in each bin with heating.
 *
 * @param bins     full-speed performance
 * @param ratios   loss
 * @param context  house, hours; without heating there are no points
 * @returns rising in temperature; `capacityBtuh` is what the compressor could give (0 below its cut-out),
 *   `stripBtuh` what strips do give
 * Check: tests/energy/balance-points.test.ts
 */
export function balancePoints(bins: UnitBins, ratios: LossRatios, context: YearContext): BalancePoint[] {
  if (!context.heats) return [];
  const blowerBtuh = procedure.btuhPerW.value * bins.unit.blowerW;
  const points: BalancePoint[] = [];
  bins.binF.forEach((outdoorF, bin) => {
    const hour = heatingInBin(bins, bin, ratios, context.load);
    const hours = hoursOfBin(context.monthBinHours, bins.binF.length, bin);
    if (hour.loadBtuh > 0 && hours > 0) {
      points.push({
        outdoorF,
        loadBtuh: hour.loadBtuh,
        capacityBtuh: hour.grossBtuh > 0 ? hour.grossBtuh + blowerBtuh : 0,
        stripBtuh: hour.stripBtuh,
        hours,
      });
    }
  });
  return points;
}

/**
 * Outdoor temperature below which the compressor alone no longer carries the house.
 *
 * @returns [F]; the cut-out if the compressor carries everything down to it; undefined if it never does or the unit
 *   does not heat
 * Check: tests/energy/balance-points.test.ts
 */
export function balancePointF(bins: UnitBins, ratios: LossRatios, context: YearContext): number | undefined {
  const { unit } = bins;
  if (!context.heats || unit.heating === undefined) return undefined;
  const { load } = context;
  const spareBtuh = (outdoorF: number): number => {
    const at = steadyState(unit, { mode: 'heating', outdoorF, indoorF: load.heatingRoomF, frost: 'smooth' });
    const blowerBtuh = at.netCapacityBtuh - at.capacityBtuh;
    return at.capacityBtuh * ratios.heatingCapacity + blowerBtuh - heatingLoadBtuh(load, outdoorF);
  };
  if (load.heatingBalanceF <= unit.cutOutF) return undefined;
  if (spareBtuh(unit.cutOutF) >= 0) return unit.cutOutF;
  const root = findRoot(spareBtuh, unit.cutOutF, load.heatingBalanceF, 0.001);
  return root.kind === 'root' ? root.x : undefined;
}

function hoursOfBin(monthBinHours: Float64Array, bins: number, bin: number): number {
  let hours = 0;
  for (let i = bin; i < monthBinHours.length; i += bins) hours += monthBinHours[i] ?? 0;
  return hours;
}
