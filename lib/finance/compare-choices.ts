import { type Estimate, estimate, exactEstimate } from '../math/estimate';
import { invariant } from '../math/invariant';
import { repairs } from '../visit/choice';
import type { Saying } from '../visit/wording';
import { type CauseOutcome, causeMove, causeTable, energyPart, totalPart } from './cause-table';
import type { ComparedChoice, Comparison, FlipMap, RulesOfThumb } from './comparison';
import {
  type ComparisonInput,
  type ComparisonModel,
  comparisonModel,
  type Outcome,
  outcomeOf,
} from './comparison-model';
import { defaultPriceBook } from './default-price-book';
import { firstYearEnergyUsd } from './expected-years';
import { flipMap, investigate } from './investigate';
import { equivalentPerYear } from './measures';
import { measuresAgainst, measuresOfBase } from './measures-against';
import { moneyText, usdOf } from './money';
import { balanceAtEnd, type PricedChoice } from './priced-choice';
import { quotedTotal } from './quoted-total';
import { driversOf, type Moved, rangeOf } from './range';
import { breakEvenPrice, lowestByStay, lowestIndex, recommend } from './recommend';
import { replaceLater } from './replace-later';
import { rulesOfThumb, thumbDiffers } from './rules-of-thumb';

/** Outcomes of all choices: with everything likely, with each input at its ends, and under each cause. */
type Grid = {
  readonly causes: readonly (readonly CauseOutcome[])[];
  readonly likely: readonly Outcome[];
  readonly moved: readonly {
    readonly input: string;
    readonly low: readonly Outcome[];
    readonly high: readonly Outcome[];
    readonly stance: true | undefined;
  }[];
};

/**
 * Leave as is, repairs and replacements on one time line in present value.
 *
 * @param input  visit, findings, yearly energy with a scenario for each choice
 * @returns totals, measures and loans of every choice with their ranges, the recommendation and what would change
 *   it; every number is finite
 * Conventions of the cash flows: see `yearRows`; survival: see `expectedStay`; ranges: see `rangeOf`.
 * Source: NIST Handbook 135 and 10 CFR 436 for the measures; parts cite their own sources
 * Check: tests/finance/compare-choices.test.ts
 */
export function compareChoices(input: ComparisonInput): Comparison {
  const model = comparisonModel(input);
  const grid = gridOf(model);
  const totals = grid.likely.map((o) => o.totalTodayUsd);
  const best = lowestIndex(model, totals);
  const overLowest = model.choices.map((_, i) => differenceRange(grid, i, best));
  const byStay = lowestByStay(model);
  const { aboutTheSameIds, recommendation } = recommend(model, totals, overLowest, byStay);
  const { basis, likely } = model;
  return {
    baseDate: basis.baseDate,
    stayYears: basis.stayYears,
    discountFracPerYear: likely.values.discountFracPerYear,
    inflationFracPerYear: likely.values.inflationFracPerYear,
    electricityEscalationFracPerYear: likely.values.electricityEscalationFracPerYear,
    timing: basis.timing,
    residual: basis.residual,
    choices: model.choices.map((_, i) => comparedChoice(model, grid, i, overLowest[i] ?? exactEstimate(0))),
    lowestTotalId: model.choices[best]?.choice.id ?? '',
    aboutTheSameIds,
    lowestByStay: byStay,
    ...later(model, totals),
    investigate: investigate({
      model,
      outcomes: grid.causes,
      causes: input.findings.causes,
      priceBook: input.priceBook ?? defaultPriceBook,
      ...(input.visit.unit.refrigerant === undefined ? {} : { refrigerant: input.visit.unit.refrigerant }),
    }),
    ...mapOf(flipMap(model, totals)),
    recommendation,
    notes: model.notes,
  };
}

function mapOf(map: FlipMap | undefined): Pick<Comparison, 'flipMap'> {
  return map === undefined ? {} : { flipMap: map };
}

function later(model: ComparisonModel, totals: readonly number[]): Pick<Comparison, 'replaceLater'> {
  const quoted = model.choices
    .flatMap((c, i) => (c.choice.kind === 'replace' && c.price.gt(0) ? [{ c, total: totals[i] ?? 0 }] : []))
    .sort((a, b) => a.total - b.total)[0];
  return quoted === undefined ? {} : { replaceLater: replaceLater(model, quoted.c) };
}

