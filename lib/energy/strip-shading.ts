import type { BalancePoint } from './energy-result';

/** Heat between what a unit gives and what the house asks for, at one outdoor temperature. */
export type ShadedGap = {
  readonly outdoorF: number;
  readonly fromBtuh: number;
  readonly toBtuh: number;
};

/**
 * Where the house asks for more than the unit gives: the area that strip heat (or a furnace) must fill.
 *
 * @param balance  rising in temperature, as `balancePoints` gives it
 * @returns the same temperatures and each crossing of the two lines, drawn straight from point to point; `fromBtuh`
 *   equals `toBtuh` where nothing is missing
 * Check: tests/energy/strip-shading.test.ts
 */
export function stripShading(balance: readonly BalancePoint[]): ShadedGap[] {
  return balance.flatMap((point, i) => {
    const own = gapAt(point);
    const next = balance[i + 1];
    if (next === undefined) return [own];
    const missing = point.loadBtuh - point.capacityBtuh;
    const missingNext = next.loadBtuh - next.capacityBtuh;
    if (missing * missingNext >= 0) return [own];
    const share = missing / (missing - missingNext);
    const atBtuh = point.loadBtuh + share * (next.loadBtuh - point.loadBtuh);
    const outdoorF = point.outdoorF + share * (next.outdoorF - point.outdoorF);
    return [own, { outdoorF, fromBtuh: atBtuh, toBtuh: atBtuh }];
  });
}

function gapAt({ outdoorF, loadBtuh, capacityBtuh }: BalancePoint): ShadedGap {
  return { outdoorF, fromBtuh: Math.min(capacityBtuh, loadBtuh), toBtuh: loadBtuh };
}

/**
 * Where the shading is thickest, as a place for its name.
 *
 * @returns middle of the widest gap; undefined where nothing is missing
 * Check: tests/energy/strip-shading.test.ts
 */
export function widestGap(
  shading: readonly ShadedGap[],
): { readonly outdoorF: number; readonly atBtuh: number } | undefined {
  const widest = shading.reduce<ShadedGap | undefined>(
    (best, gap) => (best === undefined || missingOf(gap) > missingOf(best) ? gap : best),
    undefined,
  );
  if (widest === undefined || missingOf(widest) <= 0) return undefined;
  return { outdoorF: widest.outdoorF, atBtuh: (widest.fromBtuh + widest.toBtuh) / 2 };
}

function missingOf(gap: ShadedGap): number {
  return gap.toBtuh - gap.fromBtuh;
}
