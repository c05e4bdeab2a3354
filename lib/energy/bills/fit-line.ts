import { type ChangePointFit, expectedKwhPerDay } from './change-point-model';

/**
 * The corners of a fitted line between two temperatures, for drawing it.
 *
 * @param fit    change-point line
 * @param lowF   [F]
 * @param highF  [F], not below `lowF`
 * @returns ends and change points in between, rising in temperature; straight from one to the next
 * Check: tests/energy/bills/fit-line.test.ts
 */
export function fitLine(
  fit: ChangePointFit,
  lowF: number,
  highF: number,
): { readonly meanF: number; readonly kwhPerDay: number }[] {
  const bends = [fit.heatingChangeF, fit.coolingChangeF].filter(
    (f): f is number => f !== undefined && f > lowF && f < highF,
  );
  const corners = [...new Set([lowF, ...bends, highF])].sort((a, b) => a - b);
  return corners.map((meanF) => ({ meanF, kwhPerDay: expectedKwhPerDay(fit, meanF) }));
}
