import type { Saying } from '../../visit/wording';
import type { Target } from '../findings';
import type { Verdict } from '../verdict';

/** Rounding in the last digits must not turn "on the limit" into "outside". */
const SLACK = 1e-9;

export type TargetPart = {
  readonly id: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly source: string;
  readonly status: string;
  /** Standard uncertainty of the target itself. */
  readonly sd?: number;
  readonly note?: Saying;
};

/** A rule that has no answer at these conditions. */
export type NoTarget = { readonly id: string; readonly note: Saying };

export type TargetAnswer = Target | NoTarget;

/**
 * A target with its verdict on the reading: within (limits included), above or below.
 *
 * @param part     target without its reading
 * @param reading  what the run has for the same id; absent = no verdict
 * Check: tests/diagnostics/targets/build-target.test.ts
 */
export function judged(part: TargetPart, reading: number | undefined): Target {
  if (reading === undefined) return part;
  return { ...part, reading, verdict: verdictOf(part, reading) };
}

function verdictOf(part: TargetPart, reading: number): Verdict {
  const slack = SLACK * Math.max(1, Math.abs(reading));
  if (reading > part.high + slack) return 'above';
  return reading < part.low - slack ? 'below' : 'within';
}

/** Tells a target from the absence of one. */
export function isTarget(answer: TargetAnswer): answer is Target {
  return 'value' in answer;
}
