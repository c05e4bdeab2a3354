/** A label and what it says. */
export type Line = { readonly name: string; readonly value: string };

/** Airflow by one method, in words. */
export type MethodView = {
  readonly value: string;
  readonly perTon: string;
  readonly doubt: string;
  /** "too low", and what is healthy. */
  readonly verdict: string;
  readonly off: boolean;
  /** The formula with the readings filled in. */
  readonly worked?: string;
  /** For the head of the fold. */
  readonly line: string;
};

export type GrilleView = {
  readonly advised: string;
  readonly factor: string;
  readonly lines: readonly Line[];
  readonly notes: readonly string[];
  readonly result?: MethodView;
};

export type HeatRiseView = {
  readonly lines: readonly Line[];
  readonly notes: readonly string[];
  readonly result?: MethodView;
};

/** One user of the static pressure; `lengthFrac` is the length of its bar. */
export type StaticRow = {
  readonly id: string;
  readonly name: string;
  readonly value: string;
  readonly share?: string;
  readonly usual?: string;
  readonly off: boolean;
  readonly lengthFrac: number;
};

export type StaticsView = {
  readonly rows: readonly StaticRow[];
  readonly total?: StaticRow & { readonly limitFrac: number };
  readonly limit: string;
  readonly says: readonly string[];
  readonly off: boolean;
  readonly sources: readonly string[];
  readonly line: string;
};

export type CheckView = {
  readonly name: string;
  readonly lines: readonly Line[];
  readonly verdict: string;
  readonly off: boolean;
  readonly line: string;
};

/** A pressure by the unit's own table, or why there is none. */
export type TableTargetView = {
  readonly name: string;
  readonly target?: string;
  readonly reading?: string;
  readonly verdict?: string;
  readonly off: boolean;
  readonly note?: string;
};

/** What the measuring screens say about one run. */
export type MeasureView = {
  readonly direct?: MethodView;
  readonly grille: GrilleView;
  readonly heatRise?: HeatRiseView;
  readonly statics?: StaticsView;
  readonly capacitors: readonly CheckView[];
  readonly strips?: CheckView;
  readonly table: readonly TableTargetView[];
};

export type PairRow = {
  readonly id: string;
  /** With its unit. */
  readonly name: string;
  readonly before: string;
  readonly after: string;
  readonly change: string;
  readonly real: boolean;
  readonly says: string;
};

/** Two runs of one mode side by side. */
export type PairView = {
  readonly fromId: string;
  readonly toId: string;
  readonly summary: string;
  /** What differed between the runs besides the step. */
  readonly warnings: readonly string[];
  readonly conditions: readonly PairRow[];
  readonly rows: readonly PairRow[];
};
