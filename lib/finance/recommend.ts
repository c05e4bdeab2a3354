import { type Estimate, Z_10_90 } from '../math/estimate';
import { normalQuantile } from '../math/normal';
import { repairs } from '../visit/choice';
import type { Saying } from '../visit/wording';
import type { Comparison } from './comparison';
import { type ComparisonModel, capitalTodayUsd, outcomeOf, totalsByStay } from './comparison-model';
import conventions from './data/conventions.json';

/** Where the 10 % end lies, as a multiple of the middle, when the chance is just enough. */
const LEAST_LOW = 1 - Z_10_90 / normalQuantile(conventions.values.leastChanceToAdviseFrac.value);

type StayLowest = Comparison['lowestByStay'][number];

/** Position of the lowest total among choices that have a price; ties go to the earlier one. */
export function lowestIndex(model: ComparisonModel, totals: readonly number[]): number {
  let best = 0;
  totals.forEach((total, i) => {
    if (model.choices[i]?.priced === true && total < (totals[best] ?? 0)) best = i;
  });
  return best;
}

/**
 * Which choice costs least for each length of stay, everything else likely: with the value left in a newer unit
 * counted as the visit says, and with none counted, since a buyer of the house may pay nothing for it.
 *
 * Check: tests/finance/recommend.test.ts
 */
export function lowestByStay(model: ComparisonModel): StayLowest[] {
  const longest = conventions.values.longestStayYears.value;
  const idOf = (totals: readonly number[]) => model.choices[lowestIndex(model, totals)]?.choice.id ?? '';
  return totalsByStay(model, longest).map((totals, k) => ({
    stayYears: k + 1,
    choiceId: idOf(totals[model.basis.residual]),
    choiceIdWithoutValueLeft: idOf(totals.none),
  }));
}

/**
 * Cash price, after rebates, at which a choice would cost as much as the cheapest of the others.
 *
 * @param index   position of the choice
 * @param totals  likely totals of all choices
 * @returns price [USD]; negative when it would not cost least even for nothing; `undefined` when it stands alone
 * Exact, since the total moves one dollar with each dollar of a cash price (repairs leave no value behind).
 * Check: tests/finance/recommend.test.ts
 */
export function breakEvenPrice(
  model: ComparisonModel,
  index: number,
  totals: readonly number[],
): number | undefined {
  const others = totals.filter((_, i) => i !== index && model.choices[i]?.priced === true);
  const priced = model.choices[index];
  if (priced === undefined || others.length === 0) return undefined;
  const d = model.likely.values.discountFracPerYear;
  const { flows } = outcomeOf(model, priced, model.likely);
  const capital = capitalTodayUsd(flows, d);
  return Math.min(...others) - ((totals[index] ?? 0) - capital);
}

/**
 * Recommendation on money alone: the lowest total, unless others are about the same, or another is lowest when a
 * newer unit leaves no value behind; then none.
 *
 * @param overLowest  range of what each choice costs more than the lowest
 * @returns choice if any, the reason, and what would change it; where choices are about the same, which is lowest on
 *   the likely numbers, and only changes to that, worded so
 * Check: tests/finance/recommend.test.ts
 */
