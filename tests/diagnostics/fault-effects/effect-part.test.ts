import { describe, expect, it } from 'vitest';
import {
  type Doubt,
  effectPart,
  midway,
  widened,
  withoutRepeats,
} from '@/lib/diagnostics/fault-effects/effect-part';
import '../support/matchers';

const point = { capacityRatio: 0.8, eirRatio: 1.25, capacityBent: false, eirBent: false };
const doubt: Doubt = {
  fitCapacity: 0.03,
  fitPower: 0.03,
  between: { capacity: 0.04, power: 0.04 },
  levelBeyond: 0,
  conditionsBeyond: 0,
  rampFrac: 1,
};

describe('identity: log ratios with their doubt', () => {
  it('means are logs; points of the ratio become logs by division by it', () => {
    const part = effectPart(point, doubt, []);
    expect(part.lnCapacity.mean).toBeCloseToWithin(Math.log(0.8), 1e-12);
    expect(part.lnPower.mean).toBeCloseToWithin(0, 1e-12);
    expect(part.lnCapacity.sd).toBeCloseToWithin(0.05 / 0.8, 1e-12);
    expect(part.lnPower.sd).toBeCloseToWithin(0.05, 1e-12);
    expect([part.clamped, part.beyondRange]).toEqual([false, false]);
  });

  it('one width outside adds the effect itself, or at least the spread; twice for the level', () => {
    const conditions = effectPart(point, { ...doubt, conditionsBeyond: 1 }, []);
    const level = effectPart(point, { ...doubt, levelBeyond: 1 }, []);
    expect(conditions.lnCapacity.sd).toBeCloseToWithin(Math.hypot(0.05 / 0.8, Math.log(0.8)), 1e-12);
    expect(level.lnCapacity.sd).toBeCloseToWithin(Math.hypot(0.05 / 0.8, 2 * Math.log(0.8)), 1e-12);
    expect(conditions.lnPower.sd).toBeCloseToWithin(Math.hypot(0.05, 0.04), 1e-12);
    expect([conditions.beyondRange, level.beyondRange]).toEqual([true, true]);
  });

  it('the ramp scales all of it', () => {
    const half = effectPart(point, { ...doubt, conditionsBeyond: 1, rampFrac: 0.5 }, []);
    const whole = effectPart(point, { ...doubt, conditionsBeyond: 1 }, []);
    expect(half.lnCapacity.sd).toBeCloseToWithin(whole.lnCapacity.sd / 2, 1e-12);
    expect(half.lnCapacity.mean).toBe(whole.lnCapacity.mean);
  });

  it('bent ratios are marked and named', () => {
    const part = effectPart({ ...point, capacityBent: true, eirBent: true }, doubt, [{ code: 'first' }]);
    expect(part.clamped).toBe(true);
    expect(part.notes.map(({ code }) => code)).toEqual([
      'first',
      'capacityGainNotCredited',
      'efficiencyGainNotCredited',
    ]);
  });

  it('no effect is a plain 0', () => {
    const none = effectPart(
      { capacityRatio: 1, eirRatio: 1, capacityBent: false, eirBent: false },
      doubt,
      [],
    );
    expect(Object.is(none.lnCapacity.mean, 0) && Object.is(none.lnPower.mean, 0)).toBe(true);
  });
});

describe('identity: joining parts', () => {
  const a = effectPart(point, doubt, [{ code: 'a' }]);
  const b = {
    ...a,
    lnCapacity: { mean: a.lnCapacity.mean + 0.2, sd: a.lnCapacity.sd },
    beyondRange: true,
    notes: [{ code: 'a' }, { code: 'b' }],
  };

  it('widened: independent doubts add in squares', () => {
    const wide = widened(a, 0.1, 0, [{ code: 'w' }]);
    expect(wide.lnCapacity.sd).toBeCloseToWithin(Math.hypot(a.lnCapacity.sd, 0.1), 1e-12);
    expect(wide.lnPower).toEqual(a.lnPower);
    expect(wide.notes).toEqual([{ code: 'a' }, { code: 'w' }]);
  });

  it('midway: half the distance joins the doubt, marks are kept, notes said once', () => {
    const mid = midway(a, b, [{ code: 'm' }]);
    expect(mid.lnCapacity.mean).toBeCloseToWithin(a.lnCapacity.mean + 0.1, 1e-12);
    expect(mid.lnCapacity.sd).toBeCloseToWithin(Math.hypot(a.lnCapacity.sd, 0.1), 1e-12);
    expect(mid.beyondRange).toBe(true);
    expect(mid.notes.map(({ code }) => code)).toEqual(['a', 'b', 'm']);
  });

  it('a code with other values is another note', () => {
    const notes = [
      { code: 'x', values: { n: 1 } },
      { code: 'x', values: { n: 2 } },
      { code: 'x', values: { n: 1 } },
    ];
    expect(withoutRepeats(notes)).toHaveLength(2);
  });
});
