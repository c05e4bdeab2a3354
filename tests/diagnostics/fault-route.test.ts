import { describe, expect, it } from 'vitest';
import { hypothesesOf } from '@/lib/diagnostics/causes/hypotheses';
import type { EvidenceRun } from '@/lib/diagnostics/causes/likelihood';
import { type Posterior, posteriorOf, runLikelihood } from '@/lib/diagnostics/causes/posterior';
import { faultEffect } from '@/lib/diagnostics/fault-effects/fault-effect';
import { severityScale } from '@/lib/diagnostics/fault-effects/severity';
import { agePrior } from '@/lib/diagnostics/loss/age-prior';
import { conditionsOf } from '@/lib/diagnostics/loss/conditions-of-run';
import { faultRoute } from '@/lib/diagnostics/loss/fault-route';
import { lossOfRun } from '@/lib/diagnostics/loss/loss-of-run';
import { wordsOf } from '@/lib/sheet/languages';
import type { CauseId } from '@/lib/visit/cause';
import './support/matchers';
import { contextOfRun, visitOf } from './support/visit-of';

const visit = visitOf([]);
const hypotheses = hypothesesOf(visit);
const summer = {
  mode: 'cooling',
  metering: 'txv',
  outdoorF: 90,
  indoorF: 76,
  indoorWetBulbF: 63,
  ratedCop: 4,
} as const;

/** All weight on one story. */
function certain(...keys: readonly string[]): Posterior {
  const weighed = hypotheses.map((hypothesis) => {
    const own = hypothesis.parts.map((part) => part.key).join(' + ');
    return { hypothesis, chance: own === keys.join(' + ') ? 1 : 0 };
  });
  const chances = new Map<CauseId, number>();
  return { weighed, chances };
}

describe('loss by published fault correlations', () => {
  it('wiring: a certain cause gives just its correlation at its severity, no surer than between units', () => {
    const route = faultRoute(visit, certain('outdoorCoilFouled severe'), summer);
    const effect = faultEffect({
      ...summer,
      cause: 'outdoorCoilFouled',
      level: severityScale('outdoorCoilFouled').severe,
    });
    const known = effect.kind === 'effect' ? effect : undefined;
    expect(route.lnCapacity.value).toBeCloseToWithin(known?.lnCapacity.mean ?? null, 1e-12);
    expect(route.lnPower.sd).toBeCloseToWithin(Math.hypot(known?.lnPower.sd ?? 0, 0.05), 1e-12);
    expect(route.lostByCause.map(({ cause }) => cause)).toEqual(['outdoorCoilFouled']);
  });

  it('wiring: what the likeliest correlation was held at is named', () => {
    const cold = { ...summer, outdoorF: 125 };
    const notes = faultRoute(visit, certain('outdoorCoilFouled severe'), cold).notes.map(({ code }) => code);
    expect(notes).toContain('effect.outdoorBeyondFit');
    expect(faultRoute(visit, certain(), summer).notes).toEqual([]);
    const words: Readonly<Record<string, string>> = wordsOf('en').stages;
    expect(notes.filter((code) => words[code] === undefined)).toEqual([]);
  });

  it('identity: nothing wrong is no loss, with the between-unit spread', () => {
    const route = faultRoute(visit, certain(), summer);
    expect(route).toMatchObject({
      lnCapacity: { value: 0, sd: 0.05 },
      lnPower: { value: 0, sd: 0.05 },
      lostByCause: [],
    });
  });

  it('identity: mean and variance over two stories follow the law of total variance', () => {
    const half = certain().weighed.map((w, i) => {
      const severe = certain('lowCharge severe').weighed[i]?.chance ?? 0;
      return { ...w, chance: 0.5 * w.chance + 0.5 * severe };
    });
    const route = faultRoute(visit, { weighed: half, chances: new Map() }, summer);
    const sure = faultRoute(visit, certain('lowCharge severe'), summer);
    const own = Math.sqrt(sure.lnCapacity.sd ** 2 - 0.05 ** 2);
    expect(route.lnCapacity.value).toBeCloseToWithin(sure.lnCapacity.value / 2, 1e-12);
    const variance = 0.5 * own ** 2 + 0.25 * sure.lnCapacity.value ** 2 + 0.05 ** 2;
    expect(route.lnCapacity.sd).toBeCloseToWithin(Math.sqrt(variance), 1e-9);
  });

  it('identity: a pair loses more than either cause alone', () => {
    const at = (...keys: string[]) => faultRoute(visit, certain(...keys), summer);
    const pair = at('lowCharge severe', 'outdoorCoilFouled severe');
    const efficiency = (route: typeof pair) => route.lnPower.value - route.lnCapacity.value;
    expect(efficiency(pair)).toBeGreaterThan(efficiency(at('lowCharge severe')));
    expect(efficiency(pair)).toBeGreaterThan(efficiency(at('outdoorCoilFouled severe')));
    expect(pair.lostByCause).toHaveLength(2);
  });

  it('identity: a cause a unit cannot have does nothing', () => {
    const cooler = visitOf([], { kind: 'airConditioner' });
    expect(faultRoute(cooler, certain('reversingValveLeaking severe'), summer).lnCapacity.value).toBe(0);
  });
});

