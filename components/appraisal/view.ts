import type { MeasureView, PairView } from '@/components/measure/view';
import type { Sheet } from '@/lib/sheet/sheet';
import type { Issue } from '@/lib/visit/issue';
import type { BalanceChart, CostChart } from './chart-view';
import type { CompareTable } from './compare-view';
import type { DriversView, FlipMapView, InvestigateView, LaterView, RepairWorth } from './decide-view';
import type { EnergyInputsView } from './energy-inputs-view';
import type { TriedRate } from './tried-rates';
import type { ChoiceWays } from './ways-view';
import type { YearView } from './year-view';

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
  /** Why no rule judges it here. */
  readonly noTarget?: string;
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
  readonly formula?: string;
  /** The conditions the rule was asked at. */
  readonly conditions: readonly InputView[];
  /** For the homeowner, when it is off. */
  readonly plain?: string;
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
  /** What no rule answers here, and why; only where nothing was derived either. */
  readonly noTargets: readonly { readonly name: string; readonly why: string }[];
};

export type RouteView = {
  readonly name: string;
  readonly capacity?: string;
  readonly power?: string;
  readonly notes: readonly string[];
};

export type LossView = {
  readonly mode: string;
  readonly title: string;
  readonly capacity: string;
  readonly power: string;
  readonly basis: string;
  readonly routes: readonly RouteView[];
  readonly notes: readonly string[];
  /** The loss split by cause. */
  readonly parts: readonly { readonly name: string; readonly share: string }[];
};

/** One reading or observation for or against a cause. */
export type EvidenceView = {
  readonly key: string;
  readonly name: string;
  readonly value?: string;
  /** How far off, and what a healthy unit would show. */
  readonly detail?: string;
  /** "speaks strongly for it" */
  readonly strength: string;
  /** Only where readings of more than one run count. */
  readonly run?: string;
};

export type CauseView = {
  readonly id: string;
  readonly name: string;
  /** "likely (about 7 in 10)" */
  readonly chance: string;
  /** Only where the cause is more than slight. */
  readonly severity?: string;
  readonly severityMeaning: string;
  /** For the homeowner, of the leading cause. */
  readonly plain?: string;
  readonly speaksFor: readonly EvidenceView[];
  readonly speaksAgainst: readonly EvidenceView[];
  readonly confusedWith: readonly { readonly name: string; readonly separate: string }[];
  readonly hints: readonly string[];
  readonly prior: string;
  readonly priorSource: string;
  readonly patterns: readonly { readonly mode: string; readonly source: string; readonly note?: string }[];
  readonly loss: readonly string[];
};

/** A reading worth taking, with what each outcome would mean. */
export type NextView = {
  readonly title: string;
  readonly outcomes: readonly {
    readonly outcome: string;
    readonly chance: string;
    readonly meaning: string;
  }[];
};

export type CausesView = {
  readonly verdict: 'found' | 'noFaultFound' | 'unclear' | 'tooFewReadings';
  readonly verdictWords: string;
  readonly notes: readonly string[];
  readonly main: readonly CauseView[];
  /** The last run no longer shows the leading cause. */
  readonly mainIsGone: boolean;
  readonly besides: readonly CauseView[];
  readonly slight: readonly CauseView[];
  readonly resolved: readonly string[];
  readonly next: readonly NextView[];
  /** What is said where no further reading is worth taking. */
  readonly nothingNext: string;
  /** Readings that would tell a little but not change what is found. */
  readonly idle: readonly string[];
};

/** Everything the screens say about one visit, in words; made where the numbers are made. */
export type AnswerView = {
  /** What the measuring screens say, by run. */
  readonly measures: Readonly<Record<string, MeasureView>>;
  /** Any two runs of one mode side by side. */
  readonly pairs: readonly PairView[];
  readonly flags: readonly FlagView[];
  readonly causes?: CausesView;
  readonly runs: readonly RunView[];
  readonly losses: readonly LossView[];
  readonly wouldNarrow: readonly string[];
  readonly sheet: Sheet;
  readonly table: CompareTable;
  readonly cost: CostChart;
  readonly drivers?: DriversView;
  readonly later?: LaterView;
  readonly repairs: readonly RepairWorth[];
  readonly investigate?: InvestigateView;
  readonly flipMap?: FlipMapView;
  readonly ways: readonly ChoiceWays[];
  /** Rates one may try at the table, as they count now. */
  readonly triedRates: readonly TriedRate[];
  readonly balance?: BalanceChart;
  /** What the forms of house, bills and tariff tell. */
  readonly energyInputs: EnergyInputsView;
  /** Where the money of a year goes. */
  readonly year: YearView;
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
