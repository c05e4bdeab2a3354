import type { CauseId } from '../../visit/cause';
import type { Saying } from '../../visit/wording';
import data from './data/severity.json';

export type Severity = 'mild' | 'moderate' | 'severe';

export type SeverityScale = Readonly<Record<Severity, number>> & {
  /** What the level counts; words in wording/en.json. */
  readonly meaning: Saying;
  readonly source: string;
  readonly status: string;
};

/**
 * Fault levels that count as mild, moderate and severe, and what a level means for this cause.
 *
 * @param cause  suspected cause
 * @returns levels in the cause's own measure, rising; for `none` they mean nothing
 * Source: data/severity.json, status assumption
 * Check: tests/diagnostics/fault-effects/severity.test.ts
 */
export function severityScale(cause: CauseId): SeverityScale {
  const row = data.scale[cause];
  return { ...row, meaning: { code: row.meaning } };
}

/**
 * Word for a fault level: the nearest of the scale; below half of mild it has no word.
 *
 * @param cause  suspected cause
 * @param level  fault level, >= 0
 * Check: tests/diagnostics/fault-effects/severity.test.ts
 */
export function severityOf(cause: CauseId, level: number): Severity | 'slight' {
  const { mild, moderate, severe } = data.scale[cause];
  if (level < mild / 2) return 'slight';
  if (level < (mild + moderate) / 2) return 'mild';
  return level < (moderate + severe) / 2 ? 'moderate' : 'severe';
}
