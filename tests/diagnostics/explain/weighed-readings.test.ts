import { describe, expect, it } from 'vitest';
import type { FeatureReading } from '@/lib/diagnostics/causes/feature';
import { weighedReadings } from '@/lib/diagnostics/explain/weighed-readings';
import type { DerivedValue } from '@/lib/diagnostics/findings';

const derived = (id: string, value: number, unit: string): DerivedValue => ({
  id,
  value,
  sd: 1,
  unit,
  basis: 'measured',
  inputs: [],
  formula: 'f',
  source: 's',
});
const run = { id: 'a', mode: 'cooling', liquidLineF: 98 } as const;
const weighed = (feature: FeatureReading, values: readonly DerivedValue[] = []) =>
  weighedReadings(run, values, [feature])[0];

describe('readings the causes were weighed on', () => {
  it('identity: the healthy value is the reading less its residual', () => {
    const feature = { id: 'superheat', readingId: 'suctionSuperheatFd', residual: 24, sd: 6 } as const;
    expect(weighed(feature, [derived('suctionSuperheatFd', 34, 'Fd')])).toEqual({
      id: 'suctionSuperheatFd',
      value: 34,
      unit: 'Fd',
      expected: 10,
      sigmas: 4,
    });
  });

  it('identity: evaporating counts a high pressure as high, so its difference runs the other way', () => {
    const feature = {
      id: 'evaporating',
      readingId: 'evaporatingBelowReturnFd',
      residual: -15,
      sd: 5,
    } as const;
    expect(weighed(feature, [derived('evaporatingBelowReturnFd', 50, 'Fd')])?.expected).toBe(35);
  });

  it('identity: power is weighed as a ratio', () => {
    const feature = { id: 'power', readingId: 'outdoorUnitW', residual: Math.log(1.25), sd: 0.1 } as const;
    expect(weighed(feature, [derived('outdoorUnitW', 2500, 'W')])?.expected).toBeCloseTo(2000, 6);
  });

  it('identity: a reading judged as read is found in the run; one that is nowhere is left out', () => {
    const feature = { id: 'liquidApproach', readingId: 'liquidLineF', residual: 5, sd: 2 } as const;
    expect(weighed(feature)).toMatchObject({ value: 98, expected: 93, unit: 'F' });
    expect(weighed({ ...feature, readingId: 'dischargeLineF' })).toBeUndefined();
  });
});
