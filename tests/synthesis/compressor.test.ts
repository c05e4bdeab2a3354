import { describe, expect, it } from 'vitest';
import {
  type Compressor,
  compress,
  mapEfficiency,
  volumetricEfficiency,
} from '../../scripts/synthesis/compressor';
import map from '../../scripts/synthesis/data/compressor-map.json';
import { fluidOf } from '../../scripts/synthesis/fluid';

const fluid = fluidOf('R-410A');
const scroll: Compressor = { kind: 'scroll', displacementFt3Hr: 200, efficiencyFactor: 1 };
const suctionPsia = fluid.dewPsia(45);
const suctionBtuLb = fluid.vapour(suctionPsia, 60).enthalpyBtuLb;
const dischargePsia = fluid.dewPsia(112);

describe('compressor', () => {
  // 49 points of a published 3-ton map; one curve over pressure ratio cannot hold them exactly: 0.035 is the worst.
  it('outside: efficiency against pressure ratio stays near every point of the published map', () => {
    const misses = map.evaporatingF.flatMap((te, i) =>
      map.condensingF.map((tc, j) =>
        Math.abs(
          mapEfficiency(fluid.dewPsia(tc) / fluid.dewPsia(te)) - (map.isentropicEfficiency[i]?.[j] ?? 9),
        ),
      ),
    );
    expect(misses).toHaveLength(49);
    expect(Math.max(...misses)).toBeLessThan(0.04);
    expect(misses.reduce((a, b) => a + b, 0) / 49).toBeLessThan(0.015);
  });

  // Handbook ranges, status memory: scroll 0.92-0.99, hermetic reciprocating 0.60-0.85 over the working range.
  it('outside: volumetric efficiency in the handbook ranges at ratios 2.5 to 5', () => {
    for (const ratio of [2.5, 3.5, 5]) {
      expect(volumetricEfficiency('scroll', ratio)).toBeGreaterThan(0.9);
      expect(volumetricEfficiency('scroll', ratio)).toBeLessThan(0.99);
      expect(volumetricEfficiency('reciprocating', ratio)).toBeGreaterThan(0.6);
      expect(volumetricEfficiency('reciprocating', ratio)).toBeLessThan(0.87);
    }
    expect.assertions(12);
  });

  it('identity: 93 % of the power leaves with the gas', () => {
    const run = compress(scroll, fluid, suctionPsia, suctionBtuLb, dischargePsia);
    const gained = run.flowLbHr * (run.dischargeBtuLb - suctionBtuLb);
    expect(gained / (run.powerW * 3.412141633)).toBeCloseTo(0.93, 6);
  });

  it('property: leaking valves pump less and send hotter gas; a weak capacitor draws more and pumps the same', () => {
    const sound = compress(scroll, fluid, suctionPsia, suctionBtuLb, dischargePsia);
    const leaking = compress(scroll, fluid, suctionPsia, suctionBtuLb, dischargePsia, {
      valveLeakFrac: 0.25,
      capDeficitFrac: 0,
    });
    const weak = compress(scroll, fluid, suctionPsia, suctionBtuLb, dischargePsia, {
      valveLeakFrac: 0,
      capDeficitFrac: 0.2,
    });
    expect(leaking.flowLbHr / sound.flowLbHr).toBeCloseTo(0.75, 9);
    expect(leaking.dischargeBtuLb).toBeGreaterThan(sound.dischargeBtuLb + 3);
    expect(leaking.powerW).toBeLessThan(sound.powerW);
    expect(weak.flowLbHr).toBeCloseTo(sound.flowLbHr, 9);
    expect(weak.powerW / sound.powerW).toBeCloseTo(1.04, 9);
  });

  it('property: gas with liquid in it leaves cooler than dry gas', () => {
    const edge = fluid.saturatedAt(suctionPsia);
    const wet = edge.vapourBtuLb - 0.05 * (edge.vapourBtuLb - edge.liquidBtuLb);
    const dry = compress(scroll, fluid, suctionPsia, edge.vapourBtuLb, dischargePsia);
    expect(compress(scroll, fluid, suctionPsia, wet, dischargePsia).dischargeBtuLb).toBeLessThan(
      dry.dischargeBtuLb - 3,
    );
  });
});
