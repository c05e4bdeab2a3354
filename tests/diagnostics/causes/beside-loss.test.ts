import { describe, expect, it } from 'vitest';
import { besideLoss } from '@/lib/diagnostics/causes/beside-loss';
import { diagnose } from '@/lib/diagnostics/diagnose';
import type { CauseFinding, CausesFound, Loss } from '@/lib/diagnostics/findings';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import { healthyOf, type RunPart, visitOf } from '../support/visit-of';

function cause(id: CauseFinding['cause'], probability: number): CauseFinding {
  return {
    cause: id,
    probability,
    standing: 'likely',
    severity: { word: 'severe', level: 0.4 },
    speaksFor: [],
    speaksAgainst: [],
    confusedWith: [],
    hints: [],
  };
}

function found(causes: readonly CauseFinding[], verdict: CausesFound['verdict'] = 'found'): CausesFound {
  return {
    verdict,
    noFaultProbability: 0,
    causes,
    nextReadings: [],
    byRun: [],
    resolved: [],
    comparisons: [],
    notes: [],
  };
}

function loss(high: number): Loss {
  return {
    mode: 'cooling',
    capacityRatioToHealthy: { low: 0.6, likely: 0.8, high },
    powerRatioToHealthy: { low: 0.9, likely: 1, high: 1.1 },
    lnCapacity: { mean: -0.2, sd: 0.1 },
    lnPower: { mean: 0, sd: 0.1 },
    routes: [],
    basis: 'measured',
    notes: [],
    shares: [
      { cause: 'runCapacitorWeak', shareFrac: 0.1 },
      { cause: 'compressorValvesLeaking', shareFrac: 0.7 },
    ],
  };
}

describe('causes beside the loss', () => {
  const two = [cause('runCapacitorWeak', 0.95), cause('compressorValvesLeaking', 0.8)];

  it('identity: the cause that explains most of a clear loss is named where it is not the first', () => {
    const most = { cause: 'compressorValvesLeaking', shareFrac: 0.7 };
    expect(besideLoss(found(two), { cooling: loss(0.9) }).explainsMost).toEqual(most);
    expect(besideLoss(found(two), { cooling: loss(1.02) }).explainsMost).toBeUndefined();
    expect(besideLoss(found([...two].reverse()), { cooling: loss(0.9) }).explainsMost).toBeUndefined();
    expect(besideLoss(found(two, 'unclear'), { cooling: loss(0.9) }).explainsMost).toBeUndefined();
  });

  it('identity: "severe" is not said of a cause that is not likely while the loss may be none', () => {
    const word = (chance: number, high: number) =>
      besideLoss(found([cause('lowCharge', chance)]), { cooling: loss(high) }).causes[0]?.severity.word;
    expect([word(0.2, 1.02), word(0.8, 1.02), word(0.2, 0.9)]).toEqual(['moderate', 'severe', 'severe']);
  });

  it('regression: a weak capacitor leads, and the compressor valves that explain most of the loss are named', () => {
    const run: RunPart = {
      mode: 'cooling',
      suctionPsig: 105,
      dischargePsig: 300,
      suctionLineF: 75,
      dischargeLineF: 240,
      liquidLineF: 93,
      outdoorAirF: 90,
      returnAirF: 76,
      returnWetBulbF: 63,
      supplyAirF: 62,
      outdoorUnitA: 11,
      lineV: 238,
      compressorCapRatedUf: 45,
    };
    const of = (compressorCapUf: number) => {
      const visit = visitOf([{ ...run, compressorCapUf }], {
        metering: 'fixedOrifice',
        manufactureYear: 2013,
      });
      return diagnose({ visit, healthy: healthyOf(visit), properties: refrigerantProperties('R-410A') });
    };
    const told = [20, 0].map((uf) => {
      const { causes } = of(uf);
      return new Set([causes?.causes[0]?.cause, causes?.explainsMost?.cause]).has('compressorValvesLeaking');
    });
    expect(told).toEqual([true, true]);
    // at no capacitance at all the motor could not draw its usual power
    const flags = of(0).flags.map(({ code, severity }) => `${severity} ${code}`);
    expect(flags).toContain('conflict capacitorOpenWhileRunning');
    expect(of(20).flags.map(({ code }) => code)).not.toContain('capacitorOpenWhileRunning');
  });
});
