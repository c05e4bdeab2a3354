import { describe, expect, test } from 'vitest';
import { extraCost } from '@/lib/sheet/running-cost-section';
import { orificeEnergy } from './fixtures/orifice-heat-pump';

const of = (id: string) => orificeEnergy.scenarios.find((s) => s.id === id);

describe('extraCost', () => {
  test('identity: compares mild with mild and severe with severe', () => {
    const extra = extraCost(of('asFound'), of('healthy'));
    expect(extra?.low).toBeCloseTo(1722.1 - 1392.4, 9);
    expect(extra?.likely).toBeCloseTo(1968.3 - 1392.4, 9);
    expect(extra?.high).toBeCloseTo(2304.8 - 1392.4, 9);
  });

  test('identity: the other way round is negative and in order', () => {
    const less = extraCost(of('healthy'), of('asFound'));
    expect(less?.low).toBeCloseTo(1392.4 - 2304.8, 9);
    expect(less?.high).toBeCloseTo(1392.4 - 1722.1, 9);
  });

  test('identity: nothing is told when a scenario is missing', () => {
    expect(extraCost(of('asFound'), undefined)).toBeUndefined();
    expect(extraCost(undefined, of('healthy'))).toBeUndefined();
  });
});
