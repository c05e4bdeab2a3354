import { describe, expect, it } from 'vitest';
import { chargeHeld, meanTwoPhaseDensity, twoPhaseDensity } from '../../scripts/synthesis/charge';
import { fluidOf } from '../../scripts/synthesis/fluid';

const fluid = fluidOf('R-22');
const high = fluid.saturatedAt(fluid.dewPsia(110));
const low = fluid.saturatedAt(fluid.dewPsia(40));

describe('charge held by the circuit', () => {
  it('identity: density at no vapour and at all vapour', () => {
    expect(twoPhaseDensity(high, 0)).toBe(high.liquidLbFt3);
    expect(twoPhaseDensity(high, 1)).toBeCloseTo(high.vapourLbFt3, 9);
  });

  it('property: gas running ahead leaves more liquid behind than an even mixture would', () => {
    const even = 1 / (0.3 / high.vapourLbFt3 + 0.7 / high.liquidLbFt3);
    expect(twoPhaseDensity(high, 0.3)).toBeGreaterThan(even);
    expect(meanTwoPhaseDensity(high, 0, 1)).toBeGreaterThan(high.vapourLbFt3);
    expect(meanTwoPhaseDensity(high, 0, 1)).toBeLessThan(high.liquidLbFt3);
  });

  it('identity: a condenser full of liquid holds its volume times liquid density', () => {
    const held = chargeHeld(
      { condenserFt3: 0.2, evaporatorFt3: 0, liquidLineFt3: 0 },
      { outletBtuLb: 0, heatBtuh: 0, gasFrac: 0, condensingFrac: 0, liquidFrac: 1, leavingF: 0 },
      high,
      {
        outletBtuLb: 0,
        heatBtuh: 0,
        boilingFrac: 1,
        inletQualityFrac: 0.2,
        leavingF: 0,
        leavingHumidityRatio: 0,
      },
      low,
      70,
    );
    expect(held).toBeCloseTo(0.2 * high.liquidLbFt3, 9);
  });
});
