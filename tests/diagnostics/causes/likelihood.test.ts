import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { featureIds, severityWords } from '@/lib/diagnostics/causes/feature';
import { type Part, partOf } from '@/lib/diagnostics/causes/hypotheses';
import { type EvidenceRun, lnFeature, lnRun, logSum, readyRun } from '@/lib/diagnostics/causes/likelihood';
import { CauseId } from '@/lib/visit/cause';
import '../support/matchers';

const causes = CauseId.options.filter((cause) => cause !== 'none');
const anyPart = fc
  .tuple(fc.constantFrom(...causes), fc.constantFrom(...severityWords))
  .map(([cause, word]) => partOf(cause, word));

function lnOf(run: EvidenceRun, parts: readonly Part[]): number {
  return lnRun(readyRun(run), parts);
}

describe('likelihood', () => {
  it('identity: the density is tempered normal with a thin tail of outliers', () => {
    const feature = { id: 'superheat', readingId: 'x', residual: 3, sd: 2 } as const;
    const bell = (x: number, sd: number) => Math.exp((-x * x) / (2 * sd * sd)) / sd;
    expect(lnFeature(feature, 0, 0)).toBeCloseToWithin(
      0.9 * Math.log(0.995 * bell(3, 2) + 0.005 * bell(3, 10)),
      1e-9,
    );
    expect(lnFeature(feature, 4, 5)).toBeCloseToWithin(
      0.9 * Math.log(0.995 * bell(1, 3) + 0.005 * bell(3, 10)),
      1e-9,
    );
  });

  it('identity: no single reading decides alone: however far off, its weight is bounded', () => {
    const at = (residual: number) => {
      const feature = { id: 'condensing', readingId: 'x', residual, sd: 3 } as const;
      return lnFeature(feature, 16, 9) - lnFeature(feature, 0, 0);
    };
    expect(at(16)).toBeGreaterThan(3);
    expect(at(40)).toBeLessThan(12);
    expect(at(400)).toBeLessThan(12);
  });

  it('identity: superheat and subcooling stop at 0: a shift below the floor counts as the floor', () => {
    const feature = { id: 'superheat', readingId: 'x', residual: -4, sd: 2 } as const;
    expect(lnFeature({ ...feature, floor: -4 }, -14, 1)).toBeCloseToWithin(lnFeature(feature, -4, 1), 1e-12);
  });

  it('identity: an unknown metering device is the mean of both, variants of a cause the mean of them', () => {
    const features = [{ id: 'superheat', readingId: 'x', residual: 12, sd: 4 }] as const;
    const run = (metering?: 'txv' | 'fixedOrifice'): EvidenceRun => ({
      runId: 'r',
      mode: 'cooling',
      features,
      ...(metering === undefined ? {} : { metering }),
    });
    const parts = [partOf('lowCharge', 'moderate')];
    const both = [lnOf(run('txv'), parts), lnOf(run('fixedOrifice'), parts)];
    expect(lnOf(run(), parts)).toBeCloseToWithin(logSum(both) - Math.log(2), 1e-12);
    const fan: EvidenceRun = {
      runId: 'r',
      mode: 'cooling',
      metering: 'txv',
      features: [{ id: 'fanCapacitor', readingId: 'x', residual: -0.2, sd: 0.04 }],
    };
    const capacitor = lnOf(fan, [partOf('runCapacitorWeak', 'moderate')]) - lnOf(fan, []);
    expect(capacitor).toBeGreaterThan(3);
  });

  it('property: a reading at its target never raises the odds of a cause, or pair, against nothing wrong', () => {
    fc.assert(
      fc.property(
        anyPart,
        fc.option(anyPart, { nil: undefined }),
        fc.constantFrom(...featureIds),
        fc.constantFrom('cooling' as const, 'heating' as const),
        fc.constantFrom('txv' as const, 'fixedOrifice' as const),
        fc.double({ min: 0.01, max: 20, noNaN: true }),
        (first, second, id, mode, metering, sd) => {
          const run: EvidenceRun = {
            runId: 'r',
            mode,
            metering,
            features: [{ id, readingId: 'x', residual: 0, sd }],
          };
          const parts = second === undefined || second.cause === first.cause ? [first] : [first, second];
          expect(lnOf(run, parts)).toBeLessThanOrEqual(lnOf(run, []) + 1e-12);
        },
      ),
      { seed: 41, numRuns: 1_000 },
    );
  });

  it('identity: sums of logarithms', () => {
    expect(logSum([Math.log(1), Math.log(2)])).toBeCloseToWithin(Math.log(3), 1e-12);
    expect(logSum([-1e4, -1e4])).toBeCloseToWithin(-1e4 + Math.log(2), 1e-9);
    expect(logSum([])).toBe(Number.NEGATIVE_INFINITY);
    expect(logSum([2])).toBe(2);
  });
});
