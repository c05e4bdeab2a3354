import type { CausesFound, NextReading } from '../diagnostics/findings';
import type { CauseId } from '../visit/cause';
import { repairs } from '../visit/choice';
import type { PriceBook } from '../visit/price-book';
import type { RefrigerantName } from '../visit/refrigerant-names';
import type { Saying } from '../visit/wording';
import type { CauseOutcome } from './cause-table';
import type { FlipMap, Investigate, TestWorth } from './comparison';
import { type ComparisonModel, totalsByStay } from './comparison-model';
import data from './data/conventions.json';
import { usdOf } from './money';
import { priceFromBook, testEntry } from './price-from-book';
import { priceTotal } from './price-total';
import { lowestIndex } from './recommend';
import { type CauseTable, perfectInformation, testInformation } from './value-of-information';

type Situation = {
  readonly model: ComparisonModel;
  /** By choice in the model's order, then by cause. */
  readonly outcomes: readonly (readonly CauseOutcome[])[];
  readonly causes: CausesFound | undefined;
  readonly priceBook: PriceBook;
  readonly refrigerant?: RefrigerantName;
};

/**
 * Whether finding out what is wrong before choosing is worth its money: the most that could save on average, and what
 * each next reading or test would save and cost.
 *
 * @returns the value with its tests, best first; `none` when the readings give the causes no chances or when there is
 *   nothing to choose
 * The chance of each outcome under each cause is that of the readings found; prices and minutes come from the price
 * book. A test never saves more than knowing the cause.
 * Source: expected value of perfect and of sample information, textbook decision analysis
 * Check: tests/finance/investigate.test.ts
 */
export function investigate(s: Situation): Investigate {
  const { model, causes } = s;
  if (model.chances.basis !== 'readings' || causes === undefined)
    return { kind: 'none', why: { code: 'investigateTooFewReadings' } };
  const ranked = model.choices.flatMap((c, i) => (c.priced ? [i] : []));
  if (ranked.length < 2) return { kind: 'none', why: { code: 'nothingToCompare' } };
  const idOf = (k: number) => model.choices[ranked[k] ?? 0]?.choice.id ?? '';
  const table: CauseTable = {
    causeFrac: model.chances.causes.map((c) => c.frac),
    costUsd: ranked.map((i) => (s.outcomes[i] ?? []).map((o) => o.totalTodayUsd)),
  };
  const perfect = perfectInformation(table);
  const byCause = model.chances.causes.map(({ cause = 'none', frac }, c) => {
    const costs = table.costUsd.map((row) => row[c] ?? 0);
    const choiceId = idOf(costs.indexOf(Math.min(...costs)));
    return { cause, frac, choiceId, totalsUsd: Object.fromEntries(costs.map((usd, k) => [idOf(k), usd])) };
  });
  const tests = causes.nextReadings
    .filter(({ outcomes }) => outcomes.length > 0)
    .map((next) => testWorth(next, table, s))
    .sort((a, b) => (b.netUsd ?? b.savesUsd) - (a.netUsd ?? a.savesUsd));
  return {
    kind: 'value',
    mostUsd: perfect.valueUsd,
    choiceId: idOf(perfect.bestIndex),
    byCause,
    tests,
    saying: sayingOf(
      perfect.valueUsd,
      tests,
      model,
      idOf(perfect.bestIndex),
      byCause.every((b) => b.choiceId === idOf(perfect.bestIndex)),
    ),
  };
}

