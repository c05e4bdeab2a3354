import type { ComparedChoice } from '../finance/comparison';
import type { Estimate } from '../math/estimate';
import type { Basis } from '../visit/basis';
import type { Locale } from './phrase';

/** A name and what is written beside it. */
export type LabelledText = { readonly label: string; readonly text: string };

/** The company's own colour and mark. */
export type CompanyLook = {
  /** "#rrggbb", dark enough to be read on white. */
  readonly accent?: string;
  /** PNG or JPEG as a data URL. */
  readonly logo?: string;
};

/** One cell of the choice table: what counts, and smaller lines below it. */
export type SheetCell = { readonly main: string; readonly details: readonly string[] };

/** Head of one choice's column; its place is fixed, the recommended one is marked where it stands. */
export type ChoiceColumn = {
  readonly id: string;
  readonly kind: ComparedChoice['kind'];
  readonly kindWords: string;
  readonly name: string;
  /** "We recommend this", on the recommended choice only. */
  readonly mark?: string;
};

export type ChoiceRowId = 'payNow' | 'payMonthly' | 'runningCost' | 'breakdown' | 'total' | 'notFixed';

/** Same rows for every choice; a cell per column, never blank. */
export type ChoiceRow = {
  readonly id: ChoiceRowId;
  readonly label: string;
  /** True where the amounts are quoted to the cent, false where they are estimates. */
  readonly quoted: boolean;
  readonly cells: readonly SheetCell[];
};

export type ChoiceTable = {
  readonly title: string;
  readonly columns: readonly ChoiceColumn[];
  readonly rows: readonly ChoiceRow[];
};

/** A zero-based axis: `max` and ticks in the unit of the bars. */
export type Axis = {
  readonly max: number;
  readonly ticks: readonly { readonly at: number; readonly label: string }[];
  readonly unit: string;
};

/** This year's running cost as one bar: the healthy part, the part due to the loss, and the range of the whole. */
export type RunningCostBar = {
  readonly axis: Axis;
  /** [USD a year], as printed */
  readonly total: Estimate;
  /** Likely part due to the loss [USD a year], as printed; left out when there is none or it is not known. */
  readonly faultUsd?: number;
  /** Words for the part that is not due to the loss. */
  readonly restWords: string;
  readonly faultWords: string;
  readonly rangeWords: string;
};

/** Totals of the choices on one scale; the bars follow the table's columns. */
export type TotalsChart = {
  readonly title: string;
  readonly axis: Axis;
  readonly bars: readonly {
    readonly id: string;
    readonly name: string;
    readonly kind: ChoiceColumn['kind'];
    /** As printed [USD]; absent for a choice without a price. */
    readonly total?: Estimate;
    readonly label: string;
    /** True where a bar or its range ends below zero and is drawn from zero; the figure says the rest. */
    readonly belowZero: boolean;
  }[];
  readonly explanation: string;
};

export type ReadingRow = {
  readonly name: string;
  readonly found: string;
  readonly target: string;
  readonly verdict: string;
  /** Off target in either direction; never the only sign of it. */
  readonly off: boolean;
  /** Within its target. */
  readonly normal: boolean;
  readonly basis: Basis;
  readonly basisWords: string;
};

export type ReadingTable = {
  readonly title: string;
  readonly rows: readonly ReadingRow[];
  /** How many further readings of an earlier run were normal or had no target. */
  readonly rest?: string;
  /** The rows that are not off, in one sentence, for where there is no room for them. */
  readonly normal?: string;
  /** Raw readings without a target, in one sentence. */
  readonly also?: string;
};

export type AssumptionRow = {
  readonly name: string;
  /** How much it moves the result, for the few that move it most. */
  readonly effect?: string;
  readonly value: string;
  readonly range: string;
  readonly source: string;
  readonly basis: Basis;
  readonly basisWords: string;
};

