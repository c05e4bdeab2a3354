import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airDifference,
  airflowPerTon,
  bestAirflow,
  directAirflow,
  faceVelocity,
  grilleAirflow,
  grilleFreeArea,
  heatRiseAirflow,
  sensibleCapacity,
  sensibleFactor,
  totalCapacity,
  totalExternalStatic,
} from '@/lib/diagnostics/derived/air-side';
import { derivedById, deriveRun } from '@/lib/diagnostics/derived/derive-run';
import type { DerivedValue } from '@/lib/diagnostics/findings';
import './support/matchers';
import { contextOfRun } from './support/visit-of';

function methods(...values: (DerivedValue | undefined)[]): DerivedValue[] {
  return values.filter((value) => value !== undefined);
}

describe('airflow', () => {
  // Trade note with worked example, read: 235 V, 75 A, 110 F supply, 74 F return -> 1,548 cfm with 3.414 Btu/Wh;
  // the factor here is 3.412, hence 2 cfm. Second example of a web page, read: 235 V, 49 A, 30 F -> 1,212 cfm.
  it.each([
    [75, 110, 74, 1_548, 2],
    [49, 100, 70, 1_212, 2],
  ])(
    'outside: electric heat at 235 V, %d A, %d F over %d F moves %d cfm',
    (heatRiseA, supply, back, cfm, tolerance) => {
      const context = contextOfRun({
        mode: 'heating',
        heatRiseV: 235,
        heatRiseA,
        heatRiseSupplyF: supply,
        heatRiseReturnF: back,
      });
      expect(heatRiseAirflow(context)?.value).toBeCloseToWithin(cfm, tolerance);
    },
  );

  it('outside: a 400 in2 grille at 0.70 has 280 in2 free [common practice]', () => {
    const context = contextOfRun({ mode: 'cooling', grilleAreaIn2: 400, grilleFreeAreaFrac: 0.7 });
    expect(grilleFreeArea(context)?.value).toBeCloseToWithin(280, 1e-9);
    const assumed = contextOfRun({ mode: 'cooling', grilleAreaIn2: 400 });
    expect(grilleFreeArea(assumed)).toMatchObject({ basis: 'assumed' });
    expect(grilleFreeArea(assumed)?.value).toBeCloseToWithin(280, 1e-9);
  });

  it('identity: traverse: velocity x free area / 144; the mean of points beats a typed mean', () => {
    const context = contextOfRun({
      mode: 'cooling',
      grilleAreaIn2: 400,
      grilleFreeAreaFrac: 0.72,
      grilleFaceFpm: 999,
      grilleFacePointsFpm: [480, 500, 520, 500],
    });
    expect(faceVelocity(context)).toMatchObject({ value: 500, name: 'grilleFacePointsFpm' });
    expect(grilleAirflow(context)?.value).toBeCloseToWithin(1_000, 1e-9);
  });

  it('identity: scattered points widen the traverse', () => {
    const at = (grilleFacePointsFpm: number[]) =>
      grilleAirflow(
        contextOfRun({ mode: 'cooling', grilleAreaIn2: 400, grilleFreeAreaFrac: 0.7, grilleFacePointsFpm }),
      );
    expect(at([300, 700, 500])?.sd ?? 0).toBeGreaterThan(at([495, 505, 500])?.sd ?? 1e9);
  });

  it('identity: blower watts, when read, are added to the heat of the strips', () => {
    const readings = { heatRiseV: 240, heatRiseA: 40, heatRiseSupplyF: 100, heatRiseReturnF: 70 } as const;
    const without = heatRiseAirflow(contextOfRun({ mode: 'heating', ...readings }));
    const withBlower = heatRiseAirflow(contextOfRun({ mode: 'heating', ...readings, blowerW: 480 }));
    expect((withBlower?.value ?? 0) / (without?.value ?? 1)).toBeCloseToWithin((9_600 + 480) / 9_600, 1e-9);
  });

  it('identity: no rise, no airflow', () => {
    const readings = { heatRiseV: 240, heatRiseA: 40, heatRiseSupplyF: 70, heatRiseReturnF: 70 } as const;
    expect(heatRiseAirflow(contextOfRun({ mode: 'heating', ...readings }))).toBeUndefined();
  });

  it('identity: best airflow lies between the methods, weighted to the surer one', () => {
    const context = contextOfRun({
      mode: 'heating',
      airflowCfm: 1_000,
      heatRiseV: 240,
      heatRiseA: 40,
      heatRiseSupplyF: 100,
      heatRiseReturnF: 72,
    });
    const direct = directAirflow(context);
    const rise = heatRiseAirflow(context);
    const best = bestAirflow(methods(direct, rise));
    const sdOf = (value: DerivedValue | undefined) => value?.sd ?? Number.NaN;
    const expected =
      ((direct?.value ?? 0) / sdOf(direct) ** 2 + (rise?.value ?? 0) / sdOf(rise) ** 2) /
      (1 / sdOf(direct) ** 2 + 1 / sdOf(rise) ** 2);
    expect(best?.value).toBeCloseToWithin(expected, 1e-6);
    expect(sdOf(best)).toBeLessThan(Math.min(sdOf(direct), sdOf(rise)));
    expect(bestAirflow([])).toBeUndefined();
  });

  it('identity: methods that disagree widen the result instead of hiding it', () => {
    const context = contextOfRun({
      mode: 'heating',
      airflowCfm: 1_400,
      heatRiseV: 240,
      heatRiseA: 40,
      heatRiseSupplyF: 110,
      heatRiseReturnF: 70,
    });
    const all = methods(directAirflow(context), heatRiseAirflow(context));
    const best = bestAirflow(all);
    expect(all).toHaveLength(2);
    expect(best?.sd ?? 0).toBeGreaterThan(Math.min(...all.map((value) => value.sd)));
  });

  it('identity: cfm per ton and total external static', () => {
    const context = contextOfRun(
      { mode: 'cooling', airflowCfm: 1_000, supplyStaticInWc: 0.22, returnStaticInWc: -0.25 },
      { nominalTons: 2.5 },
    );
    expect(airflowPerTon(context, directAirflow(context))).toMatchObject({ value: 400, unit: 'cfm/ton' });
    expect(totalExternalStatic(context)?.value).toBeCloseToWithin(0.47, 1e-9);
  });
});

