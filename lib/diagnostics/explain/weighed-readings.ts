import type { ReadingName, Run } from '../../visit/run';
import type { FeatureId, FeatureReading } from '../causes/feature';
import { derivedById } from '../derived/derive-run';
import type { DerivedValue, WeighedReading } from '../findings';
import { readingOf } from '../sourced';

/** Features whose residual is a logarithm of a ratio. */
const LOGARITHMS: ReadonlySet<FeatureId> = new Set(['power', 'capacityGap']);

/**
 * The readings the causes were weighed on, each beside the healthy value it was held against.
 *
 * @param run       run of the visit
 * @param derived   derived values of the run
 * @param features  evidence of the run
 * @returns in the order of the features; a feature whose reading cannot be named again is left out
 * Check: tests/diagnostics/explain/weighed-readings.test.ts
 */
export function weighedReadings(
  run: Run,
  derived: readonly DerivedValue[],
  features: readonly FeatureReading[],
): readonly WeighedReading[] {
  return features.flatMap((feature) => {
    const value = derivedById(derived, feature.readingId) ?? readingOf(run, feature.readingId as ReadingName);
    if (value === undefined) return [];
    return [
      {
        id: feature.readingId,
        value: value.value,
        unit: value.unit,
        expected: expectedOf(feature, value.value),
        sigmas: feature.residual / feature.sd,
      },
    ];
  });
}

function expectedOf(feature: FeatureReading, value: number): number {
  if (LOGARITHMS.has(feature.id)) return value / Math.exp(feature.residual);
  // counted so that "high" means a high pressure, while the reading says how far below the air it evaporates
  return feature.id === 'evaporating' ? value + feature.residual : value - feature.residual;
}