export function recommend(
  model: ComparisonModel,
  totals: readonly number[],
  overLowest: readonly Estimate[],
  byStay: readonly StayLowest[],
): { readonly aboutTheSameIds: string[]; readonly recommendation: Comparison['recommendation'] } {
  const best = lowestIndex(model, totals);
  const same = model.choices.flatMap((c, i) =>
    i !== best && c.priced && isAboutTheSame(overLowest[i]) ? [i] : [],
  );
  const idOf = (i: number) => model.choices[i]?.choice.id ?? '';
  const nameOf = (i: number) => model.choices[i]?.choice.name ?? '';
  const years = model.basis.stayYears;
  const wouldChange = [...staySayings(model, byStay), ...priceSayings(model, totals, best)];
  const rivals = model.choices.flatMap((c, i) => (i !== best && c.priced ? [i] : []));
  if (rivals.length === 0) {
    return { aboutTheSameIds: [], recommendation: { reason: { code: 'nothingToCompare' }, wouldChange: [] } };
  }
  if (same.length > 0) {
    const choices = [best, ...same].map(nameOf).join(', ');
    const reason = { code: 'aboutTheSame', values: { choices, years } };
    const lowestOnLikely = { code: 'lowestOnLikely', values: { choice: nameOf(best) } };
    const likely = wouldChange.filter((s) => s.code !== 'anyStay').map(onLikely);
    return {
      aboutTheSameIds: same.map(idOf),
      recommendation: { reason, lowestOnLikely, wouldChange: likely },
    };
  }
  const other = byStay.find((s) => s.stayYears === years)?.choiceIdWithoutValueLeft ?? idOf(best);
  if (other !== idOf(best)) {
    const without = model.choices.find((c) => c.choice.id === other)?.choice.name ?? other;
    const reason = { code: 'dependsOnValueLeft', values: { choice: nameOf(best), without, years } };
    return { aboutTheSameIds: [], recommendation: { reason, wouldChange } };
  }
  const next = rivals.reduce((a, b) => ((totals[b] ?? 0) < (totals[a] ?? 0) ? b : a));
  const leave = model.choices.findIndex((c) => c.choice.kind === 'leave');
  const against = best === leave ? next : leave;
  const differenceUsd = Math.round((totals[against] ?? 0) - (totals[best] ?? 0));
  const atWorstUsd = Math.round(-Math.min(0, ...rivals.map((i) => overLowest[i]?.low ?? 0)));
  const values = { choice: nameOf(best), against: nameOf(against), years, differenceUsd };
  const code = best === leave ? 'leaveCostsLeast' : 'choiceCostsLeast';
  const reason =
    atWorstUsd > 0 ? { code: `${code}.mostly`, values: { ...values, atWorstUsd } } : { code, values };
  return { aboutTheSameIds: [], recommendation: { choiceId: idOf(best), reason, wouldChange } };
}

/** Less than about four chances in five that it costs more than the lowest, read off the 10 % end of its range. */
function isAboutTheSame(over: Estimate | undefined): boolean {
  if (over === undefined) return false;
  return over.low <= over.likely * LEAST_LOW;
}

/** Where ranges overlap nothing is settled: what would change the lowest is said of the likely numbers only. */
function onLikely(saying: Saying): Saying {
  return { ...saying, code: `likely.${saying.code}` };
}

/** Only what holds whether or not a newer unit adds to the price of the house. */
function staySayings(model: ComparisonModel, byStay: readonly StayLowest[]): Saying[] {
  const own = byStay.find((s) => s.stayYears === model.basis.stayYears);
  if (own === undefined || model.choices.length < 2) return [];
  const nameOf = (id: string) => model.choices.find((c) => c.choice.id === id)?.choice.name ?? id;
  const now = own.choiceId;
  const agreed = byStay.filter((s) => s.choiceId === s.choiceIdWithoutValueLeft);
  const shorter = agreed.filter((s) => s.stayYears < own.stayYears && s.choiceId !== now).at(-1);
  const longer = agreed.find((s) => s.stayYears > own.stayYears && s.choiceId !== now);
  const sayings: Saying[] = [];
  if (own.choiceIdWithoutValueLeft !== now) {
    sayings.push({ code: 'withoutValueLeft', values: { choice: nameOf(own.choiceIdWithoutValueLeft) } });
  }
  if (shorter !== undefined) {
    sayings.push({
      code: 'shorterStay',
      values: { years: shorter.stayYears, choice: nameOf(shorter.choiceId) },
    });
  }
  if (longer !== undefined) {
    sayings.push({
      code: 'longerStay',
      values: { years: longer.stayYears, choice: nameOf(longer.choiceId) },
    });
  }
  if (byStay.every((s) => s.choiceId === now && s.choiceIdWithoutValueLeft === now)) {
    sayings.push({ code: 'anyStay', values: { choice: nameOf(now), years: byStay.length } });
  }
  return sayings;
}

function priceSayings(model: ComparisonModel, totals: readonly number[], best: number): Saying[] {
  return model.choices.flatMap((c, i): Saying[] => {
    if (!repairs(c.choice) || !c.priced) return [];
    const price = breakEvenPrice(model, i, totals);
    if (price === undefined) return [];
    const values = { choice: c.choice.name, priceUsd: Math.floor(price) };
    if (i === best) return [{ code: 'repairStaysBelow', values }];
    return price > 0
      ? [{ code: 'repairWouldBelow', values }]
      : [{ code: 'repairNeverLeast', values: { choice: c.choice.name } }];
  });
}
