import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reversingValveRise, standingOverAir } from '@/lib/diagnostics/derived/circuit-tests';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { dischargeSide, liquidSide } from '@/lib/diagnostics/derived/pressures';
import {
  compressionRatio,
  condensingMean,
  condensingOverAir,
  dischargeSuperheat,
  drierDrop,
  evaporatingBelowAir,
  evaporatingDew,
  liquidSubcooling,
  psiaAt,
  suctionGlide,
  suctionSuperheat,
} from '@/lib/diagnostics/derived/refrigerant-side';
import './support/matchers';
import { contextOfRun, contextOfUnknownRefrigerant } from './support/visit-of';

const r22 = { refrigerant: 'R-22', metering: 'fixedOrifice' } as const;

describe('saturation in a run', () => {
  // Common practice, no source: printed R-22 charts round to whole degrees, hence 0.6 F.
  it.each([
    [50, 26],
    [60, 34],
  ])('outside: R-22 at %d psig suction evaporates near %d F [common practice]', (suctionPsig, expectedF) => {
    const context = contextOfRun({ mode: 'cooling', suctionPsig }, r22);
    expect(evaporatingDew(context)?.value).toBeCloseToWithin(expectedF, 0.6);
  });

  it('outside: R-22 at 297 psig condenses near 130 F [common practice]', () => {
    const context = contextOfRun({ mode: 'cooling', dischargePsig: 297 }, r22);
    expect(condensingMean(context)?.value).toBeCloseToWithin(130, 0.6);
  });

  // Published answers of two field cases (trade articles, read); their charts round to whole degrees.
  it('outside: clogged-drier case: 22 F saturation with a 66.7 F line is 44.7 F superheat', () => {
    const suctionPsig = 45.6; // R-22 saturates at 22 F
    const context = contextOfRun({ mode: 'cooling', suctionPsig, suctionLineF: 66.7 }, r22);
    expect(suctionSuperheat(context)?.value).toBeCloseToWithin(44.7, 0.6);
  });

  it('outside: starving R-410A coil: 64 psig and 70 F is 58.8 F superheat [trade magazine, 2006; computed]', () => {
    const context = contextOfRun({ mode: 'cooling', suctionPsig: 64, suctionLineF: 70 });
    expect(suctionSuperheat(context)?.value).toBeCloseToWithin(58.8, 0.3);
    expect(evaporatingDew(context)?.value).toBeCloseToWithin(11.2, 0.3);
  });

  it('outside: 240 / 75 psig is a ratio of 2.84, 145 / 5 psig of 8.1 [trade articles, read]', () => {
    const at = (dischargePsig: number, suctionPsig: number) =>
      compressionRatio(contextOfRun({ mode: 'cooling', dischargePsig, suctionPsig }))?.value;
    expect(at(240, 75)).toBeCloseToWithin(2.84, 0.005);
    expect(at(145, 5)).toBeCloseToWithin(8.1, 0.05);
  });

  it('outside: R-407C superheat counts from dew, subcooling from bubble (glide about 10 F at 120 psig)', () => {
    const unit = { refrigerant: 'R-407C' } as const;
    const context = contextOfRun(
      { mode: 'cooling', suctionPsig: 120, suctionLineF: 80, dischargePsig: 120, liquidLineF: 50 },
      unit,
    );
    // 60.96 F bubble and 71.23 F dew at 120 psig, reference values of the published equation
    expect(suctionSuperheat(context)?.value).toBeCloseToWithin(80 - 71.23, 0.15);
    expect(liquidSubcooling(context)?.value).toBeCloseToWithin(60.96 - 50, 0.15);
  });

  // Glide at 120 psig of the published equations: R-407C 10.27, R-454B 2.68, R-410A 0.19 F.
  it('outside: glide is shown where it matters', () => {
    const at = (refrigerant: 'R-407C' | 'R-454B' | 'R-410A' | 'R-22') =>
      suctionGlide(contextOfRun({ mode: 'cooling', suctionPsig: 120 }, { refrigerant }))?.value;
    expect(at('R-407C')).toBeCloseToWithin(10.27, 0.1);
    expect(at('R-454B')).toBeCloseToWithin(2.68, 0.1);
    expect([at('R-410A'), at('R-22')]).toEqual([undefined, undefined]);
  });

  it('outside: at 5,000 ft the same gauge reading saturates lower by 1.1 F (R-410A) and 1.7 F (R-22)', () => {
    const shift = (refrigerant: 'R-22' | 'R-410A', suctionPsig: number) => {
      const at = (altitudeFt: number) =>
        evaporatingDew(
          contextOfRun({ mode: 'cooling', suctionPsig }, { refrigerant }, { site: { altitudeFt } }),
        )?.value ?? Number.NaN;
      return at(0) - at(5_000);
    };
    // near 40 F saturation: 118.4 and 68.5 psig
    expect(shift('R-410A', 118.4)).toBeCloseToWithin(1.1, 0.1);
    expect(shift('R-22', 68.5)).toBeCloseToWithin(1.7, 0.1);
  });
});

