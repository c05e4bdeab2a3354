import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import procedure from '@/lib/diagnostics/healthy-unit/data/test-procedure.json';
import { curvePoint } from '@/lib/diagnostics/healthy-unit/performance-curve';
import { ratedBlowerW } from '@/lib/diagnostics/healthy-unit/rated-blower';
import {
  frostTest,
  type HeatingTests,
  type Procedure,
  seasonalCoolingRating,
  seasonalHeatingRating,
} from '@/lib/diagnostics/healthy-unit/seasonal-rating';
import { solveCooling } from '@/lib/diagnostics/healthy-unit/solve-cooling';
import { solveHeating } from '@/lib/diagnostics/healthy-unit/solve-heating';
import reference from '../../reference/seasonal-ratings.json';

const inverse = reference.inverse;
const FAN_W_PER_BTUH = 0.365 / 30;
const BTUH_PER_W = 3.412;

/** The published calculator uses raw curves (not 1 at the rating point) and lets the blower grow with capacity. */
const rawEirAtRating = {
  airConditioner: reference.curveValues.airConditionerAtRating.eir,
  heatPumpCooling: reference.curveValues.heatPumpAtRating.eir,
  heatPumpHeating: reference.curveValues.heatingAtRating.eir,
};
const rawCapacityAtRating = reference.curveValues.heatingAtRating.cap;

function seerOfPublished(curve: 'airConditioner' | 'heatPumpCooling', seer: number, copGross: number) {
  const eir82 = (curvePoint(curve, 67, 82).eirRatio * rawEirAtRating[curve]) / copGross;
  const net = 1 - BTUH_PER_W * FAN_W_PER_BTUH;
  return seasonalCoolingRating(
    { capacityBtuh: net, powerW: eir82 / BTUH_PER_W + FAN_W_PER_BTUH },
    seer < 13 ? 0.2 : 0.07,
  );
}

function hspfOfPublished(hspf: number, copGross47: number): number {
  const at = (gross: number, eirRatio: number) => ({
    capacityBtuh: 36_000 * (gross + BTUH_PER_W * FAN_W_PER_BTUH),
    powerW: 36_000 * ((gross * eirRatio) / copGross47 / BTUH_PER_W + FAN_W_PER_BTUH),
  });
  const raw = (f: number) => curvePoint('heatPumpHeating', 70, f).eirRatio * rawEirAtRating.heatPumpHeating;
  const capacity17 = curvePoint('heatPumpHeating', 70, 17).capacityRatio * rawCapacityAtRating;
  return seasonalHeatingRating({
    procedure: 'older',
    region: 'IV',
    tests: { at47: at(1, 1), at35: at(0.7519, raw(35)), at17: at(capacity17, raw(17)) },
    cooling95Btuh: 36_000,
    cyclicFrac: hspf < 7 ? 0.2 : 0.11,
    cutOutF: 10,
    cutInF: 14,
    designRequirementBtuh: 36_000,
  }).ratingBtuPerWh;
}

describe('outside: published inverse set [residential_hvac reference calculator, read; COP from its run, 4 decimals]', () => {
  it('covers five air conditioners and five heat pumps', () => {
    expect(inverse.air_conditioner).toHaveLength(5);
    expect(inverse.heat_pump).toHaveLength(5);
  });

  // the calculator mixes 0.03333 and 1/30 and 3.412: a few parts in ten thousand
  it.each(inverse.air_conditioner)('SEER $SEER air conditioner from its published COP', (row) => {
    expect(seerOfPublished('airConditioner', row.SEER, row.COP_4dec) / row.SEER).toBeCloseTo(1, 3);
  });

  it.each(inverse.heat_pump)('SEER $SEER heat pump from its published COP', (row) => {
    expect(seerOfPublished('heatPumpCooling', row.SEER, row.COP95_4dec) / row.SEER).toBeCloseTo(1, 3);
  });

  it.each(inverse.heat_pump)('HSPF $HSPF heat pump from its published COP at 47 F', (row) => {
    expect(Math.abs(hspfOfPublished(row.HSPF, row.COP47_4dec) / row.HSPF - 1)).toBeLessThan(0.002);
  });
});