describe('conditions asked of the correlations', () => {
  it('wiring: those of the run, else typical ones of the mode; the rated COP is gross over outdoor unit', () => {
    const run = { mode: 'cooling', outdoorAirF: 91, returnAirF: 77, returnWetBulbF: 64 } as const;
    const context = contextOfRun(run, { ratings: { seerBtuPerWh: 14 } });
    const read = conditionsOf('cooling', context, context);
    expect(read).toMatchObject({
      mode: 'cooling',
      metering: 'txv',
      outdoorF: 91,
      indoorF: 77,
      indoorWetBulbF: 64,
    });
    expect(read.ratedCop ?? 0).toBeGreaterThan(3);
    expect(read.ratedCop ?? 9).toBeLessThan(5);
    const typical = conditionsOf('heating', undefined, context);
    expect(typical).toMatchObject({ mode: 'heating', metering: 'txv', ratedCop: read.ratedCop });
    expect(typical.outdoorF).toBeLessThan(50);
    expect(conditionsOf('cooling', contextOfRun({ mode: 'cooling' }), undefined).outdoorF).toBeGreaterThan(
      70,
    );
  });
});

describe('correlations within the loss', () => {
  const run: EvidenceRun = {
    runId: 'r',
    mode: 'cooling',
    metering: 'txv',
    features: [
      { id: 'condensing', readingId: 'x', residual: 22, sd: 3.3 },
      { id: 'subcooling', readingId: 'x', residual: 1, sd: 2 },
      { id: 'liquidApproach', readingId: 'x', residual: 20, sd: 4 },
    ],
  };
  const route = faultRoute(visit, posteriorOf(hypotheses, [runLikelihood(hypotheses, run)]), summer);

  it('identity: without measured capacity and power the causes speak, and the shares say which', () => {
    const loss = lossOfRun('cooling', undefined, agePrior(visit), route);
    expect(loss.routes.map(({ id }) => id)).toEqual(['faultCorrelation', 'agePrior']);
    expect(loss.powerRatioToHealthy.likely).toBeGreaterThan(1.05);
    expect(loss.basis).toBe('assumed');
    expect(loss.shares?.[0]?.cause).toBe('outdoorCoilFouled');
    const total = loss.shares?.reduce((sum, { shareFrac }) => sum + shareFrac, 0) ?? 9;
    expect(total).toBeLessThanOrEqual(1 + 1e-9);
  });

  it('identity: measured against causes more than two sigma apart widens and says so', () => {
    const healthy = {
      capacityBtuh: 36_000,
      outdoorUnitW: 2_500,
      blowerW: 400,
      sdLnCapacity: 0.05,
      sdLnPower: 0.05,
      beyondRange: false,
      indoorAssumed: false,
      indoor: { name: 'x', value: 63, sd: 1, unit: 'F', basis: 'measured' },
    } as const;
    const evidence = (mean: number) => ({
      runId: 'r',
      capacity: [{ id: 'heatBalance', mean, sd: 0.05 } as const],
      healthy,
      notes: [],
    });
    const torn = lossOfRun('cooling', evidence(-0.9), agePrior(visit), route);
    const agreed = lossOfRun('cooling', evidence(route.lnCapacity.value), agePrior(visit), route);
    expect(torn.notes).toContainEqual({ code: 'measuredAgainstCauses', values: { what: 'capacity' } });
    expect(agreed.notes.map(({ code }) => code)).not.toContain('measuredAgainstCauses');
    expect(torn.lnCapacity.sd).toBeGreaterThan(2 * agreed.lnCapacity.sd);
  });

  it('identity: what no cause explains stays unexplained', () => {
    const loss = lossOfRun('cooling', undefined, agePrior(visit), {
      ...route,
      lnCapacity: { value: -0.5, sd: 0.05 },
      lnPower: { value: 0.3, sd: 0.05 },
    });
    const total = loss.shares?.reduce((sum, { shareFrac }) => sum + shareFrac, 0) ?? 9;
    const explained = route.lostByCause.reduce((sum, { lnEfficiency }) => sum + lnEfficiency, 0);
    // shares below one percent are left out
    expect(total).toBeCloseToWithin(explained / (loss.lnPower.mean - loss.lnCapacity.mean), 0.03);
    expect(total).toBeLessThan(0.6);
  });
});
