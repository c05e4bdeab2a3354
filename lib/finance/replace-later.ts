import type { ReplaceLater } from './comparison';
import type { ComparisonModel } from './comparison-model';
import conventions from './data/conventions.json';
import { expectedYears } from './expected-years';
import { money, usdOf } from './money';
import type { MoneyDraw } from './money-draw';
import type { PricedChoice } from './priced-choice';
import { yearRows } from './year-rows';

/**
 * Total in today's money of leaving the unit as it is for k years and then buying a replacement, for every k of the
 * stay; the last entry is "only when it fails". A unit that fails earlier is replaced then by the same new unit, at
 * the out-of-hours premium. Everything is paid in cash. Rebates of today count only when it is bought today.
 *
 * @param model     prepared comparison
 * @param replacement  a replacement with a price
 * @returns totals by k, the lowest, and every k whose total hardly differs from it: a flat minimum is no advice, and
 *   neither is one that stands only with the value left at the end
 * Source: replacement analysis over a finite stay, e.g. Newnan and others, Engineering Economic Analysis, ch. 13, read
 * Check: tests/finance/replace-later.test.ts
 */
export function replaceLater(model: ComparisonModel, replacement: PricedChoice): ReplaceLater {
  const stay = model.basis.stayYears;
  const draw: MoneyDraw = { ...model.likely, replacementUsd: usdOf(replacement.price) };
  const total = (k: number, d: MoneyDraw) =>
    k === 0 ? boughtNow(model, replacement, d) : boughtAfter(model, replacement, d, k);
  const byYear = Array.from({ length: stay + 1 }, (_, k) => ({
    afterYears: k,
    totalTodayUsd: total(k, draw),
    withoutValueLeftUsd: total(k, { ...draw, valueLeftFrac: 0 }),
  }));
  const best = byYear.reduce((a, b) => (b.totalTodayUsd < a.totalTodayUsd ? b : a));
  const bestWithout = byYear.reduce((a, b) => (b.withoutValueLeftUsd < a.withoutValueLeftUsd ? b : a));
  const margin = Math.abs(best.totalTodayUsd) * conventions.values.flatMinimumFrac.value;
  return {
    choiceId: replacement.choice.id,
    byYear,
    bestAfterYears: best.afterYears,
    bestWithoutValueLeft: bestWithout.afterYears,
    aboutTheSameYears: byYear
      .filter((y) => y.totalTodayUsd <= best.totalTodayUsd + margin)
      .map((y) => y.afterYears),
  };
}

function boughtNow(model: ComparisonModel, { choice, netPrice }: PricedChoice, draw: MoneyDraw): number {
  const years = expectedYears(choice, draw, model.basis.stayYears, model.chances, choice.id);
  const usd = usdOf(netPrice);
  const rows = yearRows(
    years,
    [{ kind: 'price', months: 0, amount: netPrice, usd }],
    usd,
    draw,
    model.basis.timing,
  );
  return rows.at(-1)?.cumulativePresentValueUsd ?? 0;
}

function boughtAfter(model: ComparisonModel, { choice }: PricedChoice, draw: MoneyDraw, k: number): number {
  const stay = model.basis.stayYears;
  const leave = model.choices.find((c) => c.choice.kind === 'leave');
  const own = leave?.netPrice ?? money(0);
  const years = expectedYears(
    leave?.choice ?? choice,
    draw,
    stay,
    model.chances,
    choice.id,
    k < stay ? k : undefined,
  );
  const flows = [{ kind: 'price' as const, months: 0, amount: own, usd: usdOf(own) }];
  return yearRows(years, flows, 0, draw, model.basis.timing).at(-1)?.cumulativePresentValueUsd ?? 0;
}