describe('what a missing reading does', () => {
  it('identity: only what a value needs makes it absent', () => {
    const context = contextOfRun({ mode: 'cooling', suctionPsig: 120, liquidLineF: 95 });
    expect(evaporatingDew(context)).toBeDefined();
    expect([
      suctionSuperheat(context),
      liquidSubcooling(context),
      dischargeSuperheat(context),
      compressionRatio(context),
      condensingOverAir(context),
      evaporatingBelowAir(context),
      drierDrop(context),
    ]).toEqual(Array(7).fill(undefined));
  });

  it('identity: unknown refrigerant leaves saturation values out, the compression ratio stays', () => {
    const context = contextOfUnknownRefrigerant({
      mode: 'cooling',
      suctionPsig: 120,
      dischargePsig: 350,
      suctionLineF: 50,
    });
    expect(suctionSuperheat(context)).toBeUndefined();
    expect(compressionRatio(context)).toBeDefined();
  });

  it('identity: one high-side gauge serves both ports, at the price of an allowance', () => {
    const one = contextOfRun({ mode: 'cooling', dischargePsig: 350, liquidLineF: 95 });
    const both = contextOfRun({ mode: 'cooling', dischargePsig: 350, liquidPsig: 350, liquidLineF: 95 });
    expect(liquidSide(one)?.gauge.name).toBe('dischargePsig');
    expect(dischargeSide(contextOfRun({ mode: 'cooling', liquidPsig: 350 }))?.gauge.name).toBe('liquidPsig');
    const a = liquidSubcooling(one);
    const b = liquidSubcooling(both);
    expect(a?.value).toBeCloseToWithin(b?.value ?? null, 1e-9);
    expect(a?.sd ?? 0).toBeGreaterThan(b?.sd ?? 1e9);
  });

  it('identity: unknown altitude is taken as sea level and widens', () => {
    const run = { mode: 'cooling', suctionPsig: 60, suctionLineF: 50 } as const;
    const known = suctionSuperheat(contextOfRun(run, r22));
    const unknown = suctionSuperheat(contextOfRun(run, r22, { site: {} }));
    expect(unknown?.value).toBeCloseToWithin(known?.value ?? null, 1e-9);
    expect(unknown?.sd ?? 0).toBeGreaterThan(known?.sd ?? 1e9);
  });
});

