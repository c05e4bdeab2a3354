import type { Findings } from '../diagnostics/findings';
import { type Estimate, exactEstimate } from '../math/estimate';
import type { CauseId } from '../visit/cause';
import type { RepairAction, Repairing } from '../visit/choice';
import beliefs from './data/cause-beliefs.json';
import data from './data/repair-effects.json';

/** What may be at work, each with its chance. */
export type CauseChances = {
  /** The readings with the suspicion weighed in; the suspicion alone; or nothing, so that every repair is taken to meet its own cause. */
  readonly basis: 'readings' | 'suspicion' | 'unnamed';
  /** Adds up to 1, likeliest first; without a cause: whatever the repair is meant for. `none`: nothing wrong. */
  readonly causes: readonly { readonly cause?: CauseId; readonly frac: number }[];
  /** Share of the log loss that belongs to the cause at work; the rest no repair gives back. */
  readonly explainedFrac: Estimate;
};

/**
 * Chances of the cause behind the loss. Where two causes are at work, each counts by its part of the loss, so that
 * giving back one cause's part gives back, on average, that cause's share of the loss. What the technician suspects
 * multiplies the weight of that cause by a stated ratio.
 *
 * @param findings  causes found, shares of the loss, suspicion
 * @returns chances; with too few readings the suspicion stands alone, and without one nothing is named
 * Source: Bayes' rule; ratio in data/cause-beliefs.json, status assumption
 * Check: tests/energy/recovery.test.ts
 */
export function causeChances(findings: Pick<Findings, 'causes' | 'loss' | 'suspectedCause'>): CauseChances {
  const suspected = findings.suspectedCause?.cause;
  const found = findings.causes;
  const isUnweighed = found?.verdict === 'unclear' && found.causes.length === 0;
  if (found === undefined || found.verdict === 'tooFewReadings' || isUnweighed) {
    return suspected === undefined
      ? { basis: 'unnamed', causes: [{ frac: 1 }], explainedFrac: exactEstimate(1) }
      : { basis: 'suspicion', causes: [{ cause: suspected, frac: 1 }], explainedFrac: exactEstimate(1) };
  }
  const wrong = 1 - found.noFaultProbability;
  const shares = lossShares(findings.loss);
  const explained = sum([...shares.values()]);
  const total = sum(found.causes.map((c) => c.probability));
  const weights = new Map<CauseId, number>([['none', found.noFaultProbability]]);
  for (const { cause, probability } of found.causes) {
    const part = explained > 0 ? (shares.get(cause) ?? 0) / explained : total > 0 ? probability / total : 0;
    weights.set(cause, wrong * part);
  }
  if (found.causes.length === 0) weights.set('none', 1);
  if (suspected !== undefined) {
    const least = Math.max(weights.get(suspected) ?? 0, suspected === 'none' ? 0 : LEAST);
    weights.set(suspected, least * beliefs.values.suspicionRatio.value);
  }
  return {
    basis: 'readings',
    causes: scaledToOne(weights),
    explainedFrac: ofCause(explained > 0 && wrong > 0 ? Math.min(1, explained / wrong) : 1),
  };
}

const LEAST = beliefs.values.leastChanceFrac.value;

/** What the correlations put down to the cause, and part of what they put down to nothing. */
function ofCause(explained: number): Estimate {
  const { low, likely, high } = beliefs.values.unexplainedToCause;
  const at = (part: number) => explained + (1 - explained) * part;
  return { low: at(low), likely: at(likely), high: at(high) };
}

/** Share of the loss by cause; the mean over the modes that tell it. */
function lossShares(loss: Findings['loss']): Map<CauseId, number> {
  const told = [loss.cooling?.shares, loss.heating?.shares].flatMap((s) => (s === undefined ? [] : [s]));
  const shares = new Map<CauseId, number>();
  for (const { cause, shareFrac } of told.flat())
    shares.set(cause, (shares.get(cause) ?? 0) + shareFrac / told.length);
  return shares;
}

function scaledToOne(weights: ReadonlyMap<CauseId, number>): CauseChances['causes'] {
  const all = sum([...weights.values()]);
  const kept = [...weights].filter(([, w]) => w >= LEAST * all);
  const total = sum(kept.map(([, w]) => w));
  return kept.map(([cause, w]) => ({ cause, frac: w / total })).sort((a, b) => b.frac - a.frac);
}