describe('heat on the air side', () => {
  // Standard-atmosphere factors of ASHRAE Fundamentals ch. 1, printed to three or four digits.
  it.each([
    [0, 1.08],
    [1_000, 1.042],
    [2_000, 1.004],
    [3_000, 0.968],
    [4_000, 0.933],
    [5_000, 0.899],
    [6_000, 0.865],
    [7_000, 0.833],
    [8_000, 0.802],
  ])('outside: the sensible factor at %d ft is %f Btu/(h cfm F)', (altitudeFt, factor) => {
    expect(sensibleFactor(altitudeFt)).toBeCloseToWithin(factor, 0.0006);
  });

  // Trade article on target split from a maker's data, read (recomputed): 1,400 cfm, sensible over split.
  it.each([
    [25_010, 16.5],
    [31_730, 21.0],
    [37_360, 24.7],
    [37_930, 25.1],
  ])('outside: %d Btu/h sensible at 1,400 cfm is a split of %f F', (sensible, split) => {
    const context = contextOfRun({
      mode: 'cooling',
      airflowCfm: 1_400,
      returnAirF: 80,
      supplyAirF: 80 - split,
    });
    // split printed to 0.1 F: half a digit is 0.3 %
    expect(sensibleCapacity(context, directAirflow(context))?.value).toBeWithinFrac(sensible, 0.004);
  });

  it('identity: split in cooling and rise in heating are positive for a working unit', () => {
    const readings = { returnAirF: 70, supplyAirF: 95 } as const;
    expect(airDifference(contextOfRun({ mode: 'heating', ...readings }))).toMatchObject({
      id: 'airRiseFd',
      value: 25,
    });
    expect(airDifference(contextOfRun({ mode: 'cooling', ...readings }))).toMatchObject({
      id: 'airSplitFd',
      value: -25,
    });
  });

  // 80/67 F to 58/57 F at 1,200 cfm: enthalpies 31.46 and 24.48 Btu/lb on the ASHRAE chart, read to 0.05.
  it('outside: total capacity by wet bulbs [ASHRAE psychrometric chart, memory]', () => {
    const context = contextOfRun({
      mode: 'cooling',
      airflowCfm: 1_200,
      returnAirF: 80,
      returnWetBulbF: 67,
      supplyAirF: 58,
      supplyWetBulbF: 57,
    });
    expect(totalCapacity(context, directAirflow(context))?.value).toBeWithinFrac(
      4.5 * 1_200 * (31.46 - 24.48),
      0.02,
    );
  });

  it('identity: in heating the sensible heat is the total, so there is no separate total', () => {
    const run = { mode: 'heating', airflowCfm: 1_000, returnAirF: 70, supplyAirF: 95 } as const;
    const values = deriveRun(contextOfRun(run));
    expect(derivedById(values, 'totalCapacityBtuh')).toBeUndefined();
    expect(derivedById(values, 'sensibleCapacityBtuh')?.value).toBeCloseToWithin(27_000, 1e-6);
  });

  it('property: more air or a larger difference never means less heat', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 300, max: 2_000, noNaN: true }),
        fc.double({ min: 1, max: 30, noNaN: true }),
        fc.double({ min: 1, max: 1.5, noNaN: true }),
        (airflowCfm, split, factor) => {
          const at = (cfm: number, fd: number) => {
            const context = contextOfRun({
              mode: 'cooling',
              airflowCfm: cfm,
              returnAirF: 78,
              supplyAirF: 78 - fd,
            });
            return sensibleCapacity(context, directAirflow(context))?.value ?? Number.NaN;
          };
          const base = at(airflowCfm, split);
          expect(at(airflowCfm * factor, split)).toBeGreaterThanOrEqual(base);
          expect(at(airflowCfm, split * factor)).toBeGreaterThanOrEqual(base);
        },
      ),
      { seed: 12, numRuns: 100 },
    );
  });
});
