import type { Findings } from '../diagnostics/findings';
import type { EnergyResult } from '../energy/energy-result';
import type { CauseChances } from '../energy/recovery';
import { type Choice, repairs } from '../visit/choice';
import type { PriceBook } from '../visit/price-book';
import type { Visit } from '../visit/visit';
import { type Saying, say } from '../visit/wording';
import type { YearRow } from './comparison';
import { presentValueFactor } from './discount-factors';
import { type ExpectedYear, expectedYears } from './expected-years';
import { usdOf } from './money';
import { type MoneyBasis, moneyBasis } from './money-basis';
import { type Deviation, deviations, type FallbackUnit, likelyDraw, type MoneyDraw } from './money-draw';
import { type CapitalFlow, capitalFlows, type PricedChoice, priceChoice } from './priced-choice';
import { drawFor, plannedYearOf, successorOf } from './successor';
import en from './wording/en.json';
import { valueLeftUsd, yearRows } from './year-rows';

export type ComparisonInput = {
  readonly visit: Visit;
  readonly findings: Findings;
  readonly energy: EnergyResult;
  /** Prices of tests; left out = the invented starting book. */
  readonly priceBook?: PriceBook;
};

/** All that is needed to work out any choice for any draw and any length of stay. */
export type ComparisonModel = {
  readonly basis: MoneyBasis;
  /** Leave first, repairs by price, replacements by price. */
  readonly choices: readonly PricedChoice[];
  readonly fallback: FallbackUnit;
  readonly chances: CauseChances;
  readonly likely: MoneyDraw;
  readonly deviations: readonly Deviation[];
  readonly notes: readonly Saying[];
};

/**
 * Prepares the comparison of a visit.
 *
 * @param input  visit, findings, yearly energy
 * @returns the model; when the visit has no "leave as is" one is added and a note says so
 * Check: tests/finance/comparison-model.test.ts
 */
export function comparisonModel({ visit, findings, energy }: ComparisonInput): ComparisonModel {
  const basis = moneyBasis(visit, findings, energy);
  const notes: Saying[] = [...basis.notes];
  const choices = withLeave(visit, notes).map((choice) => priceChoice(choice, visit.visitDate));
  const fallback = fallbackUnit(visit, choices, basis, notes);
  const repairIds = visit.choices.filter(repairs).map((c) => c.id);
  return {
    basis,
    choices: choices.sort((a, b) => order(a) - order(b) || a.price.comparedTo(b.price)),
    fallback,
    chances: basis.chances,
    likely: likelyDraw(basis, energy, fallback, repairIds),
    deviations: deviations(basis, energy, fallback, repairIds),
    notes,
  };
}

export type Outcome = {
  /** The draw as it stands for this choice. */
  readonly draw: MoneyDraw;
  readonly expected: readonly ExpectedYear[];
  readonly flows: readonly CapitalFlow[];
  readonly rows: readonly YearRow[];
  readonly totalTodayUsd: number;
};

/**
 * One choice under one draw, over the stay of the visit.
 *
 * Check: tests/finance/comparison-model.test.ts
 */
export function outcomeOf(model: ComparisonModel, priced: PricedChoice, draw: MoneyDraw): Outcome {
  const years = model.basis.stayYears;
  const { choice } = priced;
  const successor = successorOf(choice, model.choices, model.fallback);
  const own = drawFor(draw, successor);
  const planned = plannedYearOf(choice, years);
  const expected = expectedYears(choice, own, years, model.chances, successor.scenarioId, planned);
  const flows = capitalFlows(priced, years);
  const rows = yearRows(expected, flows, usdOf(priced.netPrice), own, model.basis.timing);
  return { draw: own, expected, flows, rows, totalTodayUsd: rows.at(-1)?.cumulativePresentValueUsd ?? 0 };
}

/** Likely totals in the model's order: with the value left at the end counted on a straight line, and with none. */
export type StayTotals = { readonly linear: number[]; readonly none: number[] };

