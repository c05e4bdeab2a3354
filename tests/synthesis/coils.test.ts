import { describe, expect, it } from 'vitest';
import { type CondenserInput, condense } from '../../scripts/synthesis/condenser';
import {
  counterflowEffectiveness,
  type EvaporatorInput,
  evaporate,
} from '../../scripts/synthesis/evaporator';
import { fluidOf } from '../../scripts/synthesis/fluid';
import {
  airFromHumidity,
  airFromWetBulb,
  barometerPsia,
  latentBtuPerLb,
} from '../../scripts/synthesis/moist-air';

const fluid = fluidOf('R-410A');
const psia = barometerPsia(0);

const evaporator: EvaporatorInput = {
  coil: { boilingUaBtuhF: 6000, bypassFrac: 0.15, ratedCfm: 1200 },
  fluid,
  evaporatingPsia: fluid.dewPsia(46),
  flowLbHr: 500,
  inletBtuLb: fluid.liquidBtuLb(100),
  air: airFromWetBulb(80, 67, psia),
  cfm: 1200,
  cleanFrac: 1,
};

const condenser: CondenserInput = {
  coil: { condensingUaBtuhF: 5000, ratedCfm: 2800 },
  fluid,
  condensingPsia: fluid.dewPsia(113),
  airInRefrigerantFrac: 0,
  flowLbHr: 500,
  inletBtuLb: fluid.vapour(fluid.dewPsia(113), 165).enthalpyBtuLb,
  air: airFromHumidity(95, 0.4, psia),
  cfm: 2800,
  cleanFrac: 1,
};

describe('evaporator', () => {
  it('identity: the refrigerant gains what the air loses, sensible and latent', () => {
    const state = evaporate(evaporator);
    const { air } = evaporator;
    const airLbHr = evaporator.cfm * 60 * air.lbPerFt3;
    const lost =
      airLbHr *
      (air.btuPerLbF * (air.airF - state.leavingF) +
        latentBtuPerLb * (air.humidityRatio - state.leavingHumidityRatio));
    expect(lost / state.heatBtuh).toBeCloseTo(1, 6);
    expect(evaporator.flowLbHr * (state.outletBtuLb - evaporator.inletBtuLb)).toBeCloseTo(state.heatBtuh, 3);
    expect(state.leavingHumidityRatio).toBeLessThan(air.humidityRatio);
  });

  it('property: less refrigerant leaves it warmer, more floods it; the gas never passes the air', () => {
    const outlet = (flowLbHr: number): number => evaporate({ ...evaporator, flowLbHr }).outletBtuLb;
    expect(outlet(300)).toBeGreaterThan(outlet(450));
    expect(outlet(450)).toBeGreaterThan(outlet(700));
    expect(outlet(700)).toBeLessThan(fluid.saturatedAt(evaporator.evaporatingPsia).vapourBtuLb);
    const warmest = fluid.vapour(evaporator.evaporatingPsia, 80).enthalpyBtuLb;
    expect(outlet(60)).toBeLessThanOrEqual(warmest + 1e-6);
  });

  it('property: dirt and dry air both take heat away', () => {
    const heat = (over: Partial<EvaporatorInput>): number =>
      evaporate({ ...evaporator, flowLbHr: 700, ...over }).heatBtuh;
    expect(heat({ cleanFrac: 0.7 })).toBeLessThan(heat({}));
    expect(heat({ air: airFromWetBulb(80, 57, psia) })).toBeLessThan(heat({}));
    expect(heat({ cfm: 800 })).toBeLessThan(heat({}));
  });

  it('identity: effectiveness of counterflow is ntu / (1 + ntu) for equal streams, and 1 - exp(-ntu) against a boiling one', () => {
    expect(counterflowEffectiveness(200, 100, 100)).toBeCloseTo(2 / 3, 9);
    expect(counterflowEffectiveness(200, 100, 1e12)).toBeCloseTo(1 - Math.exp(-2), 9);
    expect(counterflowEffectiveness(0, 100, 100)).toBe(0);
  });
});

describe('condenser', () => {
  it('identity: zones add to the whole coil and the air gains what the refrigerant loses', () => {
    const state = condense(condenser);
    expect(state.gasFrac + state.condensingFrac + state.liquidFrac).toBeCloseTo(1, 12);
    const { air } = condenser;
    const gained = condenser.cfm * 60 * air.lbPerFt3 * air.btuPerLbF * (state.leavingF - air.airF);
    expect(gained / state.heatBtuh).toBeCloseTo(1, 9);
    expect(state.outletBtuLb).toBeLessThan(fluid.saturatedAt(condenser.condensingPsia).liquidBtuLb);
  });

  it('property: a smaller coil subcools less and in the end lets gas through', () => {
    const outlet = (condensingUaBtuhF: number): number =>
      condense({ ...condenser, coil: { ...condenser.coil, condensingUaBtuhF } }).outletBtuLb;
    const saturated = fluid.saturatedAt(condenser.condensingPsia).liquidBtuLb;
    expect(outlet(6000)).toBeLessThan(outlet(5000));
    expect(outlet(1500)).toBeGreaterThan(saturated);
  });

  it('property: air in the refrigerant, dirt and less airflow all leave warmer liquid', () => {
    const outlet = (over: Partial<CondenserInput>): number => condense({ ...condenser, ...over }).outletBtuLb;
    expect(outlet({ airInRefrigerantFrac: 0.08 })).toBeGreaterThan(outlet({}));
    expect(outlet({ cleanFrac: 0.85 })).toBeGreaterThan(outlet({}));
    expect(outlet({ cfm: 2300 })).toBeGreaterThan(outlet({}));
  });
});