/** What a repair does if a cause is at work. */
export type Recovery = {
  readonly cause?: CauseId;
  /** Chance that the cause is at work. */
  readonly frac: number;
  /** Share of the log loss given back if the repair works. */
  readonly recoveredFrac: Estimate;
};

/**
 * What a repair gives back under each cause it treats; under any other it gives back nothing.
 *
 * @param choice   a repair or several together; its own figures win over the table's
 * @param chances  what may be at work
 * @returns one entry for each treated cause, likeliest first; none = it misses them all
 * Source: data/repair-effects.json, status assumption
 * Check: tests/energy/recovery.test.ts
 */
export function recoveriesOf(choice: Repairing, chances: CauseChances): readonly Recovery[] {
  return chances.causes.flatMap((at): Recovery[] => {
    const cause = at.cause ?? choice.addresses;
    const share = cause === undefined ? bestOfAll(choice.actions) : shareOf(choice.actions, cause);
    if (share === undefined) return [];
    const recoveredFrac = choice.lossRecoveredFrac ?? product(share, chances.explainedFrac);
    return [{ ...(at.cause === undefined ? {} : { cause: at.cause }), frac: at.frac, recoveredFrac }];
  });
}

/**
 * Whether any action of a repair treats a cause; with none named it is taken to.
 *
 * Check: tests/energy/recovery.test.ts
 */
export function repairTreats(choice: Repairing, cause: CauseId | undefined): boolean {
  const meant = cause ?? choice.addresses;
  return meant === undefined || choice.actions.some((action) => curesOf(action)[meant] !== undefined);
}

/**
 * Chance that a repair which treats the cause at work cures it.
 *
 * @param cause      the cause at work; left out = whatever the repair is meant for
 * @param basis      where the chances of the causes come from
 * @param usualFrac  assumed chance that a repair cures a suspected cause, 0..1
 * @returns the usual chance to the power of the job's difficulty, of several actions the surest; without readings the
 *   usual chance as it is, since it then also stands for aiming at the wrong cause; 0 if the cause is not treated
 * Source: data/repair-effects.json, difficulty, status assumption
 * Check: tests/energy/recovery.test.ts
 */
export function successFrac(
  choice: Repairing,
  cause: CauseId | undefined,
  basis: CauseChances['basis'],
  usualFrac: number,
): number {
  const power = successPower(choice, cause, basis);
  return power === undefined ? 0 : usualFrac ** power;
}

/**
 * How hard a repair is that treats the cause at work: the power its usual chance of success is raised to.
 *
 * @param cause  the cause at work; left out = whatever the repair is meant for
 * @param basis  where the chances of the causes come from
 * @returns that of the surest of its actions; 1 without readings; undefined if the cause is not treated
 * Source: data/repair-effects.json, difficulty, status assumption
 * Check: tests/energy/recovery.test.ts
 */
export function successPower(
  choice: Repairing,
  cause: CauseId | undefined,
  basis: CauseChances['basis'],
): number | undefined {
  const meant = cause ?? choice.addresses;
  const treating = choice.actions.filter((a) => meant === undefined || curesOf(a)[meant] !== undefined);
  if (treating.length === 0) return undefined;
  if (basis !== 'readings') return 1;
  return Math.min(...treating.map((action) => data.difficulty.actions[action]));
}

/** Both low, both likely, both high. */
function product(a: Estimate, b: Estimate): Estimate {
  return { low: a.low * b.low, likely: a.likely * b.likely, high: a.high * b.high };
}

type Cures = Readonly<Partial<Record<CauseId, Estimate>>>;

function curesOf(action: RepairAction): Cures {
  return data.actions[action];
}

/** The best of the actions, or all of them one after the other where a cause comes in parts. */
function shareOf(actions: readonly RepairAction[], cause: CauseId): Estimate | undefined {
  const cures = [...new Set(actions)].flatMap((action) => curesOf(action)[cause] ?? []);
  if (cures.length === 0) return undefined;
  if (!(data.inParts.causes as readonly CauseId[]).includes(cause)) return best(cures);
  const together = (end: keyof Estimate) => 1 - cures.reduce((left, cure) => left * (1 - cure[end]), 1);
  return { low: together('low'), likely: together('likely'), high: together('high') };
}

function bestOfAll(actions: readonly RepairAction[]): Estimate {
  return best(actions.flatMap((action) => Object.values(curesOf(action))));
}

function best(cures: readonly Estimate[]): Estimate {
  return cures.reduce((a, b) => (b.likely > a.likely ? b : a), exactEstimate(0));
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}
