/** What a changed set of rules would have done, ready to be shown. */
export type Trial = {
  readonly visits: number;
  /** Visits where nothing can be compared. */
  readonly leftOut: number;
  readonly flips: readonly {
    readonly id: string;
    readonly name: string;
    readonly date?: string;
    readonly from: string;
    readonly to: string;
    readonly costs: string;
    readonly why: string;
  }[];
  readonly before: string;
  readonly after: string;
};