describe('outside: solving ratings backwards', () => {
  it('SEER 13 / HSPF 8 with coefficient 0.08 has net COP 3.312 and 3.051 [resdx regression, read; 2 % and 3 %: its 82 F, 35 F and 17 F points come from other curves]', () => {
    const cooling = solveCooling({
      curve: 'heatPumpCooling',
      procedure: 'older',
      seasonalBtuPerWh: 13,
      cooling95Btuh: 36_000,
      airflowCfm: 1_200,
      cyclicFrac: 0.08,
    });
    const net95 = 36_000 / BTUH_PER_W / (cooling.outdoorUnitW + 438);
    const heating = solveHeating({
      procedure: 'older',
      seasonalBtuPerWh: 8,
      heating47Btuh: 35_460,
      cooling95Btuh: 36_000,
      airflowCfm: 1_200,
      cyclicFrac: 0.08,
      cutOutF: 5,
    });
    const net47 = 35_460 / BTUH_PER_W / (heating.outdoorUnitW + 438);
    expect(Math.abs(net95 / 3.312 - 1)).toBeLessThan(0.02);
    expect(Math.abs(net47 / 3.051 - 1)).toBeLessThan(0.03);
  });
});

const coolingRating = fc.record({
  curve: fc.constantFrom('airConditioner' as const, 'heatPumpCooling' as const),
  procedure: fc.constantFrom<Procedure>('older', 'newer'),
  seasonalBtuPerWh: fc.double({ min: 7, max: 22, noNaN: true }),
  tons: fc.double({ min: 1, max: 5, noNaN: true }),
  cyclicFrac: fc.double({ min: 0, max: 0.25, noNaN: true }),
});