/**
 * Likely totals in today's money for every stay from one year up.
 *
 * @param longest  longest stay in whole years
 * @returns one entry per stay, index 0 = one year; the same totals as `outcomeOf` gives for a visit with that stay
 * Check: tests/finance/recommend.test.ts
 */
export function totalsByStay(model: ComparisonModel, longest: number): StayTotals[] {
  const { chances, fallback, basis } = model;
  const d = model.likely.values.discountFracPerYear;
  const choices = model.choices.map((priced) => {
    const { choice } = priced;
    const successor = successorOf(choice, model.choices, fallback);
    const draw = drawFor(model.likely, successor);
    const lived = (planned: number | undefined) => {
      const expected = expectedYears(choice, draw, longest, chances, successor.scenarioId, planned);
      return { expected, running: yearRows(expected, [], 0, { ...draw, valueLeftFrac: 0 }, basis.timing) };
    };
    const unplanned = lived(undefined);
    const planned = plannedYearOf(choice, longest);
    const plan = planned === undefined ? unplanned : lived(planned);
    const within = (stay: number) => (plannedYearOf(choice, stay) === undefined ? unplanned : plan);
    return { priced, within, draw, netPriceUsd: usdOf(priced.netPrice) };
  });
  return Array.from({ length: longest }, (_, k) => {
    const none = choices.map(
      (c) =>
        (c.within(k + 1).running[k + 1]?.cumulativePresentValueUsd ?? 0) +
        capitalTodayUsd(capitalFlows(c.priced, k + 1), d),
    );
    const linear = choices.map((c, i) => {
      const left = valueLeftUsd(c.within(k + 1).expected.slice(0, k + 1), c.netPriceUsd, c.draw);
      return (none[i] ?? 0) - left * presentValueFactor(d, k + 1);
    });
    return { linear, none };
  });
}

/** Flows in today's money, each from its own month. */
export function capitalTodayUsd(flows: readonly CapitalFlow[], discountFracPerYear: number): number {
  return flows.reduce((sum, f) => sum + f.usd * presentValueFactor(discountFracPerYear, f.months / 12), 0);
}

function withLeave(visit: Visit, notes: Saying[]): Choice[] {
  if (visit.choices.some((c) => c.kind === 'leave')) return [...visit.choices];
  notes.push({ code: 'leaveAdded' });
  let id = 'leave';
  while (visit.choices.some((c) => c.id === id)) id = `${id}-as-is`.slice(0, 40);
  return [{ kind: 'leave', id, name: say(en, { code: 'leaveName' }), priceLines: [] }, ...visit.choices];
}

/** A failed unit is replaced in a hurry by the cheapest quoted one of the same kind, else by one at the price per ton. */
function fallbackUnit(
  visit: Visit,
  choices: readonly PricedChoice[],
  basis: MoneyBasis,
  notes: Saying[],
): FallbackUnit {
  const quoted = choices
    .filter((c) => c.choice.kind === 'replace' && c.choice.unitKind === visit.unit.kind && c.price.gt(0))
    .sort((a, b) => a.price.comparedTo(b.price))[0];
  if (quoted === undefined) {
    const priceUsd = Math.round(basis.values.replacementUsdPerTon.likely * visit.unit.nominalTons);
    notes.push({ code: 'replacementPriceAssumed', values: { priceUsd } });
    return { scenarioId: 'healthy' };
  }
  const priceUsd = usdOf(quoted.price);
  notes.push({
    code: 'replacementPriceQuoted',
    values: { choice: quoted.choice.name, priceUsd: Math.round(priceUsd) },
  });
  return { quotedUsd: priceUsd, scenarioId: quoted.choice.id };
}

const ORDER: readonly Choice['kind'][] = ['leave', 'repair', 'repairThenReplace', 'replace'];

function order({ choice }: PricedChoice): number {
  return ORDER.indexOf(choice.kind);
}
