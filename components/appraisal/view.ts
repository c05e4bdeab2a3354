import type { Sheet } from '@/lib/sheet/sheet';
import type { Issue } from '@/lib/visit/issue';
import type { BalanceChart, CostChart } from './chart-view';
import type { CompareTable } from './compare-view';

/** One input of a number, in words. */
export type InputView = {
  readonly name: string;
  readonly value: string;
  readonly basis: string;
  readonly source?: string;
};

/** A number that opens to where it came from. */
export type DerivedView = {
  readonly id: string;
  readonly name: string;
  readonly value: string;
  /** "give or take 0.8 °F" */
  readonly doubt: string;
  readonly basis: string;
  readonly formula: string;
  readonly source: string;
  readonly inputs: readonly InputView[];
  readonly target?: TargetView;
};

export type TargetView = {
  readonly id: string;
  readonly name: string;
  /** What was read, where the target judges a reading itself. */
  readonly reading?: string;
  readonly range: string;
  readonly verdict: 'within' | 'above' | 'below' | 'none';
  readonly verdictWords: string;
  readonly source: string;
  readonly note?: string;
};

export type FlagView = {
  readonly severity: 'danger' | 'conflict' | 'doubt' | 'unknown';
  readonly words: string;
  readonly runId?: string;
  readonly readings: readonly string[];
};

export type RunView = {
  readonly id: string;
  readonly name: string;
  readonly mode: string;
  readonly derived: readonly DerivedView[];
  /** Targets of plain readings. */
  readonly targets: readonly TargetView[];
};

export type RouteView = {
  readonly name: string;
  readonly capacity?: string;
  readonly power?: string;
  readonly note?: string;
};

export type LossView = {
  readonly mode: string;
  readonly title: string;
  readonly capacity: string;
  readonly power: string;
  readonly basis: string;
  readonly routes: readonly RouteView[];
  readonly notes: readonly string[];
};

/** Everything the screens say about one visit, in words; made where the numbers are made. */
export type AnswerView = {
  readonly flags: readonly FlagView[];
  readonly runs: readonly RunView[];
  readonly losses: readonly LossView[];
  readonly wouldNarrow: readonly string[];
  readonly sheet: Sheet;
  readonly table: CompareTable;
  readonly cost: CostChart;
  readonly balance?: BalanceChart;
  readonly energyNotes: readonly string[];
  /** One line for lists and the bar below the form. */
  readonly headline: string;
};

export type View = {
  readonly issues: readonly Issue[];
  /** Left out while something indispensable is missing. */
  readonly answer?: AnswerView;
  /** Our own slip, said plainly; the form works on. */
  readonly failure?: string;
};