export type FinancingPlan = {
  readonly name: string;
  readonly apr: string;
  readonly rows: readonly LabelledText[];
};

/** What the customer keeps, as data: the PDF, the page and the tables say the same. */
export type Sheet = {
  readonly locale: Locale;
  /** BCP 47, for the document's own language. */
  readonly languageTag: string;
  readonly documentTitle: string;
  readonly subject: string;
  readonly author: string;
  readonly reference: string;
  /** ISO date of the visit; the document carries no other date. */
  readonly visitDate: string;
  readonly modelVersion: string;
  readonly footer: string;
  /** "page {page} of {pages}" with the two numbers still to be filled in. */
  readonly pageOf: string;
  /** Said where letters of a name cannot be printed and stand as their numbers. */
  readonly notDrawn: LabelledText;
  readonly look?: CompanyLook;

  readonly pageOne: {
    readonly heading: string;
    /** Said first when the visit is an invented example. */
    readonly invented?: string;
    readonly facts: readonly LabelledText[];
    readonly finding: {
      readonly title: string;
      readonly sentences: readonly string[];
      readonly dangers: readonly string[];
      /** Which readings cannot all be true; left out when they agree. */
      readonly conflict?: string;
    };
    readonly runningCost: {
      readonly title: string;
      readonly sentences: readonly string[];
      readonly bar: RunningCostBar;
      readonly basis: string;
    };
    readonly choices: ChoiceTable;
    /** Which entered choices are not counted, and why; stands by the table. */
    readonly leftOut?: string;
    /** Says that more choices are on page two. */
    readonly moreChoices?: string;
    readonly totals: TotalsChart;
    readonly explanations: readonly string[];
    readonly waiting: { readonly title: string; readonly sentences: readonly string[] };
    readonly advice: {
      readonly title: string;
      readonly kind: 'recommended' | 'aboutTheSame' | 'open';
      readonly sentences: readonly string[];
      readonly changeTitle: string;
      readonly wouldChange: readonly string[];
    };
  };

  readonly pageTwo: {
    readonly heading: string;
    readonly moreChoices?: ChoiceTable;
    readonly readings: {
      readonly title: string;
      readonly columns: readonly [string, string, string, string, string];
      readonly tables: readonly ReadingTable[];
      readonly seen?: string;
      readonly none?: string;
    };
    readonly counts: {
      readonly title: string;
      readonly items: readonly { readonly basis: Basis; readonly count: number; readonly words: string }[];
    };
    readonly assumptions: {
      readonly title: string;
      readonly columns: readonly [string, string, string, string];
      readonly rows: readonly AssumptionRow[];
      /** What the list is, and where the whole of it is kept. */
      readonly introduction: string;
      /** By number of rows left out on paper, from 0. */
      readonly omitted: readonly string[];
    };
    readonly doubts: {
      readonly title: string;
      /** Entries that were not used, and what stands in for them; they lead `sentences` too. */
      readonly refused: readonly string[];
      /** Entries that were not used first, then contradictions. */
      readonly sentences: readonly string[];
      /** By number of sentences left out on paper, from 0. */
      readonly omitted: readonly string[];
    };
    /** No sentences when nothing would; then the section is left out. */
    readonly surer: { readonly title: string; readonly sentences: readonly string[] };
    readonly financing: {
      readonly title: string;
      readonly aprLabel: string;
      readonly plans: readonly FinancingPlan[];
      readonly terms: string;
      readonly none?: string;
    };
    readonly rebates: { readonly title: string; readonly sentences: readonly string[] };
    readonly cautions: { readonly title: string; readonly sentences: readonly string[] };
    readonly excluded: { readonly title: string; readonly sentences: readonly string[] };
    readonly validity: { readonly title: string; readonly line: string };
    readonly signature: {
      readonly title: string;
      readonly choose: string;
      readonly choices: readonly string[];
      readonly told: string;
      readonly customer: string;
      readonly company: string;
      readonly date: string;
    };
  };
};
