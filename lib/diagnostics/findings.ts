import type { Estimate } from '../math/estimate';
import type { Basis } from '../visit/basis';
import type { CauseId } from '../visit/cause';
import type { Mode } from '../visit/run';
import type { Saying } from '../visit/wording';
import type { RunMeasuring } from './measuring/measuring';
import type { Verdict } from './verdict';

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
  /** The rule behind it, in trade notation. */
  readonly formula?: string;
  /** The conditions it was asked at; a fixed band has none. */
  readonly conditions?: readonly DerivedInput[];
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
  /** Of a published correlation: what was assumed, and where it was held at the edge of its range. */
  readonly notes?: readonly Saying[];
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
  /** Share of the loss each cause explains; what is missing to 1 no cause explains. */
  readonly shares?: readonly { readonly cause: CauseId; readonly shareFrac: number }[];
};

/** A reading the causes were weighed on, beside what a healthy unit would show here, published target or not. */
export type WeighedReading = {
  /** Id of the derived value or reading. */
  readonly id: string;
  readonly value: number;
  readonly unit: string;
  readonly expected: number;
  /** Distance from it in standard uncertainties of both; above 0 speaks of a high pressure, temperature or power. */
  readonly sigmas: number;
};

export type RunFindings = {
  readonly runId: string;
  readonly mode: Mode;
  readonly label: string;
  readonly derived: readonly DerivedValue[];
  readonly targets: readonly Target[];
  /** Quantities for which no rule has an answer at these conditions, and why; words under `note.<code>`. */
  readonly noTargets?: readonly { readonly id: string; readonly note: Saying }[];
  /** What the measuring screens show beyond the derived values. */
  readonly measuring?: RunMeasuring;
  /** Plain one-line readings for the homeowner; words under `homeowner.<code>`. */
  readonly plain?: readonly Saying[];
  /** What the causes were weighed on. */
  readonly weighed?: readonly WeighedReading[];
};

/** One piece of evidence for or against a cause. */
export type CauseEvidence = {
  readonly kind: 'reading' | 'observation' | 'step';
  /** Id of the reading or derived value, of the observation, or of the run after the step. */
  readonly id: string;
  readonly runId?: string;
  /** By how much it moves the odds against nothing wrong, as a natural logarithm; below 0 it speaks against. */
  readonly weight: number;
  /** Distance from the healthy target in standard uncertainties; readings only. */
  readonly sigmas?: number;
};

export type Standing = 'confirmed' | 'likely' | 'suspected' | 'possible' | 'unlikely';

/** A suspected fault with its evidence. */
export type CauseFinding = {
  readonly cause: CauseId;
  /** Chance that it is at work, alone or with another. */
  readonly probability: number;
  readonly standing: Standing;
  /** How bad, if it is at work: likeliest word, and level in the cause's own measure. */
  readonly severity: { readonly word: 'mild' | 'moderate' | 'severe'; readonly level: number };
  /** Strongest first. */
  readonly speaksFor: readonly CauseEvidence[];
  readonly speaksAgainst: readonly CauseEvidence[];
  /** Causes the readings cannot tell from it, and what would; words under `separate.<code>`. */
  readonly confusedWith: readonly { readonly cause: CauseId; readonly separate: Saying }[];
  /** What else the readings say about it; words under `hint.<code>`. */
  readonly hints: readonly Saying[];
};

/** A reading or test worth taking next, and what each outcome would mean. */
export type NextReading = {
  /** Words under `next.<code>`. */
  readonly saying: Saying;
  readonly readings: readonly string[];
  /** Share of the uncertainty about the cause it is expected to take away. */
  readonly gainFrac: number;
  /** None where readings in conflict are to be taken again (`next.readAgain`, gain 0). */
  readonly outcomes: readonly {
    readonly outcome: 'low' | 'normal' | 'high' | 'yes' | 'no';
    readonly chance: number;
    /** Leads after this outcome. */
    readonly cause: CauseId;
    readonly probability: number;
    /** Cause whose chance this outcome moves most, where that is another one and it moves noticeably. */
    readonly moved?: { readonly cause: CauseId; readonly from: number; readonly to: number };
    /** Chance of this outcome where a cause is at work; `none`: nothing wrong. */
    readonly byCause?: readonly { readonly cause: CauseId; readonly chance: number }[];
  }[];
};

export type CauseVerdict = 'found' | 'noFaultFound' | 'unclear' | 'tooFewReadings';

/** What changed between two runs of one mode. */
export type RunComparison = {
  readonly mode: Mode;
  readonly fromRunId: string;
  readonly toRunId: string;
  readonly changes: readonly {
    readonly id: string;
    readonly unit: string;
    readonly before: number;
    readonly after: number;
    readonly sd: number;
    /** More than twice its standard uncertainty. */
    readonly real: boolean;
    readonly towardsTarget?: boolean;
  }[];
  readonly notes: readonly Saying[];
};

/** Why the unit runs as it does. */
export type CausesFound = {
  readonly verdict: CauseVerdict;
  readonly noFaultProbability: number;
  /** By falling probability, down to one percent; the unit as found (first telling run of each mode). */
  readonly causes: readonly CauseFinding[];
  readonly nextReadings: readonly NextReading[];
  /** The same question for each run alone. */
  readonly byRun: readonly {
    readonly runId: string;
    readonly verdict: CauseVerdict;
    readonly top: readonly { readonly cause: CauseId; readonly probability: number }[];
  }[];
  /** Causes a run showed and the last run of its mode no longer does. */
  readonly resolved: readonly {
    readonly cause: CauseId;
    readonly fromRunId: string;
    readonly toRunId: string;
  }[];
  readonly comparisons: readonly RunComparison[];
  readonly notes: readonly Saying[];
  /** No fault found, and yet some reading is off its target: no single fault explains it. */
  readonly isOffTarget?: boolean;
  /** Cause other than the leading one that explains most of a clear loss, and its share. */
  readonly explainsMost?: { readonly cause: CauseId; readonly shareFrac: number };
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
  /** Causes with their probability and evidence, and the next reading worth taking. */
  readonly causes?: CausesFound;
};
