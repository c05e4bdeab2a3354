import { describe, expect, it } from 'vitest';
import { asShown, toStep } from '../../scripts/synthesis/instruments';

describe('instruments', () => {
  it('identity: without a seed only the display rounds', () => {
    const shown = asShown({ suctionPsig: 68.49, suctionLineF: 51.26, compressorA: 12.347, airflowCfm: 1194 });
    expect(shown).toEqual({ suctionPsig: 68, suctionLineF: 51.5, compressorA: 12.3, airflowCfm: 1190 });
    expect(toStep(0.30000000000000004, 0.1)).toBe(0.3);
    expect(Object.is(toStep(-0.001, 0.01), 0)).toBe(true);
  });

  it('property: the same seed gives the same noise, whatever else is read', () => {
    const alone = asShown({ suctionPsig: 70 }, 11);
    const together = asShown({ dischargePsig: 250, suctionPsig: 70, lineV: 240 }, 11);
    expect(together.suctionPsig).toBe(alone.suctionPsig);
    const seeds = Array.from(
      { length: 40 },
      (_, seed) => asShown({ dischargeLineF: 180 }, seed).dischargeLineF,
    );
    expect(new Set(seeds).size).toBeGreaterThan(4);
  });

  // 1 sigma of a pipe clamp is 1 F in the data file; the half-degree display adds 0.14.
  it('identity: noise has mean zero and the size the data file says', () => {
    const n = 4000;
    const values = Array.from(
      { length: n },
      (_, seed) => (asShown({ liquidLineF: 95 }, seed).liquidLineF ?? 0) - 95,
    );
    const mean = values.reduce((a, b) => a + b, 0) / n;
    const sd = Math.sqrt(values.reduce((a, b) => a + (b - mean) ** 2, 0) / n);
    expect(Math.abs(mean)).toBeLessThan(0.06);
    expect(sd).toBeGreaterThan(0.95);
    expect(sd).toBeLessThan(1.08);
  });
});
