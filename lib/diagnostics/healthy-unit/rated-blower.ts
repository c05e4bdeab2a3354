import defaults from './data/unit-defaults.json';
import type { Procedure } from './seasonal-rating';

/**
 * Blower power behind a rating: the test procedure's own, not the one in the house.
 *
 * @param mode  which seasonal rating is meant
 * @param rating  procedure, seasonal rating [Btu/Wh] and rated airflow [cfm]
 * @returns [W]
 * Source: data/unit-defaults.json `ratedBlowerWPerCfm`; older read, newer memory and assumption
 * Check: tests/diagnostics/healthy-unit/solve-ratings.test.ts
 */
export function ratedBlowerW(
  mode: 'cooling' | 'heating',
  rating: {
    readonly procedure: Procedure;
    readonly seasonalBtuPerWh: number;
    readonly airflowCfm: number;
  },
): number {
  const row = defaults.ratedBlowerWPerCfm[rating.procedure];
  const [from = 0, to = 1] = mode === 'cooling' ? row.seer : row.hspf;
  const t = Math.min(1, Math.max(0, (rating.seasonalBtuPerWh - from) / (to - from)));
  return (row.below + t * (row.above - row.below)) * rating.airflowCfm;
}
