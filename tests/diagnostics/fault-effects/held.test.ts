import { describe, expect, it } from 'vitest';
import { celsius, heldIn } from '@/lib/diagnostics/fault-effects/held';
import { heldLevel, heldValues } from '@/lib/diagnostics/fault-effects/range-notes';
import '../support/matchers';

describe('identity: a value held inside a range', () => {
  it.each([
    { where: 'inside', value: 75, held: 75, beyond: 0 },
    { where: 'on the lower edge', value: 70, held: 70, beyond: 0 },
    { where: 'on the upper edge', value: 80, held: 80, beyond: 0 },
    { where: 'just below', value: 69.9, held: 70, beyond: 0.01 },
    { where: 'a whole width above', value: 90, held: 80, beyond: 1 },
  ])('$where', ({ value, held, beyond }) => {
    const result = heldIn(value, [70, 80]);
    expect(result.value).toBe(held);
    expect(result.beyond).toBeCloseToWithin(beyond, 1e-9);
  });

  it('refuses what is no number and what is no range', () => {
    expect(() => heldIn(Number.NaN, [0, 1])).toThrow('not finite');
    expect(() => heldIn(1, [1, 0])).toThrow('range');
    expect(() => heldIn(1, [1])).toThrow('range');
  });

  it('several conditions: distances add, only those outside are named', () => {
    const result = heldValues({
      indoor: { value: 65, range: [70, 80] },
      outdoor: { value: 109, range: [82, 100] },
      wetBulb: { value: 60, range: [55, 75] },
    });
    expect(result.values).toEqual({ indoor: 70, outdoor: 100, wetBulb: 60 });
    expect(result.beyond).toBeCloseToWithin(1, 1e-12);
    expect(result.notes).toEqual([
      { code: 'indoorBeyondFit', values: { low: 70, high: 80 } },
      { code: 'outdoorBeyondFit', values: { low: 82, high: 100 } },
    ]);
  });

  it('a level beyond the published one is held and named in percent', () => {
    expect(heldLevel(0.3, 0.3)).toEqual({ value: 0.3, beyond: 0, notes: [] });
    const beyond = heldLevel(0.45, 0.3);
    expect(beyond.value).toBe(0.3);
    expect(beyond.beyond).toBeCloseToWithin(0.5, 1e-12);
    expect(beyond.notes).toEqual([{ code: 'levelBeyondFit', values: { maxPercent: 30 } }]);
  });

  it('celsius of the fixed points', () => {
    expect([32, 212, -40].map(celsius)).toEqual([0, 100, -40]);
  });
});
