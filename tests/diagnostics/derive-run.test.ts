import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { derivedById, deriveForLoss, deriveRun } from '@/lib/diagnostics/derived/derive-run';
import wording from '@/lib/diagnostics/wording/en.json';
import { fieldAt } from '@/lib/visit/field-at';
import { Run } from '@/lib/visit/run';
import { contextOfRun } from './support/visit-of';

const everything = {
  mode: 'cooling',
  runningMinutes: 20,
  suctionPsig: 130,
  dischargePsig: 365,
  liquidPsig: 362,
  suctionLineF: 55,
  dischargeLineF: 165,
  liquidLineF: 100,
  liquidBeforeMeteringF: 99,
  suctionBeforeValveF: 53.5,
  standingPsig: 275,
  standingCoilAirF: 90,
  outdoorAirF: 90,
  returnAirF: 76,
  returnHumidityFrac: 0.5,
  supplyAirF: 57,
  supplyWetBulbF: 55.5,
  lineV: 238,
  compressorA: 11,
  outdoorUnitA: 12,
  outdoorFanA: 0.9,
  outdoorUnitW: 2_700,
  blowerW: 450,
  airflowCfm: 1_150,
  grilleAreaIn2: 480,
  grilleFaceFpm: 480,
  heatRiseReturnF: 72,
  heatRiseSupplyF: 105,
  heatRiseV: 236,
  heatRiseA: 52,
  returnStaticInWc: -0.25,
  supplyStaticInWc: 0.2,
  compressorCapRatedUf: 45,
  compressorCapUf: 44,
  fanCapRatedUf: 5,
  fanCapUf: 4.9,
  stripKw: 10,
  stripA: 41,
  stripV: 238,
} as const;

describe('all derived values of a run', () => {
  const values = deriveRun(contextOfRun(everything, { ratedV: 230, ratedLoadA: 16 }));

  it('wiring: full readings give every quantity once, with words, formula, source and inputs', () => {
    expect(values).toHaveLength(37);
    expect(new Set(values.map((value) => value.id)).size).toBe(37);
    const words: Record<string, string> = wording;
    const lacking = values.filter(
      (value) =>
        words[`derived.${value.id}`] === undefined ||
        value.formula === '' ||
        value.source === '' ||
        value.inputs.length === 0 ||
        !(value.sd >= 0) ||
        !Number.isFinite(value.value),
    );
    expect(lacking.map((value) => value.id)).toEqual([]);
  });

  it('identity: the short form for the loss has the same numbers', () => {
    const short = deriveForLoss(contextOfRun(everything, { ratedV: 230, ratedLoadA: 16 }));
    expect(short.map((value) => value.id).sort()).toEqual([
      'outdoorUnitW',
      'powerFactorFrac',
      'refrigerantCapacityBtuh',
      'totalCapacityBtuh',
    ]);
    expect(short).toEqual(short.map((value) => derivedById(values, value.id)));
  });

  it('property: any readings inside the schema give finite values and no exception', () => {
    const names = Object.keys(Run.shape).filter((name) => {
      const field = fieldAt(['runs', '0', name]);
      return field.unit !== undefined && name !== 'grilleFacePointsFpm';
    });
    const readings = fc.record(
      Object.fromEntries(
        names.map((name) => {
          const { min = 0, max = 1 } = fieldAt(['runs', '0', name]);
          return [name, fc.double({ min, max, noNaN: true })];
        }),
      ),
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(
        readings,
        fc.constantFrom('cooling' as const, 'heating' as const),
        fc.constantFrom('R-22', 'R-410A', 'R-407C', 'R-32', 'R-454B', 'R-134a'),
        (some, mode, refrigerant) => {
          const found = deriveRun(contextOfRun({ ...some, mode }, { refrigerant }));
          expect(found.filter((v) => !Number.isFinite(v.value) || !Number.isFinite(v.sd))).toEqual([]);
        },
      ),
      { seed: 15, numRuns: 300 },
    );
  });
});