function gridOf(model: ComparisonModel): Grid {
  const all = (draw: ComparisonModel['likely']) => model.choices.map((c) => outcomeOf(model, c, draw));
  return {
    causes: causeTable(model),
    likely: all(model.likely),
    moved: model.deviations.map(({ input, low, high, stance }) => ({
      input,
      low: all(low),
      high: all(high),
      stance,
    })),
  };
}

/** A result of one choice at every end of every input. */
function movedOf(grid: Grid, of: (outcomes: readonly Outcome[]) => number): Moved[] {
  return grid.moved.map(({ input, low, high, stance }) => ({ input, low: of(low), high: of(high), stance }));
}

/** Both choices move together: the same loss, the same prices. */
function differenceRange(grid: Grid, i: number, base: number): Estimate {
  if (i === base) return exactEstimate(0);
  const difference = (o: readonly Outcome[]) => (o[i]?.totalTodayUsd ?? 0) - (o[base]?.totalTodayUsd ?? 0);
  const byCause = causeMove(grid.causes[i] ?? [], grid.causes[base], totalPart);
  return rangeOf(difference(grid.likely), [...movedOf(grid, difference), byCause]);
}

function comparedChoice(
  model: ComparisonModel,
  grid: Grid,
  i: number,
  overLowestUsd: Estimate,
): ComparedChoice {
  const priced = itemAt(model.choices, i);
  const outcome = itemAt(grid.likely, i);
  const base = { priced: itemAt(model.choices, 0), outcome: itemAt(grid.likely, 0) };
  const { choice } = priced;
  const { basis, likely } = model;
  const total = (o: readonly Outcome[]) => o[i]?.totalTodayUsd ?? 0;
  const saving = (o: readonly Outcome[]) => (o[0]?.totalTodayUsd ?? 0) - total(o);
  const own = itemAt(grid.causes, i);
  const causeOfTotal = causeMove(own, undefined, totalPart);
  const causeOfSaving = causeMove(itemAt(grid.causes, 0), own, totalPart);
  const moved = [...movedOf(grid, i === 0 ? total : saving), i === 0 ? causeOfTotal : causeOfSaving];
  const perYearUsd = equivalentPerYear(
    outcome.totalTodayUsd,
    likely.values.discountFracPerYear,
    basis.stayYears,
  );
  const totals = grid.likely.map((o) => o.totalTodayUsd);
  const breakEven = repairs(choice) ? breakEvenPrice(model, i, totals) : undefined;
  return {
    id: choice.id,
    kind: choice.kind,
    name: choice.name,
    priceUsd: moneyText(priced.price),
    rebateUsd: moneyText(priced.rebate),
    upFrontUsd: moneyText(priced.upFront),
    ...(priced.loan === undefined ? {} : { loan: priced.loan.quote }),
    waysToPay: priced.waysToPay,
    energySavedPerMonthUsd: energySavedPerMonth(model, priced),
    daysWithout: daysWithout(grid, i),
    yearlyEnergyUsd: energyRange(model, priced, own),
    failsWithinStayFrac: failureRange(grid, i),
    totalTodayUsd: rangeOf(outcome.totalTodayUsd, [...movedOf(grid, total), causeOfTotal]),
    totalTodayQuoted: moneyText(
      quotedTotal(outcome.expected, outcome.flows, priced.netPrice, outcome.draw, basis.timing),
    ),
    perYearUsd,
    perMonthUsd: perYearUsd / 12,
    netSavingUsd: i === 0 ? exactEstimate(0) : rangeOf(saving(grid.likely), moved),
    overLowestUsd,
    priced: priced.priced,
    ...(repairs(choice) && priced.priced ? { rulesOfThumb: thumbRules(model, grid, priced, own) } : {}),
    ...(breakEven === undefined || breakEven <= 0 ? {} : { breakEvenPriceUsd: breakEven }),
    drivers: driversOf(i === 0 ? total(grid.likely) : saving(grid.likely), moved),
    ...(i === 0 ? measuresOfBase : measuresAgainst(model, base, { priced, outcome })),
    rows: outcome.rows,
    notes: choiceNotes(model, priced, outcome, own),
  };
}

