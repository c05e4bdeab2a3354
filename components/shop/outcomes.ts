import type { Estimate } from '@/lib/math/estimate';

/** A success rate, ready to be shown. */
export type RateRow = {
  readonly cause: string;
  readonly counted: string;
  readonly rate: string;
  readonly few: boolean;
};

/** What came of repairs, ready to be shown. */
export type Outcomes = {
  readonly repairs: readonly {
    readonly id: string;
    readonly name: string;
    readonly date?: string;
    readonly repair: string;
    readonly cause: string;
    readonly promised: string;
    readonly measured: string;
    readonly verdict: string;
  }[];
  readonly summary: readonly string[];
  readonly rates: readonly RateRow[];
  /** Chance of success over all causes, offered as the shop's default. */
  readonly offer?: Estimate & { readonly words: string; readonly now: string; readonly source: string };
};
