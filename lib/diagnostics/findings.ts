import type { Estimate } from '../math/estimate';
import type { Basis } from '../visit/basis';
import type { CauseId } from '../visit/cause';
import type { Mode } from '../visit/run';
import type { Saying } from '../visit/wording';

/** One input of a derived value: the reading, the plate, or an assumption. */
export type DerivedInput = {
  /** Reading name, plate field or assumption key; words in wording/en.json or the visit schema. */
  readonly name: string;
  readonly value: number | string;
  readonly unit: string;
  readonly basis: Basis;
  readonly source?: string;
  /** Standard uncertainty taken for this input, same unit. */
  readonly sd?: number;
  /** Share of the result's variance that comes from this input. */
  readonly shareFrac?: number;
};

/** A number computed from readings; it opens to its inputs, formula and source. */
export type DerivedValue = {
  /** What it is ("suctionSuperheatFd"); words under `derived.<id>`. */
  readonly id: string;
  readonly value: number;
  /** Standard uncertainty, same unit. */
  readonly sd: number;
  readonly unit: string;
  readonly basis: Basis;
  readonly inputs: readonly DerivedInput[];
  /** Formula in trade notation. */
  readonly formula: string;
  readonly source: string;
};

export type Verdict = 'within' | 'above' | 'below';

/** What a healthy unit would read, and how the reading stands to it. */
export type Target = {
  /** Same id as the derived value or reading it judges. */
  readonly id: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly reading?: number;
  readonly verdict?: Verdict;
  /** How well the target itself is known: standard uncertainty, same unit. */
  readonly sd?: number;
  readonly source: string;
  readonly status: string;
  /** Why there is no verdict, or a doubt about the target. */
  readonly note?: Saying;
};

/** Doubt, conflict or danger; computing goes on. Words under `flag.<code>`. */
export type Flag = Saying & {
  readonly severity: 'danger' | 'conflict' | 'doubt' | 'unknown';
  readonly runId?: string;
  /** Readings named by the flag. */
  readonly readings: readonly string[];
};

/** One way of estimating the loss, on log ratios to the healthy unit. */
export type LossRoute = {
  readonly id: 'heatBalance' | 'airSide' | 'measuredPower' | 'faultCorrelation' | 'agePrior';
  readonly lnCapacity?: { readonly mean: number; readonly sd: number };
  readonly lnPower?: { readonly mean: number; readonly sd: number };
  readonly runId?: string;
  readonly note?: Saying;
};

/** How far capacity falls and power rises against the healthy unit at the same conditions. */
export type Loss = {
  readonly mode: Mode;
  readonly capacityRatioToHealthy: Estimate;
  readonly powerRatioToHealthy: Estimate;
  /** Of the log ratios, for simulation. */
  readonly lnCapacity: { readonly mean: number; readonly sd: number };
  readonly lnPower: { readonly mean: number; readonly sd: number };
  readonly routes: readonly LossRoute[];
  readonly basis: Basis;
  readonly notes: readonly Saying[];
};

export type RunFindings = {
  readonly runId: string;
  readonly mode: Mode;
  readonly label: string;
  readonly derived: readonly DerivedValue[];
  readonly targets: readonly Target[];
  /** Quantities for which no rule has an answer at these conditions, and why; words under `note.<code>`. */
  readonly noTargets?: readonly { readonly id: string; readonly note: Saying }[];
  /** Plain one-line readings for the homeowner; words under `homeowner.<code>`. */
  readonly plain?: readonly Saying[];
};

/** What the readings say. */
export type Findings = {
  readonly runs: readonly RunFindings[];
  readonly flags: readonly Flag[];
  /** A mode the unit does not have is left out. */
  readonly loss: { readonly cooling?: Loss; readonly heating?: Loss };
  /** The loss each run tells by itself, in the order of the runs; `loss` rests on the last usable run of its mode. */
  readonly lossByRun?: readonly { readonly runId: string; readonly loss: Loss }[];
  /** The technician's own suspicion, said to be the technician's. */
  readonly suspectedCause?: {
    readonly cause: CauseId;
    readonly saidBy: 'technician';
    readonly note?: string;
  };
  /** Readings that would narrow the range most, best first. */
  readonly wouldNarrow: readonly Saying[];
};
