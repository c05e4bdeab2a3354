import { describe, expect, it } from 'vitest';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import type { Flag } from '@/lib/diagnostics/findings';
import { dangersOfRun, observedDangers } from '@/lib/diagnostics/plausibility/dangers';
import wording from '@/lib/diagnostics/wording/en.json';
import type { Unit } from '@/lib/visit/unit';
import { contextOfRun, type RunPart, visitOf } from './support/visit-of';

function dangers(part: RunPart, unit: Partial<Unit> = {}): readonly Flag[] {
  const context = contextOfRun(part, unit);
  return dangersOfRun(context, deriveRun(context));
}

function shown(part: RunPart, unit: Partial<Unit> = {}): string[] {
  return dangers(part, unit).map((flag) => `${flag.code} ${flag.severity}`);
}

describe('dangers come whatever the economics say', () => {
  // Limit 225 F near the compressor, read; 214 F close to where oil and valves suffer: common practice, no source.
  it.each([
    [209.9, []],
    [210, ['dischargeLineNearLimit danger']],
    [214, ['dischargeLineNearLimit danger']],
    [224.9, ['dischargeLineNearLimit danger']],
    [225, ['dischargeLineTooHot danger']],
  ])('outside: discharge line at %f F', (dischargeLineF, expected) => {
    expect(shown({ mode: 'cooling', dischargeLineF })).toEqual(expected);
  });

  // NEMA Condensed MG 1, read: +/-10 % of rated voltage; 208/230 V compressors 197-253 V, secondary.
  it.each([
    [230, 207, []],
    [230, 206.9, ['voltageOutsideNameplate danger']],
    [230, 253, []],
    [230, 253.1, ['voltageOutsideNameplate danger']],
    [undefined, 197, []],
    [undefined, 196, ['voltageOutsideDualRating danger']],
    [undefined, 254, ['voltageOutsideDualRating danger']],
  ])('outside: nameplate %s V, %f V at the unit', (ratedV, lineV, expected) => {
    expect(shown({ mode: 'cooling', lineV }, ratedV === undefined ? {} : { ratedV })).toEqual(expected);
  });

  it('identity: amps over the rated load amps, not on them', () => {
    expect(shown({ mode: 'cooling', compressorA: 16 }, { ratedLoadA: 16 })).toEqual([]);
    expect(shown({ mode: 'cooling', compressorA: 16.1 }, { ratedLoadA: 16 })).toEqual([
      'ampsOverRating danger',
    ]);
  });

  it('identity: compression ratio: high is a doubt, beyond 10 a danger', () => {
    expect(shown({ mode: 'heating', suctionPsig: 25, dischargePsig: 250 })).toEqual([]);
    expect(shown({ mode: 'heating', suctionPsig: 18, dischargePsig: 250 })).toEqual([
      'compressionRatioHigh doubt',
    ]);
    expect(shown({ mode: 'heating', suctionPsig: 8, dischargePsig: 250 })).toEqual([
      'compressionRatioTooHigh danger',
    ]);
  });

  it('identity: high side near its cut-out depends on the refrigerant', () => {
    expect(shown({ mode: 'cooling', dischargePsig: 400 }, { refrigerant: 'R-22' })).toEqual([
      'highSideNearCutOut danger',
    ]);
    expect(shown({ mode: 'cooling', dischargePsig: 400 }, { refrigerant: 'R-410A' })).toEqual([]);
    expect(dangers({ mode: 'cooling', liquidPsig: 560 })[0]?.readings).toEqual(['liquidPsig']);
  });

  it('identity: electric heat short of air, or on while cooling', () => {
    expect(shown({ mode: 'heating', heatRiseSupplyF: 160 })).toEqual(['electricHeatShortOfAir danger']);
    expect(shown({ mode: 'heating', supplyAirF: 159 })).toEqual([]);
    expect(shown({ mode: 'cooling', stripA: 20 })).toEqual(['electricHeatInCooling danger']);
    expect(shown({ mode: 'cooling', stripA: 0.4 })).toEqual([]);
    expect(shown({ mode: 'cooling', electricHeatOn: true })).toEqual(['electricHeatOnInCooling danger']);
    expect(shown({ mode: 'heating', stripA: 20, electricHeatOn: true })).toEqual([]);
  });

  it('identity: a coil below freezing is a doubt in cooling only', () => {
    // R-410A at 95 psig evaporates at 29 F
    expect(shown({ mode: 'cooling', suctionPsig: 95 })).toEqual(['coilBelowFreezing doubt']);
    expect(shown({ mode: 'heating', suctionPsig: 95 })).toEqual([]);
  });

  it('identity: what was seen counts too', () => {
    const visit = visitOf(
      [],
      {},
      { observations: [{ id: 'shortToGround' }, { id: 'dirtyFilter' }, { id: 'stripsStayOn' }] },
    );
    expect(observedDangers(visit).map((flag) => flag.code)).toEqual([
      'seen.shortToGround',
      'seen.stripsStayOn',
    ]);
  });

  it('wiring: every danger says what licensed practice asks', () => {
    const words: Record<string, string> = wording;
    const all = [
      ...dangers({
        mode: 'cooling',
        dischargeLineF: 230,
        stripA: 20,
        suctionPsig: 8,
        dischargePsig: 560,
        lineV: 180,
      }),
      ...dangers({ mode: 'cooling', dischargeLineF: 215, electricHeatOn: true }),
      ...dangers(
        { mode: 'heating', heatRiseSupplyF: 170, compressorA: 20, lineV: 200 },
        { ratedLoadA: 16, ratedV: 230 },
      ),
      ...observedDangers(
        visitOf(
          [],
          {},
          {
            observations: [
              { id: 'shortToGround' },
              { id: 'stripsStayOn' },
              { id: 'burntSmell' },
              { id: 'breakerTrips' },
            ],
          },
        ),
      ),
    ].filter((flag) => flag.severity === 'danger');
    expect(all).toHaveLength(14);
    expect(all.filter((flag) => !(words[`flag.${flag.code}`] ?? '').includes('Licensed practice:'))).toEqual(
      [],
    );
  });
});
