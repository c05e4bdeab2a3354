import { describe, expect, it } from 'vitest';
import { airEnthalpyBtuLb, airPressureRatio, wetBulbF } from '@/lib/diagnostics/moist-air';
import './support/matchers';

describe('moist air', () => {
  // Standard atmosphere as in ASHRAE Fundamentals ch. 1, printed to four digits.
  it.each([
    [0, 1],
    [1_000, 0.9644],
    [2_000, 0.9298],
    [3_000, 0.8962],
    [4_000, 0.8637],
    [5_000, 0.8321],
    [6_000, 0.8014],
    [7_000, 0.7716],
    [8_000, 0.7428],
  ])('outside: pressure ratio at %d ft is %f', (altitudeFt, ratio) => {
    expect(airPressureRatio(altitudeFt)).toBeCloseToWithin(ratio, 0.00006);
  });

  // Rating conditions: 80 F dry, 67 F wet is 51 % relative humidity and 31.5 Btu/lb on the ASHRAE chart (memory).
  it('outside: 80 F at 51 % has a wet bulb of 67 F and 31.5 Btu/lb', () => {
    expect(wetBulbF(80, 0.511, 14.696)).toBeCloseToWithin(67, 0.1);
    expect(airEnthalpyBtuLb(80, 67, 14.696)).toBeCloseToWithin(31.46, 0.1);
  });

  it('identity: at saturation wet bulb and dry bulb are equal; more than saturated is saturated', () => {
    expect(wetBulbF(60, 1, 14.696)).toBeCloseToWithin(60, 0.01);
    expect(wetBulbF(60, 1.2, 14.696)).toBeCloseToWithin(60, 0.01);
    expect(airEnthalpyBtuLb(60, 63, 14.696)).toBeCloseToWithin(airEnthalpyBtuLb(60, 60, 14.696), 1e-12);
  });
});