function testWorth(next: NextReading, table: CauseTable, s: Situation): TestWorth {
  const causes = s.model.chances.causes.map((c) => c.cause ?? 'none');
  const information = testInformation(table, likelihoods(next, causes));
  const code = next.saying.code;
  const entry = testEntry(s.priceBook, code.replace(/^next\./, ''));
  const price =
    entry === undefined
      ? undefined
      : priceFromBook(s.priceBook, entry.id, {
          date: s.model.basis.baseDate,
          nominalTons: s.model.basis.nominalTons,
          ...(s.refrigerant === undefined ? {} : { refrigerant: s.refrigerant }),
        });
  const own = { savesUsd: information.valueUsd, changesChoice: information.changesChoice };
  if (price === undefined) return { code, readings: next.readings, ...own };
  const priceUsd = priceTotal(price.priceLines).totalUsd;
  return {
    code,
    readings: next.readings,
    ...own,
    priceUsd,
    ...(price.siteHours === undefined ? {} : { minutes: Math.round(price.siteHours * 60) }),
    netUsd: information.valueUsd - usdOf(priceUsd),
  };
}

/** By outcome, then by cause; a cause the findings say nothing of takes the outcome's overall chance. */
function likelihoods(next: NextReading, causes: readonly CauseId[]): number[][] {
  const raw = next.outcomes.map((o) =>
    causes.map((cause) => o.byCause?.find((b) => b.cause === cause)?.chance ?? o.chance),
  );
  const sums = causes.map((_, c) => raw.reduce((sum, row) => sum + (row[c] ?? 0), 0));
  return raw.map((row) => row.map((p, c) => p / (sums[c] ?? 1)));
}

function sayingOf(
  mostUsd: number,
  tests: readonly TestWorth[],
  model: ComparisonModel,
  choiceId: string,
  alwaysBest: boolean,
): Saying {
  const choice = model.choices.find((c) => c.choice.id === choiceId)?.choice.name ?? choiceId;
  const least = data.values.leastWorthTellingUsd.value;
  if (alwaysBest) return { code: 'investigateSame', values: { choice } };
  if (mostUsd < least) return { code: 'investigateLittle', values: { choice, leastUsd: least } };
  const best = tests.find((t) => t.priceUsd !== undefined);
  if (best?.priceUsd === undefined)
    return { code: 'investigateNoTest', values: { choice, mostUsd: Math.round(mostUsd) } };
  const values = {
    choice,
    test: best.code,
    mostUsd: Math.round(mostUsd),
    savesUsd: Math.round(best.savesUsd),
    costsUsd: Math.round(usdOf(best.priceUsd)),
  };
  if ((best.netUsd ?? 0) > 0) return { code: 'investigateWorth', values };
  return { code: best.changesChoice ? 'investigateNotWorth' : 'investigateNotWorthSame', values };
}

/**
 * Which choice costs least for each stay and each price of the cheapest repair, everything else likely.
 *
 * @param totals  likely totals in the model's order
 * @returns the grid; `undefined` without a priced repair
 * Exact, since a total moves one dollar with each dollar of a cash price.
 * Check: tests/finance/investigate.test.ts
 */
export function flipMap(model: ComparisonModel, totals: readonly number[]): FlipMap | undefined {
  const at = model.choices.reduce<number | undefined>(
    (best, c, i) =>
      repairs(c.choice) && c.priced && (best === undefined || (totals[i] ?? 0) < (totals[best] ?? 0))
        ? i
        : best,
    undefined,
  );
  const repair = at === undefined ? undefined : model.choices[at];
  if (at === undefined || repair === undefined) return undefined;
  const net = usdOf(repair.netPrice);
  const top = Math.max(data.values.flipMapLeastTopUsd.value, Math.ceil((2 * net) / 500) * 500);
  const columns = data.values.flipMapColumns.value;
  const repairPricesUsd = Array.from({ length: columns }, (_, k) => Math.round((top * k) / (columns - 1)));
  const stays = totalsByStay(model, data.values.longestStayYears.value);
  const stayYears = data.values.flipMapStays.value;
  const choiceIds = stayYears.map((years) => {
    const own = stays[years - 1]?.[model.basis.residual] ?? [];
    return repairPricesUsd.map((usd) => {
      const moved = own.map((total, i) => (i === at ? total - net + usd : total));
      return model.choices[lowestIndex(model, moved)]?.choice.id ?? '';
    });
  });
  return { repairId: repair.choice.id, stayYears, repairPricesUsd, choiceIds };
}
