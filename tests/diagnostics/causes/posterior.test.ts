import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FeatureId, featureIds } from '@/lib/diagnostics/causes/feature';
import { hypothesesOf } from '@/lib/diagnostics/causes/hypotheses';
import type { EvidenceRun } from '@/lib/diagnostics/causes/likelihood';
import { posteriorOf, ranked, runLikelihood } from '@/lib/diagnostics/causes/posterior';
import type { Mode } from '@/lib/visit/run';
import '../support/matchers';
import { visitOf } from '../support/visit-of';

const hypotheses = hypothesesOf(visitOf([]));

function run(mode: Mode, residuals: Partial<Record<FeatureId, number>>, sd = 3): EvidenceRun {
  const features = Object.entries(residuals).map(([id, residual]) => ({
    id: id as FeatureId,
    readingId: id,
    residual,
    sd,
  }));
  return { runId: mode, mode, metering: 'txv', features };
}

function chances(...runs: EvidenceRun[]) {
  return posteriorOf(
    hypotheses,
    runs.map((r) => runLikelihood(hypotheses, r)),
  ).chances;
}

describe('chances of the causes', () => {
  it('identity: without readings the prior comes back; chances of all stories add up to 1', () => {
    const posterior = posteriorOf(hypotheses, []);
    const total = posterior.weighed.reduce((sum, { chance }) => sum + chance, 0);
    expect(total).toBeCloseToWithin(1, 1e-12);
    const weights = hypotheses.map(({ lnPrior }) => Math.exp(lnPrior));
    expect(posterior.chances.get('none')).toBeCloseToWithin(
      (weights[0] ?? 0) / weights.reduce((sum, w) => sum + w, 0),
      1e-12,
    );
  });

  it('identity: the chance of a cause counts its pairs; ranking falls', () => {
    const posterior = posteriorOf(hypotheses, [
      runLikelihood(hypotheses, run('cooling', { condensing: 16 })),
    ]);
    const own = posterior.weighed
      .filter(({ hypothesis }) => hypothesis.parts.some(({ cause }) => cause === 'outdoorCoilFouled'))
      .reduce((sum, { chance }) => sum + chance, 0);
    expect(posterior.chances.get('outdoorCoilFouled')).toBeCloseToWithin(own, 1e-12);
    const order = ranked(posterior).map(({ chance }) => chance);
    expect(order).toEqual([...order].sort((a, b) => b - a));
  });

  it('identity: likelihoods of runs multiply', () => {
    const one = run('cooling', { subcooling: -6 });
    const twice = chances(one, one).get('lowCharge') ?? 0;
    expect(twice).toBeGreaterThan(chances(one).get('lowCharge') ?? 1);
  });

  it('identity: a starved coil in one mode only points to the metering device of that mode', () => {
    const starved = { evaporating: -12, superheat: 24, discharge: 20, subcooling: 3 };
    const well = { evaporating: 0, superheat: 0, discharge: 0, subcooling: 0 };
    const oneMode = chances(run('cooling', well), run('heating', starved)).get('meteringRestriction') ?? 0;
    const bothModes =
      chances(run('cooling', starved), run('heating', starved)).get('meteringRestriction') ?? 0;
    expect(oneMode).toBeGreaterThan(0.8);
    expect(oneMode).toBeGreaterThan(bothModes);
  });

  it('property: the order of runs does not matter', () => {
    const value = fc.double({ min: -15, max: 15, noNaN: true });
    fc.assert(
      fc.property(value, value, value, value, (a, b, c, d) => {
        const cooling = run('cooling', { condensing: a, superheat: b });
        const heating = run('heating', { condensing: c, subcooling: d });
        const [forth, back] = [chances(cooling, heating), chances(heating, cooling)];
        const apart = [...forth].map(([cause, chance]) => Math.abs(chance - (back.get(cause) ?? Number.NaN)));
        expect(Math.max(...apart)).toBeLessThan(1e-9);
      }),
      { seed: 42, numRuns: 25 },
    );
  });

  // Not "never raises a chance": what speaks against one fault leaves more to the others (Bayes scales to 1).
  it('property: a reading at its target never raises the odds of any story against nothing wrong', () => {
    const anyFeature = fc.record({
      id: fc.constantFrom(...featureIds),
      residual: fc.double({ min: -20, max: 20, noNaN: true }),
      sd: fc.double({ min: 0.02, max: 10, noNaN: true }),
    });
    const anyRun = fc.record({
      mode: fc.constantFrom('cooling' as const, 'heating' as const),
      features: fc.uniqueArray(anyFeature, { maxLength: 8, selector: ({ id }) => id }),
      metering: fc.constantFrom('txv' as const, 'fixedOrifice' as const, undefined),
    });
    const oddsAgainstNone = (runs: readonly EvidenceRun[]): Float64Array => {
      const { weighed } = posteriorOf(
        hypotheses,
        runs.map((one) => runLikelihood(hypotheses, one)),
      );
      const none = Math.log(weighed[0]?.chance ?? Number.NaN);
      return Float64Array.from(weighed, ({ chance }) => Math.log(chance) - none);
    };
    let compared = 0;
    fc.assert(
      fc.property(
        fc.array(anyRun, { minLength: 1, maxLength: 3 }),
        fc.constantFrom(...featureIds),
        fc.double({ min: 0.02, max: 10, noNaN: true }),
        (drawn, id, sd) => {
          const runs = drawn.map(({ mode, metering, features }, i): EvidenceRun => {
            const others = features.filter((feature) => i > 0 || feature.id !== id);
            return {
              runId: `r${i}`,
              mode,
              features: others.map((feature) => ({ ...feature, readingId: feature.id })),
              ...(metering === undefined ? {} : { metering }),
            };
          });
          const [first, ...rest] = runs as [EvidenceRun, ...EvidenceRun[]];
          const read = { ...first, features: [...first.features, { id, readingId: id, residual: 0, sd }] };
          const [without, withIt] = [oddsAgainstNone(runs), oddsAgainstNone([read, ...rest])];
          // chances too small for a double say nothing
          const rose = hypotheses.filter((_, i) => {
            const [was, is] = [without[i] ?? 0, withIt[i] ?? 0];
            return Number.isFinite(was) && Number.isFinite(is) && is > was + 1e-9;
          });
          compared += without.filter(Number.isFinite).length;
          expect(rose.map(({ parts }) => parts.map(({ key }) => key))).toEqual([]);
        },
      ),
      { seed: 44, numRuns: 300 },
    );
    expect(compared).toBeGreaterThan(20_000);
  });

  it('property: readings at their targets never lower the chance of nothing wrong', () => {
    const ids: FeatureId[] = [
      'evaporating',
      'condensing',
      'superheat',
      'subcooling',
      'discharge',
      'power',
      'efficiency',
    ];
    fc.assert(
      fc.property(
        fc.subarray(ids),
        fc.constantFrom(...ids),
        fc.double({ min: 0.05, max: 8, noNaN: true }),
        (some, one, sd) => {
          const at = (list: readonly FeatureId[]) =>
            chances(run('cooling', Object.fromEntries(list.map((id) => [id, 0])), sd)).get('none') ??
            Number.NaN;
          const before = some.filter((id) => id !== one);
          expect(at([...before, one])).toBeGreaterThanOrEqual(at(before) - 1e-12);
        },
      ),
      { seed: 43, numRuns: 40 },
    );
  });
});
