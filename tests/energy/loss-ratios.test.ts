import { describe, expect, it } from 'vitest';
import { lossEnds, recovered } from '@/lib/energy/loss-ratios';
import { exampleLoss } from './example-visit';

describe('wiring: ends of the loss', () => {
  it('mild has most capacity and least power, severe the reverse', () => {
    const ends = lossEnds(exampleLoss);
    expect(ends.mild).toEqual({
      coolingCapacity: 0.9,
      coolingPower: 0.97,
      heatingCapacity: 0.8,
      heatingPower: 0.95,
    });
    expect(ends.severe).toEqual({
      coolingCapacity: 0.8,
      coolingPower: 1.07,
      heatingCapacity: 0.7,
      heatingPower: 1.05,
    });
    expect(ends.likely.heatingCapacity).toBe(0.75);
  });

  it('a mode without a loss counts as healthy', () => {
    expect(lossEnds({}).severe).toEqual({
      coolingCapacity: 1,
      coolingPower: 1,
      heatingCapacity: 1,
      heatingPower: 1,
    });
  });
});

describe('identity: giving back a share of the log loss', () => {
  const { likely } = lossEnds(exampleLoss);

  it('all of it gives the healthy unit, none of it the unit as found', () => {
    expect(Object.values(recovered(likely, 1))).toEqual([1, 1, 1, 1]);
    expect(recovered(likely, 0)).toEqual(likely);
  });

  it('two halves, one after the other, leave a quarter: ratio to the power 1/4', () => {
    const twice = recovered(recovered(likely, 0.5), 0.5);
    expect(twice.heatingCapacity).toBeCloseTo(0.75 ** 0.25, 12);
  });
});
