import table from './data/features.json';

/** A kind of evidence: one reading against what a healthy unit would show. */
export type FeatureId = keyof typeof table.features;

export const featureIds = Object.keys(table.features) as FeatureId[];

export type Direction = 'high' | 'low' | 'normal' | 'normalOrHigh' | 'normalOrLow' | 'varies';

export type SeverityWord = 'mild' | 'moderate' | 'severe';

export const severityWords: readonly SeverityWord[] = ['mild', 'moderate', 'severe'];

/** One feature as a run shows it. */
export type FeatureReading = {
  readonly id: FeatureId;
  /** Id of the reading or derived value behind it, as people see it. */
  readonly readingId: string;
  /** Reading less target, in the feature's unit. */
  readonly residual: number;
  /** Standard uncertainty of reading and target together. */
  readonly sd: number;
  /** Lowest residual physics allows (superheat and subcooling stop at 0). */
  readonly floor?: number;
};

/**
 * Shift that counts as fully high or fully low at a moderate fault.
 *
 * @param id    feature
 * @param sign  which side
 * @returns [feature's unit], > 0
 * Source: data/features.json, status beside each
 * Check: tests/diagnostics/causes/pattern.test.ts
 */
export function featureSize(id: FeatureId, sign: 1 | -1): number {
  const { high, low } = table.features[id];
  return sign === 1 ? high : low;
}

/** Mean and spread of a direction, as shares of the feature's size. Check: tests/diagnostics/causes/pattern.test.ts */
export function directionShares(direction: Direction): { readonly mean: number; readonly spread: number } {
  return table.directions[direction];
}

/** Share of the moderate shift, and chance, of each severity. Check: tests/diagnostics/causes/pattern.test.ts */
export function severityShare(word: SeverityWord): { readonly factor: number; readonly priorFrac: number } {
  return table.severity[word];
}