function energyRange(
  model: ComparisonModel,
  priced: PricedChoice,
  causes: readonly CauseOutcome[],
): Estimate {
  const cost = (draw: ComparisonModel['likely']) => firstYearEnergyUsd(priced.choice, draw, model.chances);
  const moved = model.deviations.map(({ input, low, high }) => ({ input, low: cost(low), high: cost(high) }));
  const { low, likely, high } = rangeOf(cost(model.likely), [
    ...moved,
    causeMove(causes, undefined, energyPart),
  ]);
  return estimate(Math.max(0, low), likely, high);
}

function thumbRules(
  model: ComparisonModel,
  grid: Grid,
  priced: PricedChoice,
  causes: readonly CauseOutcome[],
): RulesOfThumb {
  const { likely, fallback, basis } = model;
  const rules = rulesOfThumb(likely.ageYears, usdOf(priced.price), likely.replacementUsd);
  const best =
    model.choices[
      lowestIndex(
        model,
        grid.likely.map((o) => o.totalTodayUsd),
      )
    ];
  const fullSays = best?.choice.kind === 'replace' ? 'replace' : 'repair';
  const unseen = {
    fullSays,
    choice: priced.choice.name,
    stayYears: basis.stayYears,
    curesFrac: causes.reduce((sum, c) => sum + c.frac * c.curedFrac, 0),
    extraEnergyUsdPerYear:
      firstYearEnergyUsd(priced.choice, likely, model.chances) - (likely.energyUsd[fallback.scenarioId] ?? 0),
  } as const;
  return { ...rules, fullSays, differs: thumbDiffers(rules, unseen) };
}

function energySavedPerMonth(model: ComparisonModel, priced: PricedChoice): number {
  const of = (p: PricedChoice) => firstYearEnergyUsd(p.choice, model.likely, model.chances);
  return (of(itemAt(model.choices, 0)) - of(priced)) / 12;
}

/** Failures of whichever unit runs, each with its days without. */
function daysWithout(grid: Grid, i: number): Estimate {
  const days = (o: readonly Outcome[]) => {
    const outcome = o[i];
    const fails = outcome?.expected.reduce((sum, year) => sum + year.failsFrac, 0) ?? 0;
    return fails * (outcome?.draw.values.daysWithoutPerFailure ?? 0);
  };
  const { low, likely, high } = rangeOf(days(grid.likely), movedOf(grid, days));
  return estimate(Math.max(0, low), likely, high);
}

function failureRange(grid: Grid, i: number): Estimate {
  const chance = (o: readonly Outcome[]) => o[i]?.rows.at(-1)?.failedByFrac ?? 0;
  const { low, likely, high } = rangeOf(chance(grid.likely), movedOf(grid, chance));
  return estimate(Math.max(0, low), likely, Math.min(1, high));
}

function choiceNotes(
  model: ComparisonModel,
  priced: PricedChoice,
  outcome: Outcome,
  causes: readonly CauseOutcome[],
): Saying[] {
  const { choice } = priced;
  const { stayYears } = model.basis;
  const notes = [...priced.notes];
  const owed = balanceAtEnd(priced, stayYears);
  if (owed.gt(0))
    notes.push({ code: 'loanOutlastsStay', values: { years: stayYears, balanceUsd: moneyText(owed) } });
  const left = -(outcome.rows.at(-1)?.residualUsd ?? 0);
  if (left >= 1)
    notes.push({ code: 'valueLeftCounted', values: { years: stayYears, leftUsd: Math.round(left) } });
  if (repairs(choice) && choice.shownByRun === undefined) {
    const percent = Math.round(100 * causes.reduce((sum, c) => sum + c.frac * c.curedFrac, 0));
    notes.push({ code: 'repairMayNotCure', values: { choice: choice.name, percent } });
  }
  if (choice.kind === 'leave') {
    notes.push({
      code: 'replacedWhenItFails',
      values: { priceUsd: Math.round(model.likely.replacementUsd) },
    });
  }
  return notes;
}

function itemAt<T>(list: readonly T[], i: number): T {
  const item = list[i];
  invariant(item !== undefined, `no item ${i} of ${list.length}`);
  return item;
}
