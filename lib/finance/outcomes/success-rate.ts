import { betaQuantile } from '../../math/distributions';
import { type Estimate, estimate } from '../../math/estimate';
import { invariant } from '../../math/invariant';
import type { CauseId } from '../../visit/cause';
import data from '../data/outcomes.json';

/** A repair that was read again afterwards. */
export type MeasuredRepair = {
  readonly visitId: string;
  /** Cause it was aimed at. */
  readonly cause?: CauseId;
  readonly repairName?: string;
  /** What a year costs above the same unit in good order, before the repair [USD]. */
  readonly lossUsd: number;
  /** What a year costs with the unit in good order [USD]. */
  readonly healthyUsd: number;
  /** Yearly saving that the readings after it show [USD]. */
  readonly measuredUsd: Estimate;
  /** Yearly saving that the readings before it promised [USD]. */
  readonly promisedUsd?: Estimate;
};

export type Verdict = 'worked' | 'failed' | 'notJudged';

/**
 * Whether a repair gave back enough of the loss to count as having worked.
 *
 * @returns `notJudged` where the loss before it was too small to tell
 * Source: data/outcomes.json, worksFromFrac and leastLossFrac: our own choice
 * Check: tests/finance/outcomes/success-rate.test.ts
 */
export function verdictOf({ lossUsd, healthyUsd, measuredUsd }: MeasuredRepair): Verdict {
  const { worksFromFrac, leastLossFrac } = data.values;
  if (lossUsd <= 0 || lossUsd < leastLossFrac.value * healthyUsd) return 'notJudged';
  return measuredUsd.likely >= worksFromFrac.value * lossUsd ? 'worked' : 'failed';
}

export type SuccessRate = {
  /** Left out = all causes together. */
  readonly cause?: CauseId;
  readonly judged: number;
  readonly worked: number;
  /** Share that works, with its 10, 50 and 90 % points. */
  readonly frac: Estimate;
  /** Too few to lean on. */
  readonly few: boolean;
};

/**
 * Share of repairs that work, from how many did: the beta posterior of a binomial share under the Jeffreys prior.
 *
 * @param worked  0..judged, whole
 * @param judged  >= 1, whole
 * @returns 10, 50 and 90 % points
 * @throws invariant if the counts do not fit each other
 * Source: Brown, Cai, DasGupta 2001, Statistical Science 16(2), 101-133; status memory
 * Check: tests/finance/outcomes/success-rate.test.ts
 */
export function successFracOf(worked: number, judged: number): Estimate {
  invariant(judged >= 1 && worked >= 0 && worked <= judged, `${worked} of ${judged} worked`);
  const { priorShape } = data.values;
  const at = (p: number) => betaQuantile(p, worked + priorShape.value, judged - worked + priorShape.value);
  return estimate(at(0.1), at(0.5), at(0.9));
}

/**
 * Success rate over all judged repairs, and for each cause they were aimed at, most judged first.
 *
 * @returns `all` is `undefined` when no repair could be judged
 * Check: tests/finance/outcomes/success-rate.test.ts
 */
export function successRates(repairs: readonly MeasuredRepair[]): {
  readonly all: SuccessRate | undefined;
  readonly byCause: readonly SuccessRate[];
} {
  const causes = [...new Set(repairs.flatMap(({ cause }) => cause ?? []))];
  const byCause = causes.flatMap((cause) => {
    const rate = rateOf(repairs.filter((one) => one.cause === cause));
    return rate === undefined ? [] : [{ cause, ...rate }];
  });
  return { all: rateOf(repairs), byCause: byCause.sort((a, b) => b.judged - a.judged) };
}

function rateOf(repairs: readonly MeasuredRepair[]): SuccessRate | undefined {
  const verdicts = repairs.map(verdictOf).filter((verdict) => verdict !== 'notJudged');
  if (verdicts.length === 0) return undefined;
  const worked = verdicts.filter((verdict) => verdict === 'worked').length;
  return {
    judged: verdicts.length,
    worked,
    frac: successFracOf(worked, verdicts.length),
    few: isFew(verdicts.length),
  };
}

export type PromiseKept = {
  /** Repairs with both a promise and a measurement. */
  readonly count: number;
  readonly meanPromisedUsd: number;
  readonly meanMeasuredUsd: number;
  /** How many measured savings lie inside the promised range. */
  readonly insideCount: number;
};

/**
 * What was promised against what was measured, on average.
 *
 * @returns `undefined` when nothing was both promised and measured
 * Check: tests/finance/outcomes/success-rate.test.ts
 */
export function promisesKept(repairs: readonly MeasuredRepair[]): PromiseKept | undefined {
  const both = repairs.flatMap(({ promisedUsd: promised, measuredUsd: measured }) =>
    promised === undefined ? [] : [{ promised, measured }],
  );
  if (both.length === 0) return undefined;
  const mean = (of: (one: (typeof both)[number]) => number) =>
    both.reduce((sum, one) => sum + of(one), 0) / both.length;
  return {
    count: both.length,
    meanPromisedUsd: mean((one) => one.promised.likely),
    meanMeasuredUsd: mean((one) => one.measured.likely),
    insideCount: both.filter(
      ({ promised, measured }) => measured.likely >= promised.low && measured.likely <= promised.high,
    ).length,
  };
}

/** Whether a count is too small to lean on. Source: data/outcomes.json, fewBelow. */
export function isFew(count: number): boolean {
  return count < data.values.fewBelow.value;
}
