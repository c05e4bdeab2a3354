import type { EnergyResult } from '@/lib/energy/energy-result';
import type { EnergySurfaces } from '@/lib/energy/energy-surface';
import type { ComparisonModel } from '@/lib/finance/comparison-model';
import { simulateTotals } from '@/lib/finance/simulate';
import { drawColumns } from '@/lib/finance/simulation-columns';

/**
 * Value of knowing the cause before choosing, from draws grouped by their cause: nothing of `value-of-information` is
 * used. The standard error is that of what the best choice costs above another, at its widest: both face the same draws.
 */
export function knowingFromDraws(
  model: ComparisonModel,
  energy: EnergyResult,
  draws: number,
  seed: number,
  surfaces?: EnergySurfaces,
) {
  const totals = simulateTotals(model, energy, draws, seed, surfaces);
  const { cause } = drawColumns(model, energy, draws, seed, surfaces);
  const ranked = model.choices.flatMap((c, i) => (c.priced ? [i] : []));
  const meanOf = (i: number, place?: number): number => {
    let sum = 0;
    let count = 0;
    for (const [n, usd] of (totals[i] ?? new Float64Array()).entries()) {
      if (place !== undefined && cause[n] !== place) continue;
      sum += usd;
      count += 1;
    }
    return sum / count;
  };
  const lowest = (place?: number) => Math.min(...ranked.map((i) => meanOf(i, place)));
  // shares of the draws and not chances, so that the causes' means add up to the mean of all
  const knowing = model.chances.causes.reduce((sum, _, place) => {
    const share = cause.filter((at) => at === place).length / draws;
    return share > 0 ? sum + share * lowest(place) : sum;
  }, 0);
  const unknowing = lowest();
  const best = ranked.find((i) => meanOf(i) === unknowing) ?? 0;
  const variances = ranked.map((i) => {
    const above = (totals[i] ?? new Float64Array()).map((usd, n) => usd - (totals[best]?.[n] ?? Number.NaN));
    const mean = above.reduce((sum, usd) => sum + usd, 0) / draws;
    return above.reduce((sum, usd) => sum + (usd - mean) ** 2, 0) / draws;
  });
  return { valueUsd: unknowing - knowing, standardErrorUsd: Math.sqrt(Math.max(...variances) / draws) };
}
