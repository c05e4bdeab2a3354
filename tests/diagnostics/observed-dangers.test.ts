import { describe, expect, it } from 'vitest';
import { observedDangers } from '@/lib/diagnostics/plausibility/observed-dangers';
import type { ObservationId } from '@/lib/visit/observation';
import type { Unit } from '@/lib/visit/unit';
import { visitOf } from './support/visit-of';

function codes(seen: readonly ObservationId[], unit: Partial<Unit> = {}, otherHeat = false): string[] {
  const visit = visitOf([], unit, { observations: seen.map((id) => ({ id })), site: { otherHeat } });
  return observedDangers(visit).map((flag) => `${flag.code} ${flag.severity}`);
}

describe('dangers seen, heard or smelt', () => {
  it('identity: each danger by itself, in the order of haste; dirt is none', () => {
    expect(codes(['dirtyFilter', 'shortToGround', 'stripsStayOn'])).toEqual([
      'seen.shortToGround danger',
      'seen.stripsStayOn danger',
    ]);
    expect(codes(['bulgedCapacitor', 'frozenIndoorCoil', 'carbonMonoxideAlarm'])).toEqual([
      'seen.carbonMonoxideAlarm danger',
      'seen.frozenIndoorCoil danger',
      'seen.bulgedCapacitor danger',
    ]);
    expect(codes(['icedOutdoorCoil', 'oilStain', 'noisyCompressor'])).toEqual([]);
  });

  it('identity: locked electric heat without a blower is one danger of its own', () => {
    expect(codes(['stripsStayOn', 'blowerNotRunning'])).toEqual(['lockedHeatWithoutAir danger']);
    expect(codes(['blowerNotRunning'])).toEqual(['seen.blowerNotRunning danger']);
  });

  // ASHRAE 34 by 40 CFR 82 Subpart G: R-32 and R-454B are A2L (secondary); R-410A and R-22 do not burn.
  it('outside: a leak of a refrigerant that burns is told apart, and nearer to a flame', () => {
    expect(codes(['escapingRefrigerant'])).toEqual(['seen.escapingRefrigerant danger']);
    expect(codes(['escapingRefrigerant'], { refrigerant: 'R-454B' })).toEqual(['flammableLeak danger']);
    expect(codes(['escapingRefrigerant'], { refrigerant: 'R-32' }, true)).toEqual([
      'flammableLeakNearFlame danger',
    ]);
    expect(codes(['oilStain'], { refrigerant: 'R-454B' })).toEqual(['flammableOilStain doubt']);
  });

  it('identity: a refrigerant outside the list counts by its name', () => {
    const visit = visitOf([], {}, { observations: [{ id: 'escapingRefrigerant' }] });
    const { refrigerant: _listed, ...unit } = visit.unit;
    const found = observedDangers({ ...visit, unit: { ...unit, otherRefrigerant: ' r-290 ' } });
    expect(found).toEqual([
      { code: 'flammableLeak', severity: 'danger', readings: [], values: { name: 'R-290' } },
    ]);
  });
});