describe('identity: a solved rating rates as it was given', () => {
  it('SEER or SEER2', () => {
    fc.assert(
      fc.property(coolingRating, ({ tons, ...rating }) => {
        const airflowCfm = 400 * tons;
        const solved = solveCooling({
          ...rating,
          cooling95Btuh: 12_000 * tons,
          airflowCfm,
        });
        const blowerW = ratedBlowerW('cooling', { ...rating, airflowCfm });
        const at82 = curvePoint(rating.curve, 67, 82);
        const back = seasonalCoolingRating(
          {
            capacityBtuh: solved.grossCapacityBtuh * at82.capacityRatio - procedure.btuhPerW.value * blowerW,
            powerW: solved.outdoorUnitW * at82.capacityRatio * at82.eirRatio + blowerW,
          },
          rating.cyclicFrac,
        );
        expect(back).toBeCloseTo(rating.seasonalBtuPerWh, 8);
      }),
    );
  });

  it('EER as well, when the two fit one curve', () => {
    const solved = solveCooling({
      curve: 'airConditioner',
      procedure: 'older',
      seasonalBtuPerWh: 13,
      at95BtuPerWh: 11,
      cooling95Btuh: 36_000,
      airflowCfm: 1_200,
      cyclicFrac: 0.07,
    });
    expect(solved.ratingsDisagree).toBe(false);
    expect(36_000 / (solved.outdoorUnitW + 438)).toBeCloseTo(11, 9);
  });

  it('an EER that fits no ordinary curve is held and marked, SEER kept', () => {
    const rating = {
      curve: 'airConditioner' as const,
      procedure: 'older' as const,
      seasonalBtuPerWh: 13,
      cooling95Btuh: 36_000,
      airflowCfm: 1_200,
      cyclicFrac: 0.07,
    };
    const odd = solveCooling({ ...rating, at95BtuPerWh: 7 });
    const plain = solveCooling(rating);
    expect(odd.ratingsDisagree).toBe(true);
    expect(odd.outdoorUnitW * Math.exp(odd.powerTilt?.lnAtTo ?? 0)).toBeCloseTo(plain.outdoorUnitW, 6);
  });

  it('HSPF or HSPF2', () => {
    const heatingRating = fc.record({
      procedure: fc.constantFrom<Procedure>('older', 'newer'),
      seasonalBtuPerWh: fc.double({ min: 6, max: 9, noNaN: true }),
      tons: fc.double({ min: 1.5, max: 5, noNaN: true }),
      cyclicFrac: fc.double({ min: 0, max: 0.25, noNaN: true }),
    });
    fc.assert(
      fc.property(heatingRating, ({ tons, ...given }) => {
        const airflowCfm = 400 * tons;
        const rating = {
          ...given,
          heating47Btuh: 11_820 * tons,
          cooling95Btuh: 12_000 * tons,
          airflowCfm,
          cutOutF: 0,
        };
        const solved = solveHeating(rating);
        expect(solved.outOfReach).toBe(false);
        const blowerW = ratedBlowerW('heating', rating);
        const blowerBtuh = procedure.btuhPerW.value * blowerW;
        const at17 = curvePoint('heatPumpHeating', 70, 17);
        const point47 = { capacityBtuh: rating.heating47Btuh, powerW: solved.outdoorUnitW + blowerW };
        const point17 = {
          capacityBtuh: solved.grossCapacityBtuh * at17.capacityRatio + blowerBtuh,
          powerW: solved.outdoorUnitW * at17.capacityRatio * at17.eirRatio + blowerW,
        };
        const tests: HeatingTests = {
          at47: point47,
          at35: frostTest(point47, point17),
          at17: point17,
        };
        const back = seasonalHeatingRating({ ...rating, region: 'IV', tests, cutInF: 0 });
        expect(back.ratingBtuPerWh).toBeCloseTo(given.seasonalBtuPerWh, 7);
      }),
    );
  });

  it('a rating no capacity can give is marked out of reach', () => {
    const rating = {
      procedure: 'older' as const,
      heating47Btuh: 35_000,
      cooling95Btuh: 36_000,
      airflowCfm: 1_200,
      cyclicFrac: 0.11,
      cutOutF: 0,
    };
    expect(solveHeating({ ...rating, seasonalBtuPerWh: 18 }).outOfReach).toBe(true);
    expect(solveHeating({ ...rating, seasonalBtuPerWh: 3 }).outOfReach).toBe(true);
    expect(solveHeating({ ...rating, seasonalBtuPerWh: 8 }).outOfReach).toBe(false);
  });

  it('a rated 17 F capacity is met', () => {
    const solved = solveHeating({
      procedure: 'older',
      seasonalBtuPerWh: 8,
      heating47Btuh: 35_000,
      heating17Btuh: 20_000,
      cooling95Btuh: 36_000,
      airflowCfm: 1_200,
      cyclicFrac: 0.11,
      cutOutF: 0,
    });
    const at17 = curvePoint('heatPumpHeating', 70, 17).capacityRatio;
    const gross = solved.grossCapacityBtuh * at17 * Math.exp(solved.capacityTilt?.lnAtTo ?? 0);
    expect(gross + procedure.btuhPerW.value * 438).toBeCloseTo(20_000, 6);
    expect(solved.ratingsDisagree).toBe(false);
  });
});

describe('outside: single-speed EER at 95 F from SEER [OpenStudio-HPXML unit tests, read; 3 %: blower grows with capacity there]', () => {
  it.each([
    ['airConditioner', 13, 11.2],
    ['airConditioner', 14, 12.1],
    ['airConditioner', 15, 13.0],
    ['airConditioner', 16, 13.6],
    ['heatPumpCooling', 13, 11.31],
    ['heatPumpCooling', 14, 12.21],
    ['heatPumpCooling', 15, 13.12],
  ] as const)('%s SEER %d', (curve, seer, eer) => {
    const rating = {
      curve,
      procedure: 'older' as const,
      seasonalBtuPerWh: seer,
      cooling95Btuh: 36_000,
      airflowCfm: 1_200,
      cyclicFrac: 0.07,
    };
    const solved = solveCooling(rating);
    const at95 = 36_000 / (solved.outdoorUnitW + ratedBlowerW('cooling', rating));
    expect(Math.abs(at95 / eer - 1)).toBeLessThan(0.03);
  });
});
