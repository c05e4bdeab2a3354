import procedure from '../diagnostics/healthy-unit/data/test-procedure.json';
import type { CompressorStep } from '../diagnostics/healthy-unit/run-steps';
import { findRoot } from '../math/brent';
import { heatingInBin, heatingStepsOf } from './bin-means';
import type { BalancePoint } from './energy-result';
import { heatingLoadBtuh } from './house-load';
import type { LossRatios } from './loss-ratios';
import { heatingSteps, type UnitBins } from './unit-bins';
import type { YearContext } from './year-context';

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
  const points: BalancePoint[] = [];
  bins.binF.forEach((outdoorF, bin) => {
    const hour = heatingInBin(bins, bin, ratios, context);
    const hours = hoursOfBin(context.monthBinHours, bins.binF.length, bin);
    if (hour.loadBtuh > 0 && hours > 0) {
      points.push({
        outdoorF,
        loadBtuh: hour.loadBtuh,
        capacityBtuh: mostBtuh(bins.heating[bin] ?? [], outdoorF, ratios, context),
        stripBtuh: hour.stripBtuh,
        ...(bins.furnace === undefined ? {} : { furnaceBtuh: hour.furnaceBtuh }),
        hours,
      });
    }
  });
  return points;
}

/**
 * Outdoor temperature below which the compressor alone no longer carries the house.
 *
 * @returns [F]; the cut-out or switch-over if the compressor carries everything down to it; undefined if it never does or the unit
 *   does not heat
 * Check: tests/energy/balance-points.test.ts
 */
export function balancePointF(bins: UnitBins, ratios: LossRatios, context: YearContext): number | undefined {
  const { unit } = bins;
  if (!context.heats || unit.heating === undefined) return undefined;
  const { load } = context;
  const lowestF = Math.max(unit.cutOutF, bins.furnace?.switchOverF ?? unit.cutOutF);
  const spareBtuh = (outdoorF: number): number => {
    const at = Math.max(outdoorF, lowestF + JUST_ABOVE_FD);
    return mostBtuh(heatingSteps(unit, at, load), at, ratios, context) - heatingLoadBtuh(load, outdoorF);
  };
  if (load.heatingBalanceF <= lowestF) return undefined;
  if (spareBtuh(lowestF) >= 0) return lowestF;
  const root = findRoot(spareBtuh, lowestF, load.heatingBalanceF, 0.001);
  return root.kind === 'root' ? root.x : undefined;
}

/** At the cut-out itself the compressor rests; the line ends just above it. */
const JUST_ABOVE_FD = 1e-6;

/** Net capacity at the highest speed, loss applied; 0 where the compressor rests [Btu/h]. */
function mostBtuh(
  steps: readonly CompressorStep[],
  outdoorF: number,
  ratios: LossRatios,
  context: YearContext,
): number {
  const top = heatingStepsOf(steps, outdoorF, ratios, context).at(-1);
  return top === undefined ? 0 : top.grossBtuh + procedure.btuhPerW.value * top.blowerW;
}

function hoursOfBin(monthBinHours: Float64Array, bins: number, bin: number): number {
  let hours = 0;
  for (let i = bin; i < monthBinHours.length; i += bins) hours += monthBinHours[i] ?? 0;
  return hours;
}
