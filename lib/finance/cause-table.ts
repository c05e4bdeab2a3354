import { Z_10_90 } from '../math/estimate';
import type { CauseId } from '../visit/cause';
import type { ComparisonModel } from './comparison-model';
import { expectedYearsIn } from './expected-years';
import { usdOf } from './money';
import type { MoneyDraw } from './money-draw';
import { capitalFlows, type PricedChoice } from './priced-choice';
import type { Moved } from './range';
import { drawFor, plannedYearOf, successorOf } from './successor';
import { type World, worldsByCause } from './worlds';
import { yearRows } from './year-rows';

/** Total of a choice under one cause, and the energy of its first year. */
export type CauseOutcome = {
  readonly cause?: CauseId;
  readonly frac: number;
  /** Chance that the choice cures it. */
  readonly curedFrac: number;
  /** Over cured and not cured [USD]. */
  readonly totalTodayUsd: number;
  readonly ifCured: { readonly totalTodayUsd: number; readonly energyUsd: number };
  readonly ifNot: { readonly totalTodayUsd: number; readonly energyUsd: number };
};

/**
 * Likely total of every choice under every cause that may be at work.
 *
 * @returns by choice in the model's order, then by cause in the order of the chances; the mean over the causes is the
 *   likely total
 * Check: tests/finance/cause-table.test.ts
 */
export function causeTable(model: ComparisonModel, draw: MoneyDraw = model.likely): CauseOutcome[][] {
  return model.choices.map((priced) => causeOutcomes(model, priced, draw));
}

function causeOutcomes(model: ComparisonModel, priced: PricedChoice, likely: MoneyDraw): CauseOutcome[] {
  const { choice } = priced;
  const years = model.basis.stayYears;
  const successor = successorOf(choice, model.choices, model.fallback);
  const draw = drawFor(likely, successor);
  const planned = plannedYearOf(choice, years);
  const flows = capitalFlows(priced, years);
  const known = new Map<string, number>();
  const totalOf = (world: World): number => {
    const key = `${world.hazardRatio} ${world.energyUsd}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const sure = [{ ...world, weightFrac: 1 }];
    const expected = expectedYearsIn(sure, draw, years, successor.scenarioId, planned);
    const rows = yearRows(expected, flows, usdOf(priced.netPrice), draw, model.basis.timing);
    const total = rows.at(-1)?.cumulativePresentValueUsd ?? 0;
    known.set(key, total);
    return total;
  };
  return worldsByCause(choice, draw, model.chances).map(({ cause, frac, curedFrac, cured, uncured }) => {
    const ifNot = { totalTodayUsd: totalOf(uncured), energyUsd: uncured.energyUsd };
    const ifCured =
      cured === undefined ? ifNot : { totalTodayUsd: totalOf(cured), energyUsd: cured.energyUsd };
    const totalTodayUsd = curedFrac * ifCured.totalTodayUsd + (1 - curedFrac) * ifNot.totalTodayUsd;
    return { ...(cause === undefined ? {} : { cause }), frac, curedFrac, totalTodayUsd, ifCured, ifNot };
  });
}

/** What is asked of a choice that has cured or not; 0 for what is held against nothing. */
type Part = (outcome: CauseOutcome['ifCured']) => number;
export const totalPart: Part = (o) => o.totalTodayUsd;
export const energyPart: Part = (o) => o.energyUsd;

/**
 * How far the cause at work, and whether repairs cure it, move a result or the difference of two: as if by an input
 * with these ends, so that it joins the range of the others. Both choices face the same cause and the same luck.
 *
 * @param own   outcomes of a choice by cause
 * @param base  outcomes of the one it is held against; left out = the result itself
 * @returns ends at 1.28 times the root of twice the mean square on either side of the mean, which are the 10 and 90 %
 *   points where the result is normal
 * Source: two-sided deviation; computed
 * Check: tests/finance/cause-table.test.ts
 */
export function causeMove(
  own: readonly CauseOutcome[],
  base: readonly CauseOutcome[] | undefined,
  part: Part,
): Moved {
  const cases = own.flatMap((o, i) => casesOf(o, base?.[i], part));
  const mean = cases.reduce((sum, c) => sum + c.frac * c.value, 0);
  const side = (sign: 1 | -1) =>
    Math.sqrt(2 * cases.reduce((sum, c) => sum + c.frac * Math.max(0, sign * (c.value - mean)) ** 2, 0));
  return { input: 'causeAtWork', low: mean - Z_10_90 * side(-1), high: mean + Z_10_90 * side(1) };
}

type Case = { readonly frac: number; readonly value: number };

/** Luck cut where either repair begins to fail: a repair cures where the luck lies below its chance. */
function casesOf(own: CauseOutcome, base: CauseOutcome | undefined, part: Part): Case[] {
  const cuts = [0, ...new Set([own.curedFrac, base?.curedFrac ?? 0]), 1].sort((a, b) => a - b);
  const at = (o: CauseOutcome, luck: number) => part(luck < o.curedFrac ? o.ifCured : o.ifNot);
  return cuts.slice(1).flatMap((to, k) => {
    const from = cuts[k] ?? 0;
    if (to <= from) return [];
    const luck = (from + to) / 2;
    return [
      { frac: own.frac * (to - from), value: at(own, luck) - (base === undefined ? 0 : at(base, luck)) },
    ];
  });
}
