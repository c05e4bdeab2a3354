import { describe, expect, it } from 'vitest';
import { asSourced, derive } from '@/lib/diagnostics/derive';
import { outOfRange } from '@/lib/diagnostics/refrigerant/out-of-range';
import { orNaN, partOrNaN } from '@/lib/diagnostics/refrigerant-or-nan';
import type { Sourced } from '@/lib/diagnostics/sourced';
import './support/matchers';

function input(name: string, value: number, sd: number, basis: Sourced['basis'] = 'measured'): Sourced {
  return { name, value, sd, unit: 'F', basis };
}

const shared = { id: 'x', unit: 'F', formula: 'a + b', source: 'test' };

describe('derive', () => {
  it('identity: a sum adds values and variances, and shows shares', () => {
    const value = derive({
      ...shared,
      inputs: { a: input('a', 10, 3), b: input('b', 5, 4) },
      compute: (v) => v.a + v.b,
    });
    expect(value).toMatchObject({ value: 15, basis: 'measured', unit: 'F' });
    expect(value?.sd).toBeCloseToWithin(5, 1e-12);
    expect(value?.inputs.map((i) => i.shareFrac)).toEqual([9 / 25, 16 / 25]);
  });

  it('identity: an absent input makes the value absent, never 0', () => {
    expect(
      derive({ ...shared, inputs: { a: input('a', 1, 1), b: undefined }, compute: (v) => v.a + v.b }),
    ).toBeUndefined();
  });

  it('identity: no value at the readings, no derived value, and no NaN', () => {
    expect(derive({ ...shared, inputs: { a: input('a', 1, 1) }, compute: () => Number.NaN })).toBeUndefined();
    const indifferent = derive({
      ...shared,
      inputs: { a: input('a', 1, 1), b: undefined },
      compute: (v) => v.a,
    });
    expect(indifferent).toBeUndefined();
  });

  it('identity: at the edge of the range one side is enough, with none the value is absent', () => {
    const below = (limit: number) => (v: { a: number }) => (v.a <= limit ? v.a : Number.NaN);
    const edge = derive({ ...shared, inputs: { a: input('a', 10, 1) }, compute: below(10) });
    expect(edge).toMatchObject({ value: 10, sd: 1 });
    const only = (v: { a: number }) => (v.a === 10 ? 10 : Number.NaN);
    expect(derive({ ...shared, inputs: { a: input('a', 10, 1) }, compute: only })).toBeUndefined();
  });

  it('identity: assumed as soon as assumptions carry most of a large variance', () => {
    const at = (sd: number) =>
      derive({
        ...shared,
        inputs: { a: input('a', 100, 1), b: input('b', 100, sd, 'assumed') },
        compute: (v) => v.a + v.b,
      })?.basis;
    expect([at(0.5), at(15), at(25)]).toEqual(['measured', 'measured', 'assumed']);
  });

  it('identity: only plate figures give a nameplate value, only assumptions an assumed one', () => {
    const of = (basis: Sourced['basis']) =>
      derive({ ...shared, inputs: { a: input('a', 100, 0, basis) }, compute: (v) => v.a })?.basis;
    expect([of('nameplate'), of('assumed'), of('measured')]).toEqual(['nameplate', 'assumed', 'measured']);
  });

  it('wiring: a derived value serves as input of another one', () => {
    const value = derive({ ...shared, inputs: { a: input('a', 2, 0.5) }, compute: (v) => 2 * v.a });
    expect(asSourced(value)).toMatchObject({ name: 'x', value: 4, sd: 1, basis: 'measured' });
    expect(asSourced(undefined)).toBeUndefined();
  });

  it('identity: a refused property is NaN inside a derivation only', () => {
    expect(orNaN(3)).toBe(3);
    expect(orNaN(outOfRange.wet)).toBeNaN();
    expect(partOrNaN({ dischargeF: 150, enthalpyBtuLb: 1 }, (d) => d.dischargeF)).toBe(150);
    expect(partOrNaN<{ x: number }>(outOfRange.wet, (d) => d.x)).toBeNaN();
  });
});
