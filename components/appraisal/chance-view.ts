import { td } from '@/components/words/decide-words';
import type { Comparison } from '@/lib/finance/comparison';
import type { Simulation } from '@/lib/finance/simulate';
import { apportion } from '@/lib/math/apportion';
import { moneyRangeWords } from '@/lib/sheet/money-words';
import { plainNumber, wordsOf } from '@/lib/sheet/phrase';
import { aboutUsd } from './about-usd';
import type { ChoiceKind } from './decide-view';

const words = wordsOf('en');

/** Equal cases that a chance is told out of, the same for every choice. */
const CASES = 10;
/** A regret below this is hardly one. Our own choice. */
const LEAST_REGRET_USD = 10;

/** One choice in all draws, in words. */
export type ChanceRow = {
  readonly id: string;
  readonly name: string;
  readonly kind: ChoiceKind;
  /** Draws of ten in which it costs least; all rows add up to ten. */
  readonly count: number;
  readonly of: number;
  /** "7 of 10 draws" */
  readonly chance: string;
  readonly range: string;
  readonly regret: string;
};

/** How often each choice costs least. */
export type ChanceView = {
  readonly sentence: string;
  readonly how: string;
  readonly rows: readonly ChanceRow[];
};

/**
 * The simulation in words.
 *
 * @returns `undefined` when fewer than two choices have a price
 * Check: tests/screens/decide-view.test.ts
 */
export function chanceView(simulation: Simulation, comparison: Comparison): ChanceView | undefined {
  const ranked = comparison.choices.flatMap((choice) => {
    const drawn = simulation.choices.find(({ id }) => id === choice.id);
    return choice.priced && drawn !== undefined ? [{ choice, drawn }] : [];
  });
  if (ranked.length < 2) return undefined;
  const counts = apportion(
    ranked.map(({ drawn }) => drawn.cheapestFrac),
    CASES,
  );
  const rows = ranked.map(({ choice, drawn }, i): ChanceRow => {
    const count = counts[i] ?? 0;
    const total = moneyRangeWords(words, drawn.totalTodayUsd);
    const regret = drawn.expectedRegretUsd;
    return {
      id: choice.id,
      name: choice.name,
      kind: choice.kind,
      count,
      of: CASES,
      chance: td(count === 0 ? 'odds.less' : count === CASES ? 'odds.nearly' : 'odds.count', {
        count,
        of: CASES,
      }),
      range: total.range ?? total.likely,
      regret:
        regret < LEAST_REGRET_USD ? td('odds.regretNone') : td('odds.regret', { usd: aboutUsd(regret) }),
    };
  });
  const most = rows.reduce((a, b) => (b.count > a.count ? b : a));
  const code = most.count === CASES ? 'odds.nearlyAll' : most.count > CASES / 2 ? 'odds.most' : 'odds.open';
  return {
    sentence: td(code, { name: most.name, count: most.count, of: CASES, stay: comparison.stayYears }),
    how: td('odds.how', { draws: plainNumber(words, simulation.draws, 0), stay: comparison.stayYears }),
    rows,
  };
}
