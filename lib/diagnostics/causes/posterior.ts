import type { CauseId } from '../../visit/cause';
import type { Mode } from '../../visit/run';
import type { Hypothesis, Part } from './hypotheses';
import { type EvidenceRun, lnRun, logSum, readyRun } from './likelihood';

/** Likelihood of one run under every hypothesis, in their order. */
export type RunLikelihood = { readonly mode: Mode; readonly ln: Float64Array };

/** Hypotheses with their chance given the readings; chances add up to 1. */
export type Weighed = { readonly hypothesis: Hypothesis; readonly chance: number };

export type Posterior = {
  readonly weighed: readonly Weighed[];
  /** Chance that a cause is at work, alone or with another; `none`: that nothing is wrong. */
  readonly chances: ReadonlyMap<CauseId, number>;
};

/**
 * Likelihood of a run under every hypothesis.
 *
 * @param hypotheses  stories to weigh
 * @param run         evidence
 * Check: tests/diagnostics/causes/posterior.test.ts
 */
export function runLikelihood(hypotheses: readonly Hypothesis[], run: EvidenceRun): RunLikelihood {
  const ready = readyRun(run);
  return { mode: run.mode, ln: Float64Array.from(hypotheses, ({ parts }) => lnRun(ready, parts)) };
}

/**
 * Bayes over all hypotheses: prior weight times the likelihood of every run, scaled to 1.
 *
 * A restricted metering device may belong to one mode only (a heat pump has one for each), so in visits with both
 * modes it is also weighed as present in just one of them.
 *
 * @param hypotheses  stories with prior weights
 * @param runs        likelihoods of the runs; the order does not matter; none gives the prior back
 * Check: tests/diagnostics/causes/posterior.test.ts
 */
export function posteriorOf(hypotheses: readonly Hypothesis[], runs: readonly RunLikelihood[]): Posterior {
  const bothModes = new Set(runs.map((run) => run.mode)).size > 1;
  const others = bothModes ? withoutRestriction(hypotheses) : [];
  const lnWeights = hypotheses.map(({ lnPrior }, i) => {
    const other = others[i];
    return lnPrior + (other === undefined ? lnAll(runs, i) : lnOneModeOrBoth(runs, i, other));
  });
  const total = logSum(lnWeights);
  const weighed = hypotheses.map((hypothesis, i) => ({
    hypothesis,
    chance: Math.exp((lnWeights[i] ?? Number.NEGATIVE_INFINITY) - total),
  }));
  return { weighed, chances: chancesOf(weighed) };
}

const known = new WeakMap<readonly Hypothesis[], readonly (number | undefined)[]>();

/** For each story with a restricted device, the place of the same story without it; the same array at every call. */
function withoutRestriction(hypotheses: readonly Hypothesis[]): readonly (number | undefined)[] {
  const already = known.get(hypotheses);
  if (already !== undefined) return already;
  const places = new Map(hypotheses.map(({ parts }, i) => [keyOf(parts), i]));
  const found = hypotheses.map(({ parts }) => {
    const elsewhere = parts.filter((part) => part.cause !== 'meteringRestriction');
    return elsewhere.length < parts.length ? places.get(keyOf(elsewhere)) : undefined;
  });
  known.set(hypotheses, found);
  return found;
}

function lnAll(runs: readonly RunLikelihood[], i: number): number {
  return runs.reduce((sum, run) => sum + (run.ln[i] ?? 0), 0);
}

function lnOneModeOrBoth(runs: readonly RunLikelihood[], i: number, other: number): number {
  const inMode = (mode: Mode): number =>
    runs.reduce((sum, run) => sum + (run.ln[run.mode === mode ? i : other] ?? 0), 0);
  return logSum([lnAll(runs, i), inMode('cooling'), inMode('heating')]) - Math.log(3);
}

function keyOf(parts: readonly Part[]): string {
  return parts.map((part) => part.key).join(' + ');
}

function chancesOf(weighed: readonly Weighed[]): ReadonlyMap<CauseId, number> {
  const chances = new Map<CauseId, number>([['none', 0]]);
  for (const { hypothesis, chance } of weighed) {
    if (hypothesis.parts.length === 0) chances.set('none', chance);
    for (const { cause } of hypothesis.parts) chances.set(cause, (chances.get(cause) ?? 0) + chance);
  }
  return chances;
}

/** Causes by falling chance, `none` among them. Check: tests/diagnostics/causes/posterior.test.ts */
export function ranked(
  posterior: Posterior,
): readonly { readonly cause: CauseId; readonly chance: number }[] {
  return [...posterior.chances]
    .map(([cause, chance]) => ({ cause, chance }))
    .sort((a, b) => b.chance - a.chance);
}
