import { describe, expect, it } from 'vitest';
import { ageOfUnit, agePrior } from '@/lib/diagnostics/loss/age-prior';
import './support/matchers';
import { visitOf } from './support/visit-of';

function priorAt(manufactureYear: number) {
  return agePrior(visitOf([], { manufactureYear }));
}

describe('what age alone says', () => {
  it('identity: years between plate and visit, never negative; unknown gives the assumed age', () => {
    expect(ageOfUnit(visitOf([], { manufactureYear: 2006 }))).toEqual({ ageYears: 20, assumed: false });
    expect(ageOfUnit(visitOf([], { manufactureYear: 2030 }))).toEqual({ ageYears: 0, assumed: false });
    const visit = visitOf([]);
    const { manufactureYear: _, ...unit } = visit.unit;
    expect(ageOfUnit({ ...visit, unit })).toEqual({ ageYears: 12, assumed: true });
  });

  // Modelling convention rated x (1 - 0.01)^age: 0.818 of the efficiency after 20 years.
  it('outside: one percent of efficiency a year, half on capacity, half on power', () => {
    const prior = priorAt(2006);
    expect(Math.exp(prior.lnCapacity.value - prior.lnPower.value)).toBeCloseToWithin(0.99 ** 20, 1e-9);
    expect(prior.lnCapacity.value).toBeCloseToWithin(-prior.lnPower.value, 1e-12);
  });

  it('identity: a new unit loses nothing, an ancient one at most a quarter, and it is always wide', () => {
    expect(priorAt(2026).lnCapacity.value).toBe(0);
    const ancient = priorAt(1970);
    expect(Math.exp(ancient.lnCapacity.value - ancient.lnPower.value)).toBeCloseToWithin(0.75, 1e-9);
    expect([priorAt(2026), priorAt(2006), ancient].filter((prior) => prior.lnCapacity.sd < 0.2)).toEqual([]);
  });
});