describe('modes and air', () => {
  it('identity: cooling counts from outdoor and return air, heating the other way round', () => {
    const readings = { suctionPsig: 110, dischargePsig: 330, outdoorAirF: 85, returnAirF: 75 };
    const cooling = contextOfRun({ mode: 'cooling', ...readings });
    const heating = contextOfRun({ mode: 'heating', ...readings });
    const condensing = condensingMean(cooling)?.value ?? Number.NaN;
    const evaporating = evaporatingDew(cooling)?.value ?? Number.NaN;
    expect(condensingOverAir(cooling)).toMatchObject({ id: 'condensingOverOutdoorFd', unit: 'Fd' });
    expect(condensingOverAir(cooling)?.value).toBeCloseToWithin(condensing - 85, 1e-9);
    expect(condensingOverAir(heating)?.id).toBe('condensingOverReturnFd');
    expect(condensingOverAir(heating)?.value).toBeCloseToWithin(condensing - 75, 1e-9);
    expect(evaporatingBelowAir(cooling)?.value).toBeCloseToWithin(75 - evaporating, 1e-9);
    expect(evaporatingBelowAir(heating)?.value).toBeCloseToWithin(85 - evaporating, 1e-9);
  });

  it('identity: drier drop is liquid line less liquid before metering', () => {
    const context = contextOfRun({ mode: 'cooling', liquidLineF: 95, liquidBeforeMeteringF: 90 });
    expect(drierDrop(context)).toMatchObject({ value: 5, unit: 'Fd' });
    // two clamps of 1 F each
    expect(drierDrop(context)?.sd).toBeCloseToWithin(Math.SQRT2, 1e-9);
  });

  // U.S. Army TM 55-1930-209-14P-15 and a trade note, read: at rest the pressure is that of saturation at the coil's
  // temperature; R-22 at 80 F: 143.6 psig (published pressure-temperature chart).
  it('outside: a stopped R-22 circuit at 80 F and 143.6 psig holds no air; 20 psi more is 8 F over the coil', () => {
    const at = (standingPsig: number) =>
      standingOverAir(
        contextOfRun({ mode: 'cooling', standingPsig, standingCoilAirF: 80 }, { refrigerant: 'R-22' }),
      );
    expect(at(143.6)?.value).toBeCloseToWithin(0, 0.2);
    expect(at(163.6)?.value).toBeCloseToWithin(8, 0.5);
    expect(standingOverAir(contextOfRun({ mode: 'cooling', standingPsig: 150 }))).toBeUndefined();
  });

  it('identity: rise in the reversing valve is suction line after it less before it', () => {
    const context = contextOfRun({ mode: 'heating', suctionLineF: 52, suctionBeforeValveF: 38 });
    expect(reversingValveRise(context)).toMatchObject({ value: 14, unit: 'Fd' });
    expect(reversingValveRise(contextOfRun({ mode: 'heating', suctionLineF: 52 }))).toBeUndefined();
  });

  it('property: a warmer suction line never lowers superheat, a higher suction pressure never raises it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('R-22', 'R-410A', 'R-407C', 'R-32', 'R-454B', 'R-134a'),
        fc.double({ min: 20, max: 160, noNaN: true }),
        fc.double({ min: 20, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 8_000, noNaN: true }),
        (refrigerant, suctionPsig, suctionLineF, more, altitudeFt) => {
          const at = (psig: number, line: number) =>
            suctionSuperheat(
              contextOfRun(
                { mode: 'cooling', suctionPsig: psig, suctionLineF: line },
                { refrigerant },
                { site: { altitudeFt } },
              ),
            )?.value ?? Number.NaN;
          const base = at(suctionPsig, suctionLineF);
          expect(at(suctionPsig, suctionLineF + more)).toBeGreaterThanOrEqual(base);
          expect(at(suctionPsig + more, suctionLineF)).toBeLessThanOrEqual(base);
        },
      ),
      { seed: 11, numRuns: 200 },
    );
  });

  it('outside: gauge to absolute at 5,000 ft uses 12.228 psia [standard atmosphere]', () => {
    expect(psiaAt(100, 5_000)).toBeCloseToWithin(112.228, 0.002);
    expect(psiaAt(100, 0, 0.01)).toBeCloseToWithin(114.696 * 1.01, 0.002);
  });
});

describe('glide where it matters', () => {
  const blend = { mode: 'cooling', suctionPsig: 70, dischargePsig: 240 } as const;
  const idsOf = (refrigerant: 'R-407C' | 'R-410A' | 'R-22' | 'R-454B') =>
    deriveRun(contextOfRun(blend, { refrigerant }))
      .map(({ id }) => id)
      .filter((id) => /Dew|Bubble|glide/.test(id));

  it('identity: bubble and dew stand apart for a blend of wide glide, not for a pure or near-azeotropic one', () => {
    expect(idsOf('R-407C')).toEqual(['glideFd', 'suctionBubbleF', 'highSideDewF', 'highSideBubbleF']);
    expect(idsOf('R-454B')).toContain('glideFd');
    expect(idsOf('R-410A')).toEqual([]);
    expect(idsOf('R-22')).toEqual([]);
  });

  it('identity: superheat counts from dew, subcooling from bubble, and their mean is the condensing temperature', () => {
    const values = deriveRun(contextOfRun({ ...blend, liquidLineF: 90 }, { refrigerant: 'R-407C' }));
    const of = (id: string): number => values.find((value) => value.id === id)?.value ?? Number.NaN;
    expect(of('evaporatingF') - of('suctionBubbleF')).toBeCloseTo(of('glideFd'), 6);
    expect(of('highSideBubbleF') - 90).toBeCloseTo(of('liquidSubcoolingFd'), 6);
    expect((of('highSideBubbleF') + of('highSideDewF')) / 2).toBeCloseTo(of('condensingF'), 6);
  });
});
