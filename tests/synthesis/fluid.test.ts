import { describe, expect, it } from 'vitest';
import { RefrigerantName } from '@/lib/visit/refrigerant-names';
import { fluidOf } from '../../scripts/synthesis/fluid';

const names = RefrigerantName.options;

describe('refrigerants of the simulator', () => {
  // Common practice, no source: gauge pressures technicians know by heart; 14.696 psia at sea level.
  it('outside: R-22 boils near 26 F at 50 psig, 34 F at 60, and condenses near 130 F at 297 [common practice]', () => {
    const r22 = fluidOf('R-22');
    expect(r22.dewF(50 + 14.696)).toBeCloseTo(26, 0);
    expect(r22.dewF(60 + 14.696)).toBeCloseTo(34, 0);
    expect(r22.dewF(297 + 14.696)).toBeCloseTo(130, 0);
  });

  // Published glides at 120 psig: 0.19, 10.27 and 2.68 F; tolerance a tenth of a degree for interpolation.
  it('outside: glide at 120 psig [equations of state evaluated by an open property library]', () => {
    const glides = (['R-410A', 'R-407C', 'R-454B'] as const).map((name) => {
      const edge = fluidOf(name).saturatedAt(120 + 14.696);
      return edge.dewF - edge.bubbleF;
    });
    expect(glides[0]).toBeCloseTo(0.19, 1);
    expect(glides[1]).toBeCloseTo(10.27, 1);
    expect(glides[2]).toBeCloseTo(2.68, 1);
  });

  it('identity: saturation, liquid and vapour states come back from their inverses, all six refrigerants', () => {
    let checked = 0;
    for (const name of names) {
      const fluid = fluidOf(name);
      for (const f of [-10, 21.3, 45, 78.7, 120]) {
        const psia = fluid.dewPsia(f);
        expect(fluid.dewF(psia)).toBeCloseTo(f, 4);
        expect(fluid.bubbleF(fluid.bubblePsia(f))).toBeCloseTo(f, 4);
        expect(fluid.liquidF(fluid.liquidBtuLb(f))).toBeCloseTo(f, 4);
        const gas = fluid.vapour(psia, f + 17);
        expect(fluid.vapourAtEnthalpy(psia, gas.enthalpyBtuLb).vapourF).toBeCloseTo(f + 17, 3);
        expect(fluid.vapourAtEntropy(psia, gas.entropyBtuLbR).vapourF).toBeCloseTo(f + 17, 3);
        checked += 1;
      }
    }
    expect(checked).toBe(30);
  });

  it('property: outside its range it refuses instead of guessing', () => {
    expect(() => fluidOf('R-410A').dewPsia(158)).toThrow(/outside/);
    expect(() => fluidOf('R-22').dewF(2)).toThrow(/outside/);
  });
});
