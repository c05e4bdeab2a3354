import { describe, expect, it } from 'vitest';
import data from '@/lib/energy/data/emission-factors.json';
import { emissionFactor } from '@/lib/energy/emission-factor';

const KG_PER_LB = 0.45359237;

describe('outside: emission factors [RESNET 301 set read as kg/MWh; eGRID2019 as lb/MWh]', () => {
  it.each([
    ['CA', 80.7, 455.3],
    ['GA', 304.1, 974.0],
    ['TX', 224.8, 872.4],
    ['WA', 104.0, 719.9],
  ])('%s: marginal and average', (state, marginalKgPerMwh, averageLbPerMwh) => {
    expect(emissionFactor(state).lbPerKwh * KG_PER_LB * 1000).toBeCloseTo(marginalKgPerMwh, 0);
    expect(emissionFactor(state, 'average').lbPerKwh * 1000).toBeCloseTo(averageLbPerMwh, 0);
  });

  it('the national marginal factor is the mean of the twenty regions', () => {
    const regions = Object.values(data.regions).map((r) => r.marginalLbPerKwh);
    expect(regions).toHaveLength(20);
    expect(emissionFactor(undefined).lbPerKwh).toBeCloseTo(regions.reduce((a, b) => a + b, 0) / 20, 3);
  });
});

describe('wiring: names and stand-ins', () => {
  it('names region and kind', () => {
    expect(emissionFactor('FL')).toMatchObject({ region: 'FRCC All', kind: 'marginal' });
    expect(emissionFactor('FL', 'average').kind).toBe('average');
  });

  it('a state without a region gets the nation', () => {
    expect(emissionFactor('AK').region).toBe('United States');
    expect(emissionFactor('NY', 'average').region).toBe('United States');
  });

  it('every state points at a region that exists', () => {
    const known = Object.keys(data.regions);
    expect(Object.keys(data.regionByState)).toHaveLength(49);
    expect(Object.values(data.regionByState).filter((r) => !known.includes(r))).toEqual([]);
  });
});
